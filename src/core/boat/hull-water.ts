/** Finds once what the floating waterline makes of a hull. */

import { addBands, integrateBands } from '#core/geometry'
import { levelOf } from './height.ts'
import type { HullSkin, HullWater } from './hull.ts'
import { heightContours } from './hull-lines.ts'

export const hullWater = (skin: HullSkin): HullWater => {
  const bands = integrateBands(skin.surface, [levelOf(0)])
  return {
    below: addBands(bands.map((strip) => strip[0]!)),
    above: addBands(bands.map((strip) => strip[1]!)),
    contour: heightContours(skin, [0])[0]!,
  }
}
