/** Heights over the floating waterline at which a hull is cut: level, or running up and down along the boat. */

import type { Level } from '#core/geometry'

/** z in metres, or z as a function of x, such as a sheered stripe edge or the water against a trimmed hull. */
export type Height = number | ((x: number) => number)

export const heightAt = (height: Height, x: number): number =>
  typeof height === 'number' ? height : height(x)

export const levelOf = (height: Height): Level =>
  typeof height === 'number' ? (_x, _y, z) => z - height : (x, _y, z) => z - height(x)

/** The higher of two heights everywhere. */
export const higherOf = (a: Height, b: Height): Height =>
  typeof a === 'number' && typeof b === 'number'
    ? Math.max(a, b)
    : (x) => Math.max(heightAt(a, x), heightAt(b, x))
