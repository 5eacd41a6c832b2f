import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { turnOf } from './keys.ts'
import {
  axesOf,
  between,
  extentOf,
  firstView,
  fitting,
  moved,
  namedViews,
  projected,
  turned,
  type View,
  zoomed,
} from './view.ts'

const size = { width: 600, height: 300 }
/** A box 8 m long, 2 m wide and 1 m high, with a mark at the bow to port. */
const corners = Float32Array.from([0, -1, 0, 8, 1, 1, 8, 1, 0])
const extent = extentOf(corners)
/** All eight of them. */
const box = [0, 1, 2, 3, 4, 5, 6, 7].flatMap((n) => [8 * (n & 1), ((n >> 1) & 1) * 2 - 1, n >> 2])
const perM = (view: View): number => fitting(view, extent, size)
const shown = (view: View) => projected(corners, { view, size, extent })
const at = (view: View, n: number): readonly [number, number] => {
  const { x, y } = shown(view)
  return [x[n]!, y[n]!]
}

const angle = fc.double({ min: -3, max: 3, noNaN: true })
const anyView = fc.record({
  turn: angle,
  tilt: fc.double({ min: -1.5, max: 1.5, noNaN: true }),
  zoom: fc.double({ min: 1.1, max: 8, noNaN: true }),
  shift: fc.tuple(angle, angle),
})

describe('the views with a name', () => {
  it('show the side with the bow to the right, above with port upward', () => {
    const [aft, bow] = [at(namedViews.side, 0), at(namedViews.side, 2)]
    expect(bow[0] - aft[0]).toBeCloseTo(8 * perM(namedViews.side), 3)
    expect(bow[1]).toBeCloseTo(aft[1], 3)
    expect(at(namedViews.side, 1)[1]).toBeCloseTo(aft[1] - perM(namedViews.side), 3)
    const [starboard, port] = [at(namedViews.above, 0), at(namedViews.above, 2)]
    expect(port[0] - starboard[0]).toBeCloseTo(8 * perM(namedViews.above), 3)
    expect(starboard[1] - port[1]).toBeCloseTo(2 * perM(namedViews.above), 3)
  })

  it('show port at the right from ahead, and at the left from astern', () => {
    expect(at(namedViews.bow, 2)[0] - at(namedViews.bow, 0)[0]).toBeCloseTo(2 * perM(namedViews.bow), 3)
    expect(at(namedViews.astern, 0)[0] - at(namedViews.astern, 2)[0]).toBeCloseTo(
      2 * perM(namedViews.astern),
      3,
    )
  })

  it('show all of her, as large as she can be, and so does every other at zoom 1', () => {
    const margins = (view: View): readonly number[] => {
      const { x, y } = projected(box, { view, size, extent })
      return [Math.min(...x), size.width - Math.max(...x), Math.min(...y), size.height - Math.max(...y)]
    }
    const all: readonly View[] = [
      firstView,
      ...Object.values(namedViews),
      { ...firstView, turn: 1, tilt: -1.2 },
    ]
    for (const view of all) expect(Math.min(...margins(view))).toBeCloseTo(20, 2)
  })
})

describe('a view', () => {
  it('has right-handed axes of length one: right × up looks at the eye', () => {
    fc.assert(
      fc.property(anyView, (view) => {
        const { eye, right, up } = axesOf(view)
        const cross = [
          right[1] * up[2] - right[2] * up[1],
          right[2] * up[0] - right[0] * up[2],
          right[0] * up[1] - right[1] * up[0],
        ]
        cross.forEach((value, n) => {
          expect(value).toBeCloseTo(eye[n]!, 12)
        })
        expect(Math.hypot(...eye)).toBeCloseTo(1, 12)
      }),
    )
  })

  it('comes nearer about the place that is pointed at', () => {
    fc.assert(
      fc.property(anyView, fc.double({ min: 1, max: 1.4, noNaN: true }), (view, by) => {
        const [x, y] = at(view, 1)
        const near = zoomed(view, by, [x - size.width / 2, y - size.height / 2])
        expect(at(near, 1)[0]).toBeCloseTo(x, 1)
        expect(at(near, 1)[1]).toBeCloseTo(y, 1)
      }),
    )
  })

  it('comes no nearer than twelve times, and shows her in the middle when it is far again', () => {
    expect(zoomed(firstView, 100).zoom).toBe(12)
    expect(zoomed(zoomed(firstView, 3, [50, 20]), 0.01)).toEqual(firstView)
    expect(moved(firstView, [9, 9])).toEqual(firstView)
    expect(at(moved(zoomed(firstView, 2), [9, -4]), 0)[0]).toBeCloseTo(at(zoomed(firstView, 2), 0)[0] + 9, 3)
  })

  it('is tipped no further than straight down or up, and comes round by the shorter way', () => {
    expect(turned(firstView, 0, 9).tilt).toBeCloseTo(Math.PI / 2, 12)
    expect(turned(firstView, 0, -9).tilt).toBeCloseTo(-Math.PI / 2, 12)
    const half = between({ ...firstView, turn: 3 }, { ...firstView, turn: -3 }, 0.5)
    expect(Math.abs(half.turn)).toBeCloseTo(Math.PI, 9)
  })
})

it('keys turn her and bring her nearer; Home shows all of her from the first place', () => {
  const press = (view: View, key: string): View => turnOf(key)!(view)
  expect(press(firstView, 'ArrowUp').tilt).toBeGreaterThan(firstView.tilt)
  expect(press(press(firstView, 'ArrowLeft'), 'ArrowRight').turn).toBeCloseTo(firstView.turn, 12)
  expect(press(firstView, '+').zoom).toBe(1.25)
  expect(press(press(firstView, '+'), '−').zoom).toBe(1)
  expect(press(press(press(firstView, '+'), 'ArrowLeft'), 'Home')).toEqual(firstView)
  expect(turnOf('a')).toBeUndefined()
  expect(turnOf('toString')).toBeUndefined()
})
