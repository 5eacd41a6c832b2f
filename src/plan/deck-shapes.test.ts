import { describe, expect, it } from 'vitest'
import type { RawDocument } from '#job'
import { type Plan, plan, valueIn } from '#plan'
import { planInput, projectRaw } from '../../test/support/samples.ts'
import { tellWay } from './ways/index.ts'

type Cells = Readonly<Record<string, string>>
type Sections = Readonly<Record<string, Readonly<Record<string, Cells>>>>

const boat = {
  kind: 'open powerboat',
  lengthOverall: '6.3 m',
  beam: '2.4 m',
  freeboardStem: '1.1 m',
}

const rawOf = (sections: Sections, sizes: Cells = boat): RawDocument =>
  ({
    hardstand: '1',
    work: {
      job: { name: 'Test', start: '2027-05-03' },
      boat: sizes,
      place: { shelter: 'shed', timeZone: 'UTC' },
      ...sections,
    },
  }) as unknown as RawDocument

const made = (sections: Sections, sizes?: Cells) => {
  const projected = projectRaw(rawOf(sections, sizes))
  expect(projected.problems).toEqual([])
  const input = planInput(projected, undefined)
  return { input, plan: plan(input) }
}

/** Corners of one zone from pairs of metres. */
const corners = (zone: string, places: readonly (readonly [number, number])[], more: Cells = {}) =>
  Object.fromEntries(
    places.map(([x, y], at) => [
      `${zone}-${more.opening ?? 'c'}-${at}`,
      { zone, fromStern: `${x} m`, offCentre: `${y} m`, order: `a${at}`, ...more },
    ]),
  )

const offsets = (zone: string, rows: readonly (readonly [number, number, number?])[]) =>
  Object.fromEntries(
    rows.map(([x, outer, inner], at) => [
      `${zone}-o-${at}`,
      {
        zone,
        fromStern: `${x} m`,
        outer: `${outer} m`,
        ...(inner === undefined ? {} : { inner: `${inner} m` }),
      },
    ]),
  )

const box = [
  [1, 0],
  [3, 0],
  [3, 0.6],
  [1, 0.6],
] as const

const zoneIn = ({ surfaces, marks }: Plan, id: string) =>
  [...surfaces.zones, ...marks.zones].find((zone) => zone.id === id)

/** Codes that speak of a zone and its shape; rules of thumb have zones of their own. */
const codesOf = ({ surfaces }: Plan, zone: string) =>
  surfaces.notes.flatMap(({ code, data }) =>
    data.zone === zone && /^(boat\.deck|surfaces\.)/.test(code) ? [code] : [],
  )

/** The way of an area comes out as the plan has it. */
const holds = ({ input, plan: has }: ReturnType<typeof made>, zone: string): void => {
  const way = tellWay({ ...input, plan: has }, { kind: 'zone area', zone })!
  expect(way.figure.term).toBeDefined()
  expect(valueIn(way.figure.term!)).toBeCloseTo(zoneIn(has, zone)!.areaM2, 9)
}

describe('a deck zone with corners', () => {
  const zones = {
    sole: { kind: 'cockpit sole', mirror: 'yes' },
    fore: { kind: 'foredeck', area: '9 m²' },
  }

  it('has the area inside them, both sides, as sure as they are', () => {
    const one = made({ zones, corners: corners('sole', box) })
    expect(zoneIn(one.plan, 'sole')).toMatchObject({ certainty: 'measured', how: 'shape' })
    expect(zoneIn(one.plan, 'sole')!.areaM2).toBeCloseTo(2 * 2 * 0.6, 12)
    expect(zoneIn(one.plan, 'sole')!.perimeterM).toBeCloseTo(2 * (2 + 0.6 + 0.6), 12)
    holds(one, 'sole')
    const about = made({
      zones,
      corners: {
        ...corners('sole', box),
        more: { zone: 'sole', fromStern: '1 m', offCentre: 'about 0.3 m', order: 'b' },
      },
    })
    expect(zoneIn(about.plan, 'sole')!.certainty).toBe('assumed')
    expect(codesOf(about.plan, 'sole')).toEqual(['surfaces.shapeByEye'])
    expect(codesOf(one.plan, 'sole')).toEqual([])
  })

  it('goes before an area that is typed in, and says so', () => {
    const { plan: has } = made({ zones, corners: corners('fore', box) })
    expect(zoneIn(has, 'fore')!.areaM2).toBeCloseTo(1.2, 12)
    expect(codesOf(has, 'fore')).toEqual(['surfaces.areaBesideShape'])
  })

  it('that cross says so and falls back on what else is known', () => {
    const [a, b, c, d] = box
    const { plan: has } = made({ zones, corners: corners('fore', [a, c, b, d]) })
    expect(zoneIn(has, 'fore')).toMatchObject({ areaM2: 9, how: 'given' })
    expect(codesOf(has, 'fore')).toEqual(['boat.deckCrosses'])
    const few = made({ zones, corners: corners('sole', [a, b]) }).plan
    expect(zoneIn(few, 'sole')!.how).toBe('share')
    expect(codesOf(few, 'sole')).toContain('boat.deckTooFewCorners')
  })

  it('loses an opening drawn inside it and is named where it reaches over the sheer', () => {
    const hole = corners(
      'sole',
      [
        [1.5, 0.1],
        [2, 0.1],
        [2, 0.5],
        [1.5, 0.5],
      ],
      { opening: '1' },
    )
    const one = made({ zones, corners: { ...corners('sole', box), ...hole } })
    expect(zoneIn(one.plan, 'sole')!.areaM2).toBeCloseTo(2 * (1.2 - 0.2), 12)
    holds(one, 'sole')
    const wide = made({
      zones,
      corners: corners('sole', [
        [1, 0],
        [3, 0],
        [3, 1.9],
        [1, 1.9],
      ]),
    }).plan
    expect(codesOf(wide, 'sole')).toEqual(['boat.deckOutsideSheer'])
    const noHull = made({ zones, corners: corners('sole', box) }, { kind: 'open powerboat' }).plan
    expect(zoneIn(noHull, 'sole')!.areaM2).toBeCloseTo(2.4, 12)
  })

  it('is camber, slope, upstand and openings more or less, and told so', () => {
    const rich = {
      kind: 'cabin top',
      mirror: 'yes',
      count: '2',
      camber: '60 mm',
      slope: '12°',
      upstandHeight: '80 mm',
      upstandLength: '3 m',
      openingLength: '0.5 m',
      openingWidth: '0.4 m',
      openingCount: '2',
    }
    const one = made({ zones: { top: rich }, corners: corners('top', box) })
    // Rise 60 mm over 1.2 m: 1 + 8/3 × 0.05² and a little less, by the series.
    const flat = (2 * 1.2 * 1.006637) / Math.cos((12 * Math.PI) / 180)
    expect(zoneIn(one.plan, 'top')!.areaM2).toBeCloseTo(2 * (flat + 0.24 - 0.4), 4)
    holds(one, 'top')
  })

  it('may be a non-skid field, which then needs no panels', () => {
    const one = made({ zones: { grip: { kind: 'non-skid' } }, corners: corners('grip', box) })
    expect(zoneIn(one.plan, 'grip')).toMatchObject({ how: 'shape' })
    expect(one.plan.marks.zones).toEqual([])
    holds(one, 'grip')
  })

  it('is no part of the hull', () => {
    const { plan: has } = made({ zones: { bottom: { kind: 'bottom' } }, corners: corners('bottom', box) })
    expect(zoneIn(has, 'bottom')!.how).toBe('surface')
    expect(codesOf(has, 'bottom')).toEqual(['surfaces.shapeNotRead'])
  })
})

describe('a deck zone by offsets', () => {
  it('by half widths spans the boat, by the trapezoidal rule', () => {
    const one = made({
      zones: { fore: { kind: 'foredeck' } },
      offsets: offsets('fore', [
        [4, 1],
        [5, 0.8],
        [6, 0.2],
      ]),
    })
    expect(zoneIn(one.plan, 'fore')!.areaM2).toBeCloseTo(2 * (0.9 + 0.5), 12)
    expect(one.plan.surfaces.shapes[0]!.edges).toHaveLength(2)
    holds(one, 'fore')
  })

  it('by two offsets is a strip on both sides, or on its own', () => {
    const rows = offsets('deck', [
      [1, 1.1, 0.9],
      [4, 1.1, 0.8],
    ])
    const both = made({ zones: { deck: { kind: 'side deck' } }, offsets: rows })
    expect(zoneIn(both.plan, 'deck')!.areaM2).toBeCloseTo(2 * 3 * 0.25, 12)
    holds(both, 'deck')
    const port = made({ zones: { deck: { kind: 'side deck', side: 'port' } }, offsets: rows })
    expect(zoneIn(port.plan, 'deck')!.areaM2).toBeCloseTo(3 * 0.25, 12)
    const starboard = made({ zones: { deck: { kind: 'side deck', side: 'starboard' } }, offsets: rows })
    expect(starboard.plan.surfaces.shapes[0]!.edges[0]![0]).toEqual([1, -1.1])
  })

  it('is told from its rows even where the edge is fair, and stands back behind corners', () => {
    const zones = { fore: { kind: 'foredeck', curve: 'fair' } }
    const rows = offsets('fore', [
      [4, 1],
      [4.5, 0.95],
      [5, 0.8],
      [5.5, 0.55],
      [6, 0.2],
    ])
    const one = made({ zones, offsets: rows })
    holds(one, 'fore')
    const straight = made({ zones: { fore: { kind: 'foredeck' } }, offsets: rows }).plan
    expect(zoneIn(one.plan, 'fore')!.areaM2).toBeGreaterThan(zoneIn(straight, 'fore')!.areaM2)
    const withBoth = made({ zones, offsets: rows, corners: corners('fore', box) }).plan
    expect(zoneIn(withBoth, 'fore')!.areaM2).toBeCloseTo(1.2, 12)
    expect(codesOf(withBoth, 'fore')).toEqual(['surfaces.cornersBesideOffsets'])
  })
})

describe('a zone without corners', () => {
  it('takes both faces of loose parts and what is cut out of a rectangle', () => {
    const lids = { kind: 'loose part', length: '0.6 m', width: '0.4 m', count: '3', faces: 'both' }
    const one = made({ zones: { lids } })
    expect(zoneIn(one.plan, 'lids')).toMatchObject({ how: 'length and width' })
    expect(zoneIn(one.plan, 'lids')!.areaM2).toBeCloseTo(3 * 2 * 0.24, 12)
    holds(one, 'lids')
  })

  it('may be an upstand alone, with its height', () => {
    const side = { kind: 'cabin side', upstandLength: '5 m', upstandHeight: '0.3 m' }
    const one = made({ zones: { side, half: { kind: 'coaming', area: '1 m²', upstandLength: '3 m' } } })
    expect(zoneIn(one.plan, 'side')).toMatchObject({ how: 'shape' })
    expect(zoneIn(one.plan, 'side')!.areaM2).toBeCloseTo(1.5, 12)
    holds(one, 'side')
    expect(codesOf(one.plan, 'half')).toEqual(['surfaces.upstandWithoutHeight'])
    const typed = made({
      zones: { side: { ...side, area: '2 m²' }, roof: { kind: 'hardtop', area: '2 m²', camber: '5 cm' } },
    })
    expect(zoneIn(typed.plan, 'side')!.areaM2).toBeCloseTo(1.5, 12)
    expect(codesOf(typed.plan, 'side')).toEqual(['surfaces.areaBesideShape'])
    expect(zoneIn(typed.plan, 'roof')!.areaM2).toBe(2)
    expect(codesOf(typed.plan, 'roof')).toEqual(['surfaces.areaTakenAsIs'])
  })
})

describe('pads', () => {
  const hull = { bottom: { kind: 'bottom' } }
  const whole = () => zoneIn(made({ zones: hull }).plan, 'bottom')!.areaM2

  it('are left out of what is painted, and listed', () => {
    const one = made({ zones: { ...hull, pads: { kind: 'pad', count: '6' } } })
    expect(zoneIn(one.plan, 'bottom')!.areaM2).toBeCloseTo(whole() - 0.6, 12)
    expect(zoneIn(one.plan, 'pads')).toBeUndefined()
    expect(one.plan.surfaces.pads).toMatchObject([{ id: 'pads', count: 6, certainty: 'assumed' }])
    expect(one.plan.surfaces.notes.map(({ code }) => code)).toContain('surfaces.padsLeftOut')
    expect(codesOf(one.plan, 'pads')).toEqual(['surfaces.padAssumed'])
    holds(one, 'bottom')
  })

  it('hide the topsides they stand against, on their side', () => {
    const zones = {
      port: { kind: 'topsides', side: 'port' },
      starboard: { kind: 'topsides', side: 'starboard' },
      pads: { kind: 'pad', hides: 'topsides', side: 'port', length: '0.4 m', width: '0.3 m', count: '2' },
    }
    const { plan: has } = made({ zones })
    expect(zoneIn(has, 'starboard')!.areaM2 - zoneIn(has, 'port')!.areaM2).toBeCloseTo(0.24, 9)
  })

  it('are not taken off where they would leave nothing, or where nothing is painted under them', () => {
    const many = made({ zones: { ...hull, pads: { kind: 'pad', count: '99', area: '1 m²' } } }).plan
    expect(zoneIn(many, 'bottom')!.areaM2).toBeCloseTo(whole(), 12)
    expect(codesOf(many, 'pads')).toEqual(['surfaces.padsCover'])
    const none = made({ zones: { pads: { kind: 'pad', area: '0.1 m²' } } }).plan
    expect(codesOf(none, 'pads')).toEqual(['surfaces.padsHideNothing'])
  })
})

describe('the kinds of a deck', () => {
  it.each(['gunwale', 'hardtop', 'outboard well', 'swim platform'])(
    'a %s that nobody measured has a share of the deck, and can be painted',
    (kind) => {
      const { plan: has } = made({
        zones: { part: { kind } },
        sheets: { enamel: { like: 'one-part-enamel' } },
        layers: { gloss: { zones: 'part', sheet: 'enamel', coats: '2' } },
      })
      expect(zoneIn(has, 'part')).toMatchObject({ how: 'share', certainty: 'assumed' })
      expect(has.quantities.layers.map(({ zone }) => zone)).toEqual(['part'])
    },
  )
})

describe('a document as full as it may be', () => {
  it('is worked without a wait and without a crash: thousands of corners, offsets and openings', () => {
    const many = Array.from({ length: 4000 }, (_, k) => {
      const angle = (2 * Math.PI * k) / 4000
      return [3 + Math.cos(angle), Math.sin(angle)] as const
    })
    const { plan: has } = made({
      zones: { sole: { kind: 'cockpit sole' }, fore: { kind: 'foredeck', curve: 'fair' } },
      corners: { ...corners('sole', many), ...corners('sole', many.slice(0, 900), { opening: '1' }) },
      offsets: offsets(
        'fore',
        Array.from({ length: 4000 }, (_, k) => [k / 1000, 0.5] as const),
      ),
    })
    expect(zoneIn(has, 'fore')!.areaM2).toBeCloseTo(3.999, 6)
    expect(zoneIn(has, 'sole')!.areaM2).toBeLessThan(Math.PI)
  })
})
