import { describe, expect, it } from 'vitest'
import { type FigureRef, type Plan, partsIn, plan, type Term, valueIn, type WayPart } from '#plan'
import {
  answeredRaw,
  planInput,
  projectRaw,
  sampleInput,
  sampleWeather,
} from '../../../test/support/samples.ts'
import { tellWay } from './index.ts'

type Shown = readonly [ref: FigureRef, value: number]

/** Every figure that the screens show of a plan, with its value there. */
const shownOf = (made: Plan): readonly Shown[] => [
  ...areas(made),
  ...paint(made),
  ...marks(made),
  ...stores(made),
  ...money(made),
  ...air(made),
  ...pours(made),
]

const areas = ({ surfaces, marks: { zones } }: Plan): readonly Shown[] => [
  ...[...surfaces.zones, ...zones].map(({ id, areaM2 }): Shown => [{ kind: 'zone area', zone: id }, areaM2]),
  ...surfaces.rules.map(({ id, area }): Shown => [{ kind: 'rule area', rule: id }, area]),
]

const paint = ({ buildUps, quantities }: Plan): readonly Shown[] => [
  ...buildUps.layers.flatMap(({ layer, zone, dryFilmM }): Shown[] =>
    dryFilmM ? [[{ kind: 'layer film', layer, zone }, dryFilmM.value]] : [],
  ),
  ...quantities.layers.map(
    ({ layer, zone, mixedM3 }): Shown => [{ kind: 'layer litres', layer, zones: [zone] }, mixedM3],
  ),
  ...[...new Set(quantities.layers.map(({ layer }) => layer))].map((layer): Shown => {
    const own = quantities.layers.filter((one) => one.layer === layer)
    const zones = own.map(({ zone }) => zone)
    return [{ kind: 'layer litres', layer, zones }, own.reduce((sum, { mixedM3 }) => sum + mixedM3, 0)]
  }),
  ...[...new Set(quantities.layers.map(({ zone }) => zone))].map((zone): Shown => {
    const own = quantities.layers.filter((one) => one.zone === zone)
    return [{ kind: 'zone litres', zone }, own.reduce((sum, { mixedM3 }) => sum + mixedM3, 0)]
  }),
]

const marks = ({ marks: { panels, stripes } }: Plan): readonly Shown[] => [
  ...panels.flatMap(({ id, lengthM, widthM, panelAreaM2 }): Shown[] => [
    [{ kind: 'panel', mark: id, of: 'length' }, lengthM],
    [{ kind: 'panel', mark: id, of: 'width' }, widthM],
    [{ kind: 'panel', mark: id, of: 'area' }, panelAreaM2],
  ]),
  ...stripes.flatMap(({ id, table }) =>
    table.rows.flatMap(({ lowerM, upperM, girthM }, row): Shown[] => [
      [{ kind: 'stripe', mark: id, row, of: 'lower' }, lowerM],
      [{ kind: 'stripe', mark: id, row, of: 'upper' }, upperM],
      [{ kind: 'stripe', mark: id, row, of: 'girth' }, girthM],
    ]),
  ),
]

const stores = ({ stores: { items, consumables } }: Plan): readonly Shown[] => [
  ...items.flatMap(({ sheet, needM3, reserveM3, leftoverM3 }): Shown[] => [
    [{ kind: 'store', sheet, of: 'need' }, needM3],
    [{ kind: 'store', sheet, of: 'reserve' }, reserveM3],
    [{ kind: 'store', sheet, of: 'left' }, leftoverM3],
  ]),
  ...consumables.map(
    ({ id, sheet, amount }): Shown => [
      { kind: 'consumable', id, ...(sheet === undefined ? {} : { sheet }) },
      amount,
    ],
  ),
]

const money = ({ money: made }: Plan): readonly Shown[] =>
  made === undefined
    ? []
    : [
        ...made.lines.flatMap(({ id, coins, group, quantity }): Shown[] => [
          ...(coins === undefined ? [] : [[{ kind: 'money line', line: id }, coins] as const]),
          ...(group === 'labour' ? [[{ kind: 'money hours', line: id }, quantity] as const] : []),
        ]),
        ...(['labour', 'materials', 'consumables', 'costs'] as const)
          .filter((group) => made.lines.some((line) => line.group === group && line.coins !== undefined))
          .map((group): Shown => [{ kind: 'money group', group }, made.subtotals[group]]),
        ...(['margin', 'net', 'tax', 'total', 'deposit'] as const).map(
          (of): Shown => [{ kind: 'money sum', of }, made[`${of}Coins`]],
        ),
        ...made.changes
          .filter(({ hourlyCoins }) => hourlyCoins !== undefined)
          .map(({ id, totalCoins }): Shown => [{ kind: 'change', change: id }, totalCoins]),
      ]

const air = ({ conditions }: Plan): readonly Shown[] =>
  conditions.air.flatMap(({ key, firstMinute, surfaceC, dewC, humidityShare }) =>
    [0, 7, 100].flatMap((hour): Shown[] => {
      const at = { kind: 'air', place: key, minute: firstMinute + hour * 60 } as const
      const [skin, dew, damp] = [surfaceC[hour], dewC[hour], humidityShare[hour]]
      if (skin === undefined || dew === undefined || damp === undefined || Number.isNaN(skin + dew)) return []
      return [
        [{ ...at, of: 'skin' }, skin],
        [{ ...at, of: 'dew' }, dew],
        [{ ...at, of: 'margin' }, skin - dew],
        [{ ...at, of: 'humidity' }, damp],
      ]
    }),
  )

const pours = ({ pours: made }: Plan): readonly Shown[] =>
  made.pours.flatMap(({ step, nr, partsM3, thinnerM3, additiveM3 }): Shown[] => [
    ...partsM3.map(
      (value, at): Shown => [{ kind: 'pour', step, nr, of: at === 0 ? 'base' : 'hardener' }, value],
    ),
    // A repair takes no thinner and no bead.
    ...(step.startsWith('filled:')
      ? []
      : [
          [{ kind: 'pour', step, nr, of: 'thinner' }, thinnerM3] as const,
          [{ kind: 'pour', step, nr, of: 'additive' }, additiveM3] as const,
        ]),
  ])

const inside = (term: Term): readonly WayPart[] =>
  partsIn(term).flatMap((part) => [part, ...(part.term ? inside(part.term) : [])])

const answered = () => planInput(projectRaw(answeredRaw('open powerboat')), sampleWeather('deck-only'))

describe.each([
  ['open-powerboat', () => sampleInput('open-powerboat')],
  ['deck-only', () => sampleInput('deck-only')],
  ['cruiser-topsides', () => sampleInput('cruiser-topsides')],
  ['twelve answers', answered],
] as const)('the figures of %s', (_, inputOf) => {
  const input = inputOf()
  const made = plan(input)
  const shown = shownOf(made)
  const ways = shown.map(([ref, value]) => ({ ref, value, way: tellWay({ ...input, plan: made }, ref) }))

  it('are many, and each can be told', () => {
    expect(shown.length).toBeGreaterThan(50)
    expect(ways.filter(({ way }) => way === undefined).map(({ ref }) => ref)).toEqual([])
  })

  it('come out as the plan has them when their terms are worked again', () => {
    for (const { ref, value, way } of ways) {
      const again = way?.figure.term ? valueIn(way.figure.term) : way?.figure.value
      expect(Math.abs((again ?? Number.NaN) - value), JSON.stringify(ref)).toBeLessThanOrEqual(
        1e-9 * Math.max(1, Math.abs(value)) + slack(ref),
      )
    }
  })

  it('rest on spreads, areas and panels that are those of the plan', () => {
    const parts = ways.flatMap(({ way }) => (way?.figure.term ? inside(way.figure.term) : []))
    const spreads = new Set(made.buildUps.layers.map(({ spreadM2PerM3 }) => spreadM2PerM3?.value.toFixed(6)))
    const found = parts.filter((part) => part.name === 'spread')
    expect(found.length).toBeGreaterThan(5)
    expect(found.filter(({ value }) => !spreads.has(value.toFixed(6)))).toEqual([])
  })

  it('say of every part that is no sum where it may be set, where it was read, or that it follows from others', () => {
    const parts = ways.flatMap(({ way }) => way?.parts ?? [])
    const silent = parts.filter(
      ({ at, source, term, certainty }) => !at && !source && !term && certainty !== 'worked',
    )
    expect([...new Set(silent.map((part) => part.name))].filter((part) => !counts.includes(part))).toEqual([])
  })
})

/** Counted in the document as a whole, or on a curve through the heights that stand beside them. */
const counts = ['stations', 'points', 'stripeLower', 'stripeWidth']

/** Packs are counted in whole cubic millimetres, the parts of a cup in whole millilitres. */
const slack = (ref: FigureRef): number =>
  ref.kind === 'pour' ? 1e-6 : ref.kind === 'store' && ref.of === 'left' ? 1e-8 : 0

describe('what a plan does not have', () => {
  it('is not told', () => {
    const input = sampleInput('deck-only')
    const told = { ...input, plan: plan(input) }
    expect(tellWay(told, { kind: 'zone area', zone: 'nowhere' })).toBeUndefined()
    expect(tellWay(told, { kind: 'money line', line: 'nothing' })).toBeUndefined()
    expect(tellWay(told, { kind: 'air', place: 'boat', minute: 0, of: 'dew' })).toBeUndefined()
  })
})
