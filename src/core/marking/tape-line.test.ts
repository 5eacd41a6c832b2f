import { describe, expect, it } from 'vitest'
import { type Hull, hullFromSizes, hullFromStations } from '#core/boat'
import { tapeLine } from './tape-line.ts'

const made = (result: ReturnType<typeof hullFromStations>): Hull => {
  if (!result.ok) throw new Error(JSON.stringify(result.faults))
  return result.hull
}
const powerboat = made(
  hullFromSizes({
    form: 'hard-chine',
    lengthOverall: 7.5,
    beam: 2.5,
    freeboardStem: 1.1,
    lengthWaterline: 6.6,
  }),
)

/** Side of a wedge: half breadth 1 aft, 0 at the stem, plumb sides, 3 m long. */
const wedge = made(
  hullFromStations(
    [0, 0.75, 1.5, 2.25, 3].map((x, i) => ({
      id: String(i),
      x,
      points: [
        { y: 0, z: -1 },
        { y: 1 - x / 3, z: -1, knuckle: 'chine' as const },
        { y: 1 - x / 3, z: 1 },
      ],
    })),
  ),
)

describe('a tape line', () => {
  it('has on a wedge with plumb sides the length and the half breadths of plain geometry', () => {
    const { table, notes } = tapeLine(wedge, { heightLowM: 0.2, spacingM: 0.5 })
    // A level line on the side of the wedge is the hypotenuse of 3 m by 1 m.
    expect(table!.lengthM).toBeCloseTo(Math.hypot(3, 1), 6)
    expect(table!.tapeM).toBeCloseTo(2 * table!.lengthM, 12)
    for (const { xM, heightM, halfBreadthM } of table!.rows) {
      expect(heightM).toBeCloseTo(0.2, 12)
      expect(halfBreadthM).toBeCloseTo(1 - xM / 3, 6)
    }
    expect(notes.map(({ code }) => code)).toEqual(['marking.lineHeightsAssumed'])
  })

  it('passes its three heights, and may lie under water', () => {
    const { table, notes } = tapeLine(powerboat, {
      heightStemM: 0.2,
      heightLowM: -0.05,
      heightSternM: -0.02,
      spacingM: 0.02,
    })
    expect(notes).toEqual([])
    expect(table!.rows[0]!.heightM).toBeCloseTo(-0.02, 9)
    expect(table!.rows.at(-1)!.heightM).toBeCloseTo(0.2, 9)
    expect(Math.min(...table!.rows.map((row) => row.heightM))).toBeCloseTo(-0.05, 4)
  })

  it.each([
    ['no height at all', { spacingM: 0.5 }, 'marking.lineWithoutHeight'],
    ['a height in the wrong unit', { heightLowM: 12, spacingM: 0.5 }, 'marking.stripeHeight'],
    ['a height that is no number', { heightLowM: Number.NaN, spacingM: 0.5 }, 'marking.stripeHeight'],
    ['a height over the sheer', { heightLowM: 1.9, spacingM: 0.5 }, 'marking.stripeOffHull'],
    ['a height under the keel', { heightLowM: -1.9, spacingM: 0.5 }, 'marking.stripeOffHull'],
    ['marks nowhere', { heightLowM: 0.1, spacingM: 0 }, 'marking.stripeSpacing'],
  ])('is not struck with %s', (_, input, code) => {
    const { table, notes } = tapeLine(powerboat, input)
    expect(table).toBeUndefined()
    expect(notes.map((note) => note.code)).toEqual([code])
  })
})
