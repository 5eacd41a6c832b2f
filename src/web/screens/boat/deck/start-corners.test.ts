import { describe, expect, it } from 'vitest'
import { workFields } from '#job'
import { hasDeckShape } from '#plan'
import { breadthAt, type Place } from './deck-view.ts'
import { startCorners } from './start-corners.ts'

const sheer: readonly Place[] = [
  [0, 1.1],
  [2, 1.2],
  [4, 1.15],
  [5.5, 0.6],
  [6.3, 0],
]
const kinds = workFields.zones.fields.kind.choices.filter(hasDeckShape)

/** Shoelace formula, whichever way the corners run. */
const areaOf = (corners: readonly Place[]): number =>
  Math.abs(
    corners.reduce((sum, [x, y], i) => {
      const [x1, y1] = corners[(i + 1) % corners.length]!
      return sum + (x * y1 - x1 * y) / 2
    }, 0),
  )

describe('the first shape of a zone', () => {
  it.each(kinds)('of kind %s encloses something, and lies on the deck or behind it', (kind) => {
    const { corners } = startCorners({ kind, sheer })
    expect(corners.length).toBeGreaterThanOrEqual(4)
    expect(areaOf(corners)).toBeGreaterThan(0.03)
    for (const [x, y] of corners) expect(Math.abs(y)).toBeLessThanOrEqual(breadthAt(sheer, x) + 0.011)
  })

  it('has the length and width that are known, half of it where it is mirrored', () => {
    const sole = startCorners({ kind: 'cockpit sole', sheer, length: 2.13, width: 1.5 })
    expect(sole.mirrored).toBe(true)
    expect(areaOf(sole.corners)).toBeCloseTo((2.13 * 1.5) / 2, 9)
    const hatch = startCorners({ kind: 'hatch', sheer, length: 0.6, width: 0.45 })
    expect(hatch.mirrored).toBe(false)
    expect(areaOf(hatch.corners)).toBeCloseTo(0.27, 9)
    const console = startCorners({ kind: 'console', sheer, area: 2.56 })
    expect(areaOf(console.corners)).toBeCloseTo(2.56, 9)
    const deck = startCorners({ kind: 'side deck', sheer, length: 3, width: 0.25 })
    expect(areaOf(deck.corners)).toBeCloseTo(0.75, 6)
  })

  it('of a swim platform ends at the transom', () => {
    const { corners } = startCorners({ kind: 'swim platform', sheer, length: 0.5, width: 1.8 })
    expect(Math.max(...corners.map(([x]) => x))).toBe(0)
    expect(Math.min(...corners.map(([x]) => x))).toBe(-0.5)
  })
})
