/** Which ways the surface of a zone looks, and how much of it each way: what sun and sky need of a curved hull. */

import { type Facing, facingOf } from './facing.ts'

/** A part of a zone taken as flat; the shares of a zone's parts add up to 1. */
export type FacingShare = Facing & { readonly share: number }

export type Triangles = {
  /** x, y, z of each point, m. */
  readonly positions: Float32Array
  /** Three corners a triangle, anticlockwise from outside. */
  readonly triangles: Uint32Array
}

const degree = Math.PI / 180

/** Parts whose normals differ by less than about these are put together: a few hundredths of the sun full on where it grazes. */
const azimuthStep = 20 * degree
const tiltStep = 15 * degree

type Sum = { x: number; y: number; z: number; area: number }

/**
 * Parts of a zone by the way they look, from the triangles of its surface.
 * @returns each part with the direction of its summed area vector, and its share of the zone's area; none where there
 * is no surface. Sorted by falling share.
 */
export function meshFacings({ positions, triangles }: Triangles): readonly FacingShare[] {
  const parts = new Map<string, Sum>()
  let whole = 0
  for (let k = 0; k < triangles.length; k += 3) {
    const normal = areaVector(positions, triangles, k)
    const area = Math.hypot(normal.x, normal.y, normal.z)
    if (area === 0) continue
    whole += area
    const key = placeOf(facingOf(normal))
    const sum = parts.get(key) ?? { x: 0, y: 0, z: 0, area: 0 }
    sum.x += normal.x
    sum.y += normal.y
    sum.z += normal.z
    sum.area += area
    parts.set(key, sum)
  }
  return [...parts.values()]
    .map((sum) => ({ ...facingOf(sum), share: sum.area / whole }))
    .sort((a, b) => b.share - a.share)
}

/** Near straight up or down every azimuth is the same. */
function placeOf({ normalAzimuth, tilt }: Facing): string {
  const band = Math.round(tilt / tiltStep)
  const isPole = band === 0 || band === Math.round(Math.PI / tiltStep)
  const sector = isPole
    ? 0
    : Math.round(normalAzimuth / azimuthStep) % Math.round((2 * Math.PI) / azimuthStep)
  return `${band} ${sector}`
}

/** Area vector of the triangle that starts at `k`, outward. */
function areaVector(positions: Float32Array, triangles: Uint32Array, k: number) {
  const [a, b, c] = [3 * triangles[k]!, 3 * triangles[k + 1]!, 3 * triangles[k + 2]!]
  const [px, py, pz] = [0, 1, 2].map((n) => positions[b + n]! - positions[a + n]!) as Triple
  const [qx, qy, qz] = [0, 1, 2].map((n) => positions[c + n]! - positions[a + n]!) as Triple
  return { x: (py * qz - pz * qy) / 2, y: (pz * qx - px * qz) / 2, z: (px * qy - py * qx) / 2 }
}

type Triple = [number, number, number]

/**
 * The two halves of a cambered deck, which lean away from its middle: each taken as flat at its mean normal.
 * @param riseOverWidth rise of the camber in its middle over its width, dimensionless; its sign has no meaning.
 * @returns one level part for a flat deck. Equation: tan tilt = 2 rise / width, exact for the mean normal of any arc.
 */
export function camberFacings(riseOverWidth: number): readonly FacingShare[] {
  const tilt = Math.atan(2 * Math.abs(riseOverWidth))
  if (tilt === 0) return [{ normalAzimuth: 0, tilt: 0, share: 1 }]
  return [
    { normalAzimuth: Math.PI / 2, tilt, share: 0.5 },
    { normalAzimuth: (3 * Math.PI) / 2, tilt, share: 0.5 },
  ]
}
