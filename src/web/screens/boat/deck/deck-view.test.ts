import { describe, expect, it } from 'vitest'
import { breadthAt, deckView, middleOf, wholeBounds, zoneBounds } from './deck-view.ts'

const bounds = { aft: 0, fore: 7, starboard: -1.2, port: 1.2 }

describe('a deck on the screen', () => {
  it.each([320, 1200])('at %d px lies within it, and each place is found again', (width) => {
    const view = deckView(bounds, width)
    for (const place of [
      [0, -1.2],
      [7, 1.2],
      [3, 0.4],
    ] as const) {
      const [x, y] = view.at(place)
      expect(x).toBeGreaterThanOrEqual(0)
      expect(x).toBeLessThanOrEqual(width)
      expect(y).toBeGreaterThanOrEqual(0)
      expect(y).toBeLessThanOrEqual(view.height)
      const again = view.back([x, y])
      expect(again[0]).toBeCloseTo(place[0], 9)
      expect(again[1]).toBeCloseTo(place[1], 9)
    }
  })

  it('has the bow right and port up, or on a phone the bow up and port left', () => {
    const wide = deckView(bounds, 1200)
    expect(wide.at([6, 0])[0]).toBeGreaterThan(wide.at([1, 0])[0])
    expect(wide.at([3, 1])[1]).toBeLessThan(wide.at([3, -1])[1])
    const phone = deckView(bounds, 320)
    expect(phone.at([6, 0])[1]).toBeLessThan(phone.at([1, 0])[1])
    expect(phone.at([3, 1])[0]).toBeLessThan(phone.at([3, -1])[0])
  })
})

it('the breadth of the deck is read between the points of the sheer, and at its ends beyond them', () => {
  const sheer = [
    [0, 0.8],
    [4, 1.2],
    [6, 0],
  ] as const
  expect(breadthAt(sheer, 2)).toBeCloseTo(1, 12)
  expect(breadthAt(sheer, -1)).toBe(0.8)
  expect(breadthAt(sheer, 9)).toBe(0)
})

it('what is shown holds sheer, shapes outside it, or one zone alone', () => {
  const whole = wholeBounds([[0, 1]], [[[-0.6, 0.4]]])
  expect(whole.aft).toBeCloseTo(-0.7, 12)
  expect(whole.starboard).toBeCloseTo(-1.1, 12)
  expect(zoneBounds([])).toBeUndefined()
})

it('the middle of a shape is its centroid, and that of its corners where it encloses nothing', () => {
  expect(
    middleOf([
      [0, 0],
      [2, 0],
      [2, 1],
      [0, 1],
    ]),
  ).toEqual([1, 0.5])
  expect(
    middleOf([
      [0, 0],
      [2, 0],
    ]),
  ).toEqual([1, 0])
})
