import { expect, it } from 'vitest'
import { beyondSheer, outsideSheer } from './beyond-sheer.ts'

const sheer = [
  [0, 0.8],
  [4, 1.2],
  [6, 0],
] as const
const on = { sheer, slack: 0.05 }

it('a corner on the deck is inside the sheer, on either side', () => {
  expect(outsideSheer(sheer, [2, 1])).toBeCloseTo(0, 12)
  expect(outsideSheer(sheer, [5, -0.5])).toBeCloseTo(-0.1, 12)
})

it('a corner is as far out as it lies beside the sheer, behind the stern or before the stem', () => {
  expect(outsideSheer(sheer, [2, -1.3])).toBeCloseTo(0.3, 12)
  expect(outsideSheer(sheer, [-0.4, 0])).toBeCloseTo(0.4, 12)
  expect(outsideSheer(sheer, [6.25, 0])).toBeCloseTo(0.25, 12)
  expect(outsideSheer([], [9, 9])).toBe(0)
})

it('the corner that lies farthest out is named, once it is farther than a tape may err', () => {
  expect(
    beyondSheer(
      [
        [1, 0],
        [2, 1.04],
        [3, 1.1],
      ],
      on,
    ),
  ).toEqual([])
  const [note] = beyondSheer(
    [
      [1, 0],
      [2, 1.3],
      [3, 1.2],
      [4, 1.3],
    ],
    on,
  )
  expect(note).toMatchObject({ code: 'boat.deckOutsideSheer', data: { corner: 2, xM: 2, count: 3 } })
  expect(note?.data.byM).toBeCloseTo(0.3, 12)
})
