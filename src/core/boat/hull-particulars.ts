/** Main dimensions of a hull read off its surface. */

import { type Polyline, polylineLength } from '#core/geometry'
import type { HullParticulars, HullSkin, HullWater } from './hull.ts'
import { allStrips, contourWithin, edgeLine, keelLine, sheerHeightAt, sheerLine } from './hull-lines.ts'

const extent = (values: readonly number[]): number =>
  values.length === 0 ? 0 : Math.max(...values) - Math.min(...values)

/** Plan area between a line and the centreline, both sides. */
const planArea = (line: Polyline): number =>
  line.reduce((sum, p, i) => (i === 0 ? 0 : sum + (p.x - line[i - 1]!.x) * (p.y + line[i - 1]!.y)), 0)

/** Particulars of the hull between its aftmost and foremost station. */
export const hullParticulars = (hull: HullSkin & { readonly water: HullWater }): HullParticulars => {
  const places = hull.surface.along.values
  const [aft, fore] = [places[0]!, places.at(-1)!]
  const sheer = sheerLine(hull)
  const water = contourWithin(hull.water.contour, allStrips(hull)).flat()
  const inner = hull.surface.strips.flatMap(({ rows }) => rows.flatMap((row) => row.y))
  const edges = hull.edges.flatMap((_, strip) => edgeLine(hull, strip))
  return {
    lengthOverall: fore - aft,
    lengthWaterline: extent(water.map((p) => p.x)),
    beamOverall: 2 * Math.max(...inner, ...edges.map((p) => p.y)),
    beamWaterline: 2 * Math.max(0, ...water.map((p) => p.y)),
    draft: Math.max(0, ...keelLine(hull).map((p) => -p.z)),
    freeboardStem: sheerHeightAt(hull, fore),
    freeboardMid: sheerHeightAt(hull, (aft + fore) / 2),
    freeboardStern: sheerHeightAt(hull, aft),
    displacedVolume: 2 * hull.water.below.volume,
    sheerLength: polylineLength(sheer),
    sheerPlanArea: planArea(sheer),
  }
}
