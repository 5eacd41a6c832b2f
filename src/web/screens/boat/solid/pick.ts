/** Which face of the boat lies under a place on the screen, and where a face is best pointed at. */
import type { SolidFace } from '#plan'
import type { Projected } from './view.ts'

type Point = readonly [x: number, y: number]

/** Twice the area of a triangle on the screen: positive where it is seen from inside, for y runs down. */
const turn = ({ x, y }: Projected, a: number, b: number, c: number): number =>
  (x[b]! - x[a]!) * (y[c]! - y[a]!) - (x[c]! - x[a]!) * (y[b]! - y[a]!)

export const isSeen = (at: Projected, a: number, b: number, c: number): boolean => turn(at, a, b, c) < 0

/** How near the triangle is at the place, or nothing when it does not lie there. */
function nearAt(
  at: Projected,
  [a, b, c]: readonly [number, number, number],
  [px, py]: Point,
): number | undefined {
  const { x, y, near } = at
  const whole = turn(at, a, b, c)
  if (!(whole < 0)) return undefined
  const part = (m: number, n: number): number =>
    ((x[n]! - x[m]!) * (py - y[m]!) - (px - x[m]!) * (y[n]! - y[m]!)) / whole
  const [wa, wb, wc] = [part(b, c), part(c, a), part(a, b)]
  if (wa < 0 || wb < 0 || wc < 0) return undefined
  return wa * near[a]! + wb * near[b]! + wc * near[c]!
}

/** The nearest face, of those that look at the eye. */
export function faceAt(faces: readonly SolidFace[], at: Projected, place: Point): SolidFace | undefined {
  let best: { readonly face: SolidFace; readonly near: number } | undefined
  for (const face of faces)
    for (let k = 0; k < face.triangles.length; k += 3) {
      const corners = [face.triangles[k]!, face.triangles[k + 1]!, face.triangles[k + 2]!] as const
      const near = nearAt(at, corners, place)
      if (near !== undefined && (best === undefined || near > best.near)) best = { face, near }
    }
  return best?.face
}

/** A place well inside what is seen of a face: in the triangle nearest to the middle of its seen part. */
export function placeOn(faces: readonly SolidFace[], face: SolidFace, at: Projected): Point | undefined {
  const seen: { readonly middle: Point; readonly area: number }[] = []
  for (let k = 0; k < face.triangles.length; k += 3) {
    const [a, b, c] = [face.triangles[k]!, face.triangles[k + 1]!, face.triangles[k + 2]!]
    const area = -turn(at, a, b, c) / 2
    if (area <= 0) continue
    seen.push({ middle: [(at.x[a]! + at.x[b]! + at.x[c]!) / 3, (at.y[a]! + at.y[b]! + at.y[c]!) / 3], area })
  }
  const whole = seen.reduce((sum, { area }) => sum + area, 0)
  if (whole === 0) return undefined
  const mean = (n: 0 | 1): number => seen.reduce((sum, { middle, area }) => sum + middle[n] * area, 0) / whole
  const [mx, my] = [mean(0), mean(1)]
  const far = ([x, y]: Point): number => Math.hypot(x - mx, y - my)
  const inTurn = [...seen].sort((a, b) => far(a.middle) - far(b.middle)).slice(0, mostTried)
  return inTurn.find(({ middle }) => faceAt(faces, at, middle)?.id === face.id)?.middle
}

/** Behind more of them than this the face is hidden for all that matters. */
const mostTried = 40
