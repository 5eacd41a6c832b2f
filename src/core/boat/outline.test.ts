import { expect, it } from 'vitest'
import { hullFromSizes } from './hull-from-sizes.ts'
import { hullOutline } from './outline.ts'

const result = hullFromSizes({ form: 'hard-chine', lengthOverall: 7.7, beam: 2.5, freeboardStem: 1.25 })
if (!result.ok) throw new Error(JSON.stringify(result.faults))
const { hull } = result
const outline = hullOutline(hull, [0, 0.3])

it('draws keel, chine, sheer and waterlines from the side and from above on the same stations', () => {
  const { sheerPlan, halfBreadthPlan } = outline
  expect(sheerPlan.knuckles.map((knuckle) => knuckle.kind)).toEqual(['chine'])
  expect(sheerPlan.waterlines.map(({ height }) => height)).toEqual([0, 0.3])
  for (const [, z] of sheerPlan.waterlines[1]!.lines.flat()) expect(z).toBeCloseTo(0.3, 9)
  for (const [, y] of halfBreadthPlan.keel) expect(y).toBeCloseTo(0, 12)
  expect(sheerPlan.sheer.map(([x]) => x)).toEqual(halfBreadthPlan.sheer.map(([x]) => x))
  expect(sheerPlan.keel[0]).toEqual([0, expect.closeTo(-hull.particulars.draft, 3)])
  expect(sheerPlan.sheer.at(-1)).toEqual([expect.closeTo(7.7, 9), expect.closeTo(1.25, 9)])
})

it('draws every station through its measured points', () => {
  expect(outline.bodyPlan.map((section) => section.id)).toEqual(hull.stations.map((station) => station.id))
  outline.bodyPlan.forEach(({ line }, i) => {
    for (const { y, z } of hull.stations[i]!.points) {
      const nearest = Math.min(...line.map(([b, h]) => Math.hypot(b - y, h - z)))
      expect(nearest).toBeLessThan(1e-9)
    }
  })
})

it('is plain data: it survives being written and read', () => {
  expect(JSON.parse(JSON.stringify(outline))).toEqual(outline)
})
