import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { flow } from './flow.ts'
import { dot } from './shapes.ts'
import type { Strip } from './strips.ts'

/** Draws a dot at its top, its radius naming it. */
const strip = (height: number, name = height): Strip => ({
  height,
  draw: (top) => [dot([0, top], name, 'ink')],
})
const tops = (pages: ReturnType<typeof flow>) =>
  pages.map((page) => page.map((shape) => (shape.kind === 'circle' ? [shape.radius, shape.at[1]] : [])))

describe('flow', () => {
  it('sets parts one under the other with their gaps, none at the top of a page', () => {
    const pages = flow(
      [
        { gap: 5, units: [[strip(10)]] },
        { gap: 5, units: [[strip(20)]] },
      ],
      { top: 0, bottom: 100 },
    )
    expect(tops(pages)).toEqual([
      [
        [10, 0],
        [20, 15],
      ],
    ])
  })

  it('keeps a unit together where a page has room for it', () => {
    const pages = flow([{ gap: 0, units: [[strip(60)], [strip(30), strip(31)]] }], { top: 0, bottom: 100 })
    expect(tops(pages)).toEqual([
      [[60, 0]],
      [
        [30, 0],
        [31, 30],
      ],
    ])
  })

  it('never leaves a heading alone at the foot of a page', () => {
    const pages = flow(
      [
        { gap: 0, units: [[strip(85)]] },
        { gap: 0, heading: strip(10), units: [[strip(20)]] },
      ],
      { top: 0, bottom: 100 },
    )
    expect(tops(pages)).toEqual([
      [[85, 0]],
      [
        [10, 0],
        [20, 10],
      ],
    ])
  })

  it('repeats the head of a table on every page it goes on to', () => {
    const rows = Array.from({ length: 5 }, () => [strip(40)])
    const pages = flow([{ gap: 0, heading: strip(1), repeat: strip(10), units: rows }], {
      top: 0,
      bottom: 100,
    })
    expect(tops(pages).map((page) => page.map(([name]) => name))).toEqual([
      [1, 10, 40, 40],
      [10, 40, 40],
      [10, 40],
    ])
  })

  it('drops nothing and sets nothing below the foot of the page', () => {
    const unit = fc.array(fc.integer({ min: 1, max: 40 }), { minLength: 1, maxLength: 8 })
    fc.assert(
      fc.property(fc.array(fc.array(unit, { maxLength: 6 }), { maxLength: 6 }), (parts) => {
        const flowing = parts.map((units) => ({
          gap: 3,
          units: units.map((heights) => heights.map((height) => strip(height))),
        }))
        const pages = tops(flow(flowing, { top: 10, bottom: 110 }))
        const set = pages.flat()
        expect(set.map(([name]) => name)).toEqual(parts.flat(2))
        for (const [height, top] of set) expect(top! + height!).toBeLessThanOrEqual(110)
      }),
    )
  })
})
