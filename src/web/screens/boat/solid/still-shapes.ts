/** The picture as flat shapes for a page that draws no space: nearer faces over farther ones, hidden lines left out. */

import { isSeen } from './pick.ts'
import type { FaceLook, LineLook, Picture } from './picture.ts'
import type { Camera, Projected, Size } from './view.ts'

export type StillFace = { readonly look: FaceLook; readonly path: string }
export type StillLine = { readonly look: LineLook; readonly path: string }
export type StillShapes = {
  readonly faces: readonly StillFace[]
  readonly lines: readonly StillLine[]
  /** Measured points that nothing hides. */
  readonly dots: readonly (readonly [x: number, y: number])[]
}

const place = ({ x, y }: Projected, n: number): string => `${x[n]!.toFixed(1)} ${y[n]!.toFixed(1)}`

export type StillAsked = Picture & {
  readonly at: Projected
  readonly points: Projected
  readonly camera: Camera
}

export function stillShapes({ faces, lines, at, points, camera }: StillAsked): StillShapes {
  const { size, view } = camera
  const depths = depthsOf(faces, at, size)
  return {
    faces: stacked(faces, at, view.tilt < 0),
    lines: lines
      .map((look) => ({ look, path: seenPath(look.pairs, at, depths) }))
      .filter(({ path }) => path !== ''),
    dots: Array.from(points.x, (x, n) => [x, points.y[n]!] as const).filter((_, n) =>
      isPieceSeen(points, depths, n, n),
    ),
  }
}

/**
 * What may hide another face is drawn after it: topsides hide the deck behind them, and the bottom where one looks down
 * on her; where one looks up, the bottom hides the topsides. Faces of one kind look away from each other.
 */
const order = {
  down: [
    'deck',
    'deck zone',
    'bottom',
    'boot-top',
    'transom',
    'topsides-port',
    'topsides-starboard',
    'stripe',
  ],
  up: ['deck', 'deck zone', 'topsides-port', 'topsides-starboard', 'stripe', 'boot-top', 'transom', 'bottom'],
}

/** The triangles of a face that look at the eye, as one path: within it there is no seam. */
function stacked(faces: readonly FaceLook[], at: Projected, fromBelow: boolean): readonly StillFace[] {
  const rank = fromBelow ? order.up : order.down
  return [...faces]
    .sort((a, b) => rank.indexOf(a.face.kind) - rank.indexOf(b.face.kind))
    .map((look) => ({ look, path: seenTriangles(look, at) }))
    .filter(({ path }) => path !== '')
}

function seenTriangles({ face: { triangles } }: FaceLook, at: Projected): string {
  const parts: string[] = []
  for (let k = 0; k < triangles.length; k += 3) {
    const [a, b, c] = [triangles[k]!, triangles[k + 1]!, triangles[k + 2]!]
    if (isSeen(at, a, b, c)) parts.push(`M${place(at, a)}L${place(at, b)}L${place(at, c)}Z`)
  }
  return parts.join('')
}

type Depths = { readonly near: Float32Array; readonly across: number; readonly size: Size }

/** Every second px is enough to tell what hides what. */
const cell = 2

function depthsOf(faces: readonly FaceLook[], at: Projected, size: Size): Depths {
  const [across, down] = [Math.ceil(size.width / cell), Math.ceil(size.height / cell)]
  const near = new Float32Array(across * down).fill(-Infinity)
  for (const { face } of faces)
    for (let k = 0; k < face.triangles.length; k += 3)
      fillDepth(near, { across, down }, at, [
        face.triangles[k]!,
        face.triangles[k + 1]!,
        face.triangles[k + 2]!,
      ])
  return { near, across, size }
}

function fillDepth(
  near: Float32Array,
  { across, down }: { readonly across: number; readonly down: number },
  at: Projected,
  [a, b, c]: readonly [number, number, number],
): void {
  const [x, y] = [[a, b, c].map((n) => at.x[n]! / cell), [a, b, c].map((n) => at.y[n]! / cell)]
  const whole = (x[1]! - x[0]!) * (y[2]! - y[0]!) - (x[2]! - x[0]!) * (y[1]! - y[0]!)
  if (whole === 0) return
  const [left, right] = [
    Math.max(0, Math.floor(Math.min(...x))),
    Math.min(across - 1, Math.ceil(Math.max(...x))),
  ]
  const [top, bottom] = [
    Math.max(0, Math.floor(Math.min(...y))),
    Math.min(down - 1, Math.ceil(Math.max(...y))),
  ]
  for (let row = top; row <= bottom; row += 1)
    for (let column = left; column <= right; column += 1) {
      const [px, py] = [column + 0.5, row + 0.5]
      const wb = ((px - x[0]!) * (y[2]! - y[0]!) - (x[2]! - x[0]!) * (py - y[0]!)) / whole
      const wc = ((x[1]! - x[0]!) * (py - y[0]!) - (px - x[0]!) * (y[1]! - y[0]!)) / whole
      if (wb < 0 || wc < 0 || wb + wc > 1) continue
      const depth = at.near[a]! + wb * (at.near[b]! - at.near[a]!) + wc * (at.near[c]! - at.near[a]!)
      const index = row * across + column
      if (depth > near[index]!) near[index] = depth
    }
}

/** Nearer than this to the surface is on it, m: a px of a face that is seen at a slant is as deep. */
const slack = 0.08

/** The middle of a piece from one point to another; of one point, itself. A piece is seen when its middle is. */
function isPieceSeen(at: Projected, { near, across, size }: Depths, a: number, b: number): boolean {
  const [x, y] = [(at.x[a]! + at.x[b]!) / 2, (at.y[a]! + at.y[b]!) / 2]
  if (x < 0 || y < 0 || x >= size.width || y >= size.height) return true
  const depth = (at.near[a]! + at.near[b]!) / 2
  const [column, row] = [Math.floor(x / cell), Math.floor(y / cell)]
  for (const [dx, dy] of around) {
    const found = near[(row + dy) * across + column + dx]
    if (found === undefined || found <= depth + slack) return true
  }
  return false
}

/** On an outline one side of the line is free. */
const around = [
  [0, 0],
  [1, 0],
  [-1, 0],
  [0, 1],
  [0, -1],
] as const

function seenPath(pairs: Uint32Array, at: Projected, depths: Depths): string {
  const parts: string[] = []
  let end = -1
  for (let k = 0; k < pairs.length; k += 2) {
    const [a, b] = [pairs[k]!, pairs[k + 1]!]
    if (!isPieceSeen(at, depths, a, b)) continue
    parts.push(a === end ? `L${place(at, b)}` : `M${place(at, a)}L${place(at, b)}`)
    end = b
  }
  return parts.join('')
}
