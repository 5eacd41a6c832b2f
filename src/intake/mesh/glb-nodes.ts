/** The tree of nodes of a GLB file: which shapes stand where. Matrices are 4 by 4, column after column. */
import { asPart, has, type JsonPart, listIn, numbersIn, partAt, partFault, wholeIn } from './glb-json.ts'

export type Matrix = readonly number[]

export type Placed = { readonly mesh: number; readonly matrix: Matrix }

const identity: Matrix = [1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1]

/** Every shape of the scene that opens first, or of all nodes where there is no scene. */
export function placedMeshes(root: JsonPart): readonly Placed[] {
  const seen = new Set<number>()
  const placed: Placed[] = []
  const stack = startNodes(root).map((node) => ({ node, matrix: identity }))
  for (let next = stack.pop(); next !== undefined; next = stack.pop()) {
    const part = partAt(root, 'nodes', next.node)
    if (seen.has(next.node)) throw partFault(part.place)
    seen.add(next.node)
    const matrix = product(next.matrix, matrixOf(part))
    if (has(part, 'mesh')) placed.push({ mesh: wholeIn(part, 'mesh'), matrix })
    for (const node of indicesIn(part, 'children')) stack.push({ node, matrix })
  }
  return placed
}

function startNodes(root: JsonPart): readonly number[] {
  if (listIn(root, 'scenes').length > 0)
    return indicesIn(partAt(root, 'scenes', wholeIn(root, 'scene', 0)), 'nodes')
  const nodes = listIn(root, 'nodes')
  const children = new Set(nodes.flatMap((node, i) => indicesIn(asPart(node, `nodes/${i}`), 'children')))
  return nodes.map((_, i) => i).filter((i) => !children.has(i))
}

function indicesIn(part: JsonPart, key: string): readonly number[] {
  return listIn(part, key).map((value) => {
    if (typeof value !== 'number' || !Number.isSafeInteger(value) || value < 0)
      throw partFault(`${part.place}/${key}`)
    return value
  })
}

function matrixOf(node: JsonPart): Matrix {
  const given = numbersIn(node, 'matrix', 16)
  if (given !== undefined) return given
  const [tx, ty, tz] = numbersIn(node, 'translation', 3) ?? [0, 0, 0]
  const [x, y, z, w] = numbersIn(node, 'rotation', 4) ?? [0, 0, 0, 1]
  const [sx, sy, sz] = numbersIn(node, 'scale', 3) ?? [1, 1, 1]
  return placing({ turn: [x!, y!, z!, w!], scale: [sx!, sy!, sz!], move: [tx!, ty!, tz!] })
}

type Placing = {
  readonly turn: readonly [number, number, number, number]
  readonly scale: readonly [number, number, number]
  readonly move: readonly [number, number, number]
}

/** Scaled, then turned by a unit quaternion, then moved. */
function placing({ turn: [x, y, z, w], scale: [sx, sy, sz], move: [tx, ty, tz] }: Placing): Matrix {
  return [
    (1 - 2 * (y * y + z * z)) * sx,
    2 * (x * y + z * w) * sx,
    2 * (x * z - y * w) * sx,
    0,
    2 * (x * y - z * w) * sy,
    (1 - 2 * (x * x + z * z)) * sy,
    2 * (y * z + x * w) * sy,
    0,
    2 * (x * z + y * w) * sz,
    2 * (y * z - x * w) * sz,
    (1 - 2 * (x * x + y * y)) * sz,
    0,
    tx,
    ty,
    tz,
    1,
  ]
}

function product(a: Matrix, b: Matrix): Matrix {
  return a.map((_, at) => {
    const [row, column] = [at % 4, 4 * Math.floor(at / 4)]
    let sum = 0
    for (let k = 0; k < 4; k++) sum += a[row + 4 * k]! * b[column + k]!
    return sum
  })
}

/** Whether a matrix turns left into right, so that triangles run the other way round. */
export function isMirror(m: Matrix): boolean {
  const minor = (a: number, b: number) => m[4 + a]! * m[8 + b]! - m[4 + b]! * m[8 + a]!
  return m[0]! * minor(1, 2) - m[1]! * minor(0, 2) + m[2]! * minor(0, 1) < 0
}
