/** Greatest reach of the long edges of a hull, read off the very curves of its surface. Boat frame, metres. */

import { greatestOf, nodeSpline, type Spline } from '#core/geometry'
import type { HullSkin } from './hull.ts'

const upsideDown = ({ knots, values, slopes }: Spline): Spline => ({
  knots,
  values: values.map((value) => -value),
  slopes: slopes.map((slope) => -slope),
})

/** Depth of the lowest point of keel and stem below z = 0, negative when all of them lie above. */
export const greatestDepth = ({ surface }: HullSkin): number =>
  greatestOf(upsideDown(nodeSpline(surface, { strip: 0, node: 0, axis: 'z' }))).value

/** Greatest half breadth of the sheer. */
export const greatestSheer = ({ surface }: HullSkin): number => {
  const strip = surface.strips.length - 1
  return greatestOf(nodeSpline(surface, { strip, node: surface.strips[strip]!.cells, axis: 'y' })).value
}
