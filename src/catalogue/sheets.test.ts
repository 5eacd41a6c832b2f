import { describe, expect, it } from 'vitest'
import { cureTable, hoursAt } from '#core/cure'
import { clockPoints, inSi } from '../../test/written-cell.ts'
import { genericSheets } from './generic-sheets.ts'
import { type SheetId, sheets } from './sheets.ts'

const all = Object.entries(sheets) as readonly (readonly [SheetId, (typeof sheets)[SheetId]])[]
const coatings = all.filter(([id]) => id !== 'solvent-dewax')

type Clock =
  | 'touchDry'
  | 'dryToDew'
  | 'dryToSand'
  | 'dryToTape'
  | 'dryToTread'
  | 'dryToFit'
  | 'dryToSling'
  | 'fullCure'

/** Undefined when the sheet has no such clock. */
function hours(
  id: SheetId,
  clock: Clock | 'induction' | 'potLife' | 'recoatLeast' | 'recoatMost',
  airC: number,
): number | undefined {
  const text = sheets[id].cells[clock]
  const sense = clock === 'potLife' || clock === 'recoatMost' ? 'most' : 'least'
  return text === undefined ? undefined : hoursAt(cureTable(clockPoints(text)), airC, sense).hours
}

/** Every temperature that stands in a clock of the sheet and that the sheet allows. */
function temperatures(id: SheetId): readonly number[] {
  const { airLeast = '', airMost = '', ...cells } = sheets[id].cells
  const points = Object.values(cells)
    .filter((text) => /^-?\d+C: /.test(text))
    .flatMap(clockPoints)
  const coldest = inSi(airLeast, 'temperature')
  const warmest = inSi(airMost, 'temperature')
  return [...new Set([coldest, 20, warmest, ...points.map(({ airC }) => airC)])].filter(
    (airC) => airC >= coldest && airC <= warmest,
  )
}

describe('generic sheets', () => {
  it('are these fifteen kinds', () => {
    expect(Object.keys(sheets).sort()).toEqual([
      'epoxy-barrier',
      'epoxy-fairing',
      'epoxy-high-build',
      'epoxy-primer',
      'epoxy-resin',
      'epoxy-tie',
      'gelcoat',
      'one-part-deck',
      'one-part-enamel',
      'polyester-putty',
      'polyester-resin',
      'solvent-dewax',
      'textured-acrylic',
      'two-part-finish',
      'vinylester-filler',
    ])
  })

  it('say how far a litre goes: by coverage, or by solids and film', () => {
    for (const [id, { cells }] of all) {
      const known =
        cells.coverage !== undefined || (cells.volumeSolids !== undefined && cells.dryFilm !== undefined)
      expect(known, id).toBe(true)
    }
  })

  it('have every figure that a plan cannot do without', () => {
    for (const [id, { cells }] of all) {
      for (const key of [
        'family',
        'role',
        'mix',
        'thinnerShare',
        'airLeast',
        'airMost',
        'humidityMost',
        'dewMargin',
        'isocyanate',
      ] as const)
        expect(cells[key], `${id} ${key}`).toBeDefined()
    }
  })

  it('have every clock that a plan waits for', () => {
    for (const [id, { cells }] of coatings) {
      for (const key of [
        'touchDry',
        'dryToDew',
        'recoatLeast',
        'dryToSand',
        'dryToTape',
        'dryToTread',
        'dryToFit',
        'dryToSling',
        'fullCure',
      ] as const)
        expect(cells[key], `${id} ${key}`).toBeDefined()
    }
  })

  it('have a pot life wherever two parts meet, and nowhere else', () => {
    for (const [id, { cells }] of all) expect(cells.potLife !== undefined, id).toBe(cells.mix !== '1')
  })

  it('hold isocyanate exactly where the family is two-part polyurethane', () => {
    for (const [id, { cells }] of all)
      expect(cells.isocyanate, id).toBe(cells.family === 'two-part polyurethane' ? 'yes' : 'no')
  })

  it('use no more thinner than they allow', () => {
    for (const [id, { cells }] of coatings)
      expect(inSi(cells.thinnerShare ?? '', 'share'), id).toBeLessThanOrEqual(
        inSi(cells.thinnerMost ?? '', 'share'),
      )
  })
})

describe('clocks of the generic sheets', () => {
  it.each(all.map(([id]) => id))(
    '%s leave a window to recoat at every temperature it may be used at',
    (id) => {
      for (const airC of temperatures(id)) {
        const most = hours(id, 'recoatMost', airC)
        const least = hours(id, 'recoatLeast', airC)
        expect(least, `${airC} °C`).toBeGreaterThan(0)
        if (most !== undefined) expect(least, `${airC} °C`).toBeLessThan(most)
      }
    },
  )

  it.each(all.map(([id]) => id))('%s leave pot life after induction', (id) => {
    for (const airC of temperatures(id)) {
      const pot = hours(id, 'potLife', airC)
      if (pot !== undefined) expect(hours(id, 'induction', airC) ?? 0, `${airC} °C`).toBeLessThan(pot)
    }
  })

  it.each(coatings.map(([id]) => id))('%s harden in order at 20 °C', (id) => {
    const order: readonly Clock[] = [
      'touchDry',
      'dryToSand',
      'dryToTape',
      'dryToTread',
      'dryToFit',
      'dryToSling',
      'fullCure',
    ]
    const times = order.map((clock) => hours(id, clock, 20) ?? Number.NaN)
    expect(times).toEqual([...times].sort((one, other) => one - other))
  })

  it('keep dew off for twice the time to touch, at least 4 h, where the shop rule is for paint', () => {
    for (const id of ['two-part-finish', 'one-part-enamel', 'one-part-deck', 'epoxy-primer'] as const) {
      const touch = hours(id, 'touchDry', 20) ?? Number.NaN
      expect(hours(id, 'dryToDew', 20), id).toBe(Math.max(4, 2 * touch))
    }
  })

  it('follow the shop rule at 20 °C', () => {
    const at20 = (id: SheetId) =>
      (['dryToSand', 'dryToTape', 'dryToTread', 'dryToFit', 'dryToSling'] as const).map((clock) =>
        hours(id, clock, 20),
      )
    expect(at20('two-part-finish')).toEqual([16, 24, 48, 72, 168])
    expect(at20('one-part-enamel')).toEqual([24, 72, 72, 168, 240])
    expect(at20('epoxy-primer').slice(0, 3)).toEqual([16, 16, 16])
  })

  it('get shorter as it gets warmer', () => {
    for (const [id, { cells }] of all) {
      for (const text of Object.values(cells).filter((each) => /^-?\d+C: /.test(each))) {
        const points = clockPoints(text)
        expect(points, id).toEqual([...points].sort((one, other) => one.airC - other.airC))
        expect(points, id).toEqual([...points].sort((one, other) => other.hours - one.hours))
      }
    }
  })
})

describe('genericSheets', () => {
  it('gives the cells of every sheet as a section of a job, with a source', () => {
    const section = genericSheets()
    expect(Object.keys(section)).toEqual(Object.keys(sheets))
    expect(section['two-part-finish']).toEqual({
      ...sheets['two-part-finish'].cells,
      source: sheets['two-part-finish'].source,
    })
  })
})
