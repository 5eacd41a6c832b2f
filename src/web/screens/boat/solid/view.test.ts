import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { turnOf } from './keys.ts'
import {
  axesOf,
  between,
  extentOf,
  filling,
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
  const perM = fitting(extent, size)

  it('show the side with the bow to the right, above with port upward', () => {
    const [aft, bow] = [at(namedViews.side, 0), at(namedViews.side, 2)]
    expect(bow[0] - aft[0]).toBeCloseTo(8 * perM, 3)
    expect(bow[1]).toBeCloseTo(aft[1], 3)
    expect(at(namedViews.side, 1)[1]).toBeCloseTo(aft[1] - perM, 3)
    const [starboard, port] = [at(namedViews.above, 0), at(namedViews.above, 2)]
    expect(port[0] - starboard[0]).toBeCloseTo(8 * perM, 3)
    expect(starboard[1] - port[1]).toBeCloseTo(2 * perM, 3)
  })

  it('show port at the right from ahead, and at the left from astern', () => {
    expect(at(namedViews.bow, 2)[0] - at(namedViews.bow, 0)[0]).toBeCloseTo(2 * perM, 3)
    expect(at(namedViews.astern, 0)[0] - at(namedViews.astern, 2)[0]).toBeCloseTo(2 * perM, 3)
  })

  it('show all of her', () => {
    for (const view of [firstView, ...Object.values(namedViews)]) {
      const { x, y } = shown(view)
      expect(Math.min(...x)).toBeGreaterThan(0)
      expect(Math.max(...x)).toBeLessThan(size.width)
      expect(Math.min(...y)).toBeGreaterThan(0)
      expect(Math.max(...y)).toBeLessThan(size.height)
    }
  })
})

it('a view that fills the picture shows all of her, as large as it can', () => {
  for (const view of [firstView, ...Object.values(namedViews)]) {
    const { x, y } = shown(filling(view, { size, extent }))
    const [left, right, top, bottom] = [Math.min(...x), Math.max(...x), Math.min(...y), Math.max(...y)]
    expect(Math.min(left, size.width - right)).toBeGreaterThan(19.9)
    expect(Math.min(top, size.height - bottom)).toBeGreaterThan(19.9)
  }
  const astern = shown(filling(namedViews.astern, { size, extent }))
  expect(Math.max(...astern.y) - Math.min(...astern.y)).toBeCloseTo(size.height - 40, 2)
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

it('keys turn her and bring her nearer', () => {
  const press = (view: View, key: string): View => turnOf(key)!(view)
  expect(press(firstView, 'ArrowUp').tilt).toBeGreaterThan(firstView.tilt)
  expect(press(press(firstView, 'ArrowLeft'), 'ArrowRight').turn).toBeCloseTo(firstView.turn, 12)
  expect(press(firstView, '+').zoom).toBe(1.25)
  expect(press(press(firstView, '+'), '−').zoom).toBe(1)
  expect(turnOf('a')).toBeUndefined()
  expect(turnOf('toString')).toBeUndefined()
})
