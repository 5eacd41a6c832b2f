/** Main dimensions of a hull read off its surface. */

import { greatestOf, nodeSpline, type Polyline, polylineLength } from '#core/geometry'
import { greatestDepth } from './extremes.ts'
import type { HullParticulars, HullSkin, HullWater } from './hull.ts'
import { allStrips, contourWithin, sheerHeightAt, sheerLine } from './hull-lines.ts'

const extent = (values: readonly number[]): number =>
  values.length === 0 ? 0 : Math.max(...values) - Math.min(...values)

/** Plan area between a line and the centreline, both sides. */
const planArea = (line: Polyline): number =>
  line.reduce((sum, p, i) => (i === 0 ? 0 : sum + (p.x - line[i - 1]!.x) * (p.y + line[i - 1]!.y)), 0)

/** Greatest half breadth of the surface, along the lines through its nodes. */
const halfBeam = ({ surface }: HullSkin): number =>
  Math.max(
    ...surface.strips.flatMap(({ cells }, strip) =>
      Array.from(
        { length: cells + 1 },
        (_, node) => greatestOf(nodeSpline(surface, { strip, node, axis: 'y' })).value,
      ),
    ),
  )

/** Particulars of the hull between its aftmost and foremost station. */
export const hullParticulars = (hull: HullSkin & { readonly water: HullWater }): HullParticulars => {
  const places = hull.surface.along.values
  const [aft, fore] = [places[0]!, places.at(-1)!]
  const sheer = sheerLine(hull)
  const water = contourWithin(hull.water.contour, allStrips(hull)).flat()
  return {
    lengthOverall: fore - aft,
    lengthWaterline: extent(water.map((p) => p.x)),
    beamOverall: 2 * halfBeam(hull),
    beamWaterline: 2 * Math.max(0, ...water.map((p) => p.y)),
    draft: Math.max(0, greatestDepth(hull)),
    freeboardStem: sheerHeightAt(hull, fore),
    freeboardMid: sheerHeightAt(hull, (aft + fore) / 2),
    freeboardStern: sheerHeightAt(hull, aft),
    displacedVolume: 2 * hull.water.below.volume,
    sheerLength: polylineLength(sheer),
    sheerPlanArea: planArea(sheer),
  }
}
