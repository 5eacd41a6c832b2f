import { describe, expect, it } from 'vitest'
import { type Hull, hullFromSizes, hullFromStations, type Station } from '#core/boat'
import { bootStripe } from './stripe.ts'

const powerboat = made(
  hullFromSizes({ form: 'hard-chine', lengthOverall: 7.5, beam: 2.5, freeboardStem: 1.1 }),
)
const level = { heightStemM: 0.06, widthStemM: 0.05, spacingM: 0.5 }

describe('bootStripe', () => {
  it('is straight and level where one height and one width are given', () => {
    const { table } = bootStripe(powerboat, level)
    for (const row of table!.rows) {
      expect(row.lowerM).toBeCloseTo(0.06, 12)
      expect(row.upperM).toBeCloseTo(0.11, 12)
    }
  })

  it('passes the three heights and the three widths, lowest at 70 % of the waterline aft of the stem', () => {
    const heights = { heightStemM: 0.09, heightLowM: 0.055, heightSternM: 0.07 }
    const widths = { widthStemM: 0.075, widthLowM: 0.05, widthSternM: 0.06 }
    const table = bootStripe(powerboat, { ...heights, ...widths, spacingM: 0.01 + 0.01 }).table!
    const [first, last] = [table.rows[0]!, table.rows.at(-1)!]
    expect([first.lowerM, first.upperM - first.lowerM]).toEqual([
      expect.closeTo(0.07, 9),
      expect.closeTo(0.06, 9),
    ])
    expect([last.lowerM, last.upperM - last.lowerM]).toEqual([
      expect.closeTo(0.09, 9),
      expect.closeTo(0.075, 9),
    ])
    const lowest = table.rows.reduce((low, row) => (row.lowerM < low.lowerM ? row : low))
    expect(lowest.lowerM).toBeCloseTo(0.055, 4)
    const waterline = powerboat.particulars.lengthWaterline
    expect(Math.abs(lowest.xM - 0.3 * waterline)).toBeLessThan(0.021)
    expect(table.lowXM).toBeCloseTo(0.3 * waterline, 2)
  })

  it('has a row every spacing from the aft end and one at the stem', () => {
    const table = bootStripe(powerboat, level).table!
    const steps = table.rows.slice(1, -1).map((row, k) => row.xM - table.rows[k]!.xM)
    for (const step of steps) expect(step).toBeCloseTo(0.5, 9)
    expect(table.rows[0]!.xM).toBeCloseTo(table.sternXM, 9)
    expect(table.rows.at(-1)!.xM).toBeCloseTo(table.stemXM, 9)
  })

  it('is never narrower along the hull than plumb', () => {
    const table = bootStripe(powerboat, level).table!
    for (const row of table.rows) expect(row.girthM).toBeGreaterThanOrEqual(0.05 - 1e-9)
  })

  it('tapes both edges on both sides and paints both sides', () => {
    const table = bootStripe(powerboat, level).table!
    expect(table.tapeM).toBeCloseTo(2 * (table.lowerLengthM + table.upperLengthM), 9)
    expect(table.areaM2).toBeCloseTo(2 * table.areaPerSideM2, 9)
    expect(table.lowerLengthM).toBeGreaterThan(table.stemXM - table.sternXM)
    const meanGirth = table.areaPerSideM2 / table.lowerLengthM
    expect(meanGirth).toBeGreaterThan(0.05)
    expect(meanGirth).toBeLessThan(0.09)
  })

  it('assumes heights and widths scaled with the length, never nearer to the water than 50 mm', () => {
    const longer = made(
      hullFromSizes({ form: 'round-bilge', lengthOverall: 12, beam: 3.6, freeboardStem: 1.5 }),
    )
    const got = bootStripe(longer, { spacingM: 1 })
    expect(got.notes.slice(0, 2).map((note) => note.code)).toEqual([
      'marking.heightsAssumed',
      'marking.widthsAssumed',
    ])
    expect(got.notes[0]!.data.stemM).toBeCloseTo((0.075 * 12) / 7.5, 12)
    const small = made(hullFromSizes({ form: 'hard-chine', lengthOverall: 4, beam: 1.6, freeboardStem: 0.7 }))
    expect(bootStripe(small, { spacingM: 1 }).notes[0]!.data).toMatchObject({ lowM: 0.05, sternM: 0.05 })
  })

  it('takes the lower of two given heights for the third', () => {
    const got = bootStripe(powerboat, { ...level, heightSternM: 0.08 })
    expect(got.notes[0]).toMatchObject({ code: 'marking.heightsAssumed', data: { count: 1, lowM: 0.06 } })
  })

  it('says when the lower edge is nearer to the water than 50 mm, and how far stores sink the boat', () => {
    const notes = bootStripe(powerboat, { ...level, heightStemM: 0.03 }).notes
    expect(notes.map((note) => note.code)).toContain('marking.stripeNearWater')
    const load = notes.find((note) => note.code === 'marking.loadMargin')
    expect(load?.data).toEqual({ sinkM: 0.05, fromM: 9.1, toM: 13.7, lengthM: 7.5 })
    expect(bootStripe(powerboat, level).notes.map((note) => note.code)).not.toContain(
      'marking.stripeNearWater',
    )
  })

  it('points at a place so flat that a parallel tape would look wrong', () => {
    const flat = bootStripe(prism(60), level)
    expect(flat.notes.find((note) => note.code === 'marking.stripeFlatHull')?.data.girthM).toBeCloseTo(0.1, 6)
    const steep = bootStripe(prism(30), level)
    expect(steep.notes.map((note) => note.code)).not.toContain('marking.stripeFlatHull')
  })

  it.each([
    [{ heightStemM: Number.NaN }, 'marking.stripeHeight'],
    [{ widthLowM: 0 }, 'marking.stripeWidth'],
    [{ widthLowM: Number.POSITIVE_INFINITY }, 'marking.stripeWidth'],
    [{ spacingM: 0 }, 'marking.stripeSpacing'],
    [{ spacingM: Number.NaN }, 'marking.stripeSpacing'],
    [{ heightStemM: 1.0, heightSternM: 1.0 }, 'marking.stripeOffHull'],
    [{ widthStemM: 1.0, widthSternM: 1.0, widthLowM: 1.0 }, 'marking.stripeOffHull'],
    [{ heightStemM: -0.9 }, 'marking.stripeOffHull'],
  ])('refuses %j', (wrong, code) => {
    const got = bootStripe(powerboat, { ...level, ...wrong })
    expect(got.table).toBeUndefined()
    expect(got.notes.map((note) => note.code)).toContain(code)
  })
})

describe('a hull clear of the water', () => {
  it('gets no stripe', () => {
    const stations = prism(10).stations.map((station) => ({
      ...station,
      points: station.points.map((point) => ({ ...point, z: point.z + 0.5 })),
    }))
    const got = bootStripe(made(hullFromStations(stations)), level)
    expect(got.notes.map((note) => note.code)).toEqual(['marking.noWaterline'])
  })
})

/** A hull whose sides lean out by an angle to the plumb, closed square at both ends. */
function prism(flareDeg: number): Hull {
  const out = Math.tan((flareDeg * Math.PI) / 180)
  const half = 1
  const station = (id: string, x: number): Station => ({
    id,
    x,
    points: [
      { y: 0, z: -0.4 },
      { y: half, z: -0.2, knuckle: 'chine' },
      { y: half + 0.9 * out, z: 0.7 },
    ],
  })
  return made(hullFromStations([station('a', 0), station('b', 2), station('c', 4)]))
}

function made(result: ReturnType<typeof hullFromStations>): Hull {
  if (!result.ok) throw new Error(JSON.stringify(result.faults))
  return result.hull
}
