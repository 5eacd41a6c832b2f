import { describe, expect, it } from 'vitest'
import { areaBetween, wettedArea } from './band-area.ts'
import { hullFromSizes } from './hull-from-sizes.ts'
import type { HullSizes } from './hull-sizes.ts'
import { lineAtHeight, marksAtHeight } from './line-at-height.ts'
import { stripeArea } from './stripe-area.ts'

const drawn = (form: HullSizes['form']) => {
  const result = hullFromSizes({ form, lengthOverall: 7.7, beam: 2.5, freeboardStem: 1.25 })
  if (!result.ok) throw new Error(JSON.stringify(result.faults))
  return result.hull
}
const [powerboat, round] = [drawn('hard-chine'), drawn('round-bilge')]

describe('the line at a height', () => {
  it('runs from the transom to the stem, level, the two sides mirrored', () => {
    const port = lineAtHeight(powerboat, { z: 0.1, side: 'port' })
    const starboard = lineAtHeight(powerboat, { z: 0.1, side: 'starboard' })
    expect(port.pieces).toHaveLength(1)
    expect(port.length).toBeCloseTo(starboard.length, 12)
    port.pieces[0]!.forEach((point, i) => {
      expect(point.z).toBeCloseTo(0.1, 9)
      expect(starboard.pieces[0]![i]!.y).toBe(-point.y)
    })
    expect(port.pieces[0]![0]!.x).toBe(0)
    expect(port.pieces[0]!.at(-1)!.y).toBeCloseTo(0, 6)
  })

  it('is nothing under the keel or over the sheer', () => {
    expect(lineAtHeight(round, { z: -2, side: 'port' })).toEqual({ pieces: [], length: 0 })
    expect(lineAtHeight(round, { z: 3, side: 'port' }).pieces).toEqual([])
  })

  it('may follow a height that runs up along the boat', () => {
    const rising = (x: number) => 0.05 + 0.02 * x
    for (const { x, z } of lineAtHeight(round, { z: rising, side: 'port' }).pieces.flat()) {
      expect(z).toBeCloseTo(rising(x), 9)
    }
  })
})

describe('marks along it', () => {
  const asked = { z: 0.1, side: 'port', spacing: 0.5, from: 'sheer' } as const
  const marks = marksAtHeight(powerboat, asked)

  it('stand at even steps of x between its ends, on the line', () => {
    const inner = marks.slice(0, -1)
    inner.forEach((mark, i) => {
      expect(mark.x).toBeCloseTo(0.5 * i, 6)
    })
    for (const mark of marks) expect(mark.z).toBeCloseTo(0.1, 6)
    expect(marks.at(-1)!.y).toBeCloseTo(0, 6)
  })

  it('give the girth down from the sheer, up from the keel, and both sides of the chine', () => {
    const [aft] = marks
    const fromKeel = marksAtHeight(powerboat, { ...asked, from: 'keel' })[0]!
    const fromChine = marksAtHeight(powerboat, { ...asked, from: 'chine' })[0]!
    const [keel, chine, sheer] = powerboat.stations[0]!.points
    const side = Math.hypot(sheer!.y - chine!.y, sheer!.z - chine!.z)
    const bottom = Math.hypot(chine!.y - keel!.y, chine!.z - keel!.z)
    const share = (0.1 - chine!.z) / (sheer!.z - chine!.z)
    expect(aft!.girth).toBeCloseTo(-(1 - share) * side, 9)
    expect(fromChine.girth).toBeCloseTo(share * side, 9)
    expect(fromKeel.girth).toBeCloseTo(bottom + share * side, 9)
  })

  it('are none from a chine the hull has not got, and only the ends for a senseless spacing', () => {
    expect(marksAtHeight(round, { ...asked, from: 'chine' })).toEqual([])
    for (const spacing of [0, -1, Number.NaN, 1e-9]) {
      expect(marksAtHeight(round, { ...asked, spacing })).toHaveLength(2)
    }
    expect(marksAtHeight(round, { ...asked, spacing: 100 })).toHaveLength(2)
  })
})

describe('areas between heights', () => {
  it('of the wetted hull and the rest add up to the whole', () => {
    const rest = areaBetween(powerboat, { zLow: 0, zHigh: Number.POSITIVE_INFINITY })
    const whole = areaBetween(powerboat, { zLow: Number.NEGATIVE_INFINITY, zHigh: Number.POSITIVE_INFINITY })
    const wet = wettedArea(powerboat)
    expect(wet.sides + rest.sides).toBeCloseTo(whole.sides, 3)
    expect(wet.ends + rest.ends).toBeCloseTo(whole.ends, 9)
    expect(wet.total).toBe(wet.sides + wet.ends)
  })

  it('of a stripe are more than it shows from the side, the more the hull leans', () => {
    const high = stripeArea(round, { zLow: 0.4, zHigh: 0.5 })
    const low = stripeArea(round, { zLow: -0.2, zHigh: -0.1 })
    expect(high.area).toBeGreaterThan(high.profileArea)
    expect(low.area / low.profileArea).toBeGreaterThan(high.area / high.profileArea)
    expect(high.area).toBeCloseTo(areaBetween(round, { zLow: 0.4, zHigh: 0.5 }).sides, 12)
  })
})
