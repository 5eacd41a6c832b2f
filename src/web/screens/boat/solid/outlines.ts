/** Edges of the closed boat with the two faces that meet there, and those that stand as her outline to the eye. */
import type { Vector } from './view.ts'

type Faces = readonly { readonly kind: string; readonly triangles: Uint32Array }[]

export type EdgeTable = {
  /** Two points an edge. */
  readonly pairs: Uint32Array
  /** Outward normals of the two triangles, six numbers an edge. */
  readonly normals: Float32Array
}

/** What lies on the deck closes nothing, and edges of one triangle alone are left out. */
export function edgeTable(positions: Float32Array, faces: Faces): EdgeTable {
  const first = new Map<number, number>()
  const [pairs, normals]: [number[], number[]] = [[], []]
  const count = positions.length / 3
  const all = faces.flatMap(({ kind, triangles }) => (kind === 'deck zone' ? [] : [triangles]))
  const seen: number[] = []
  for (const triangles of all)
    for (let k = 0; k < triangles.length; k += 3) {
      const normal = normalOf(positions, triangles, k)
      seen.push(...normal)
      const own = seen.length - 3
      for (let n = 0; n < 3; n += 1) {
        const [a, b] = [triangles[k + n]!, triangles[k + ((n + 1) % 3)]!]
        const key = a < b ? a * count + b : b * count + a
        const other = first.get(key)
        if (other === undefined) first.set(key, own)
        else {
          pairs.push(a, b)
          normals.push(seen[other]!, seen[other + 1]!, seen[other + 2]!, ...normal)
        }
      }
    }
  return { pairs: Uint32Array.from(pairs), normals: Float32Array.from(normals) }
}

function normalOf(positions: Float32Array, triangles: Uint32Array, k: number): Vector {
  const [a, b, c] = [3 * triangles[k]!, 3 * triangles[k + 1]!, 3 * triangles[k + 2]!]
  const at = (n: number) => positions[n]!
  const [px, py, pz] = [at(b) - at(a), at(b + 1) - at(a + 1), at(b + 2) - at(a + 2)]
  const [qx, qy, qz] = [at(c) - at(a), at(c + 1) - at(a + 1), at(c + 2) - at(a + 2)]
  const normal: Vector = [py * qz - pz * qy, pz * qx - px * qz, px * qy - py * qx]
  const size = Math.hypot(...normal) || 1
  return [normal[0] / size, normal[1] / size, normal[2] / size]
}

/** Edges between a face that is seen and one that is turned away. */
export function outlineOf({ pairs, normals }: EdgeTable, [ex, ey, ez]: Vector): Uint32Array {
  const found: number[] = []
  for (let k = 0; k < pairs.length; k += 2) {
    const n = 3 * k
    const one = normals[n]! * ex + normals[n + 1]! * ey + normals[n + 2]! * ez
    const two = normals[n + 3]! * ex + normals[n + 4]! * ey + normals[n + 5]! * ez
    if (one > 0 !== two > 0) found.push(pairs[k]!, pairs[k + 1]!)
  }
  return Uint32Array.from(found)
}

/** Pieces of a line put together as far as they hang on each other, so that dashes run on. */
export function chainsOf(pairs: Uint32Array): readonly (readonly number[])[] {
  const next = new Map<number, number[]>()
  const join = (a: number, b: number): void => void next.set(a, [...(next.get(a) ?? []), b])
  for (let k = 0; k < pairs.length; k += 2) {
    join(pairs[k]!, pairs[k + 1]!)
    join(pairs[k + 1]!, pairs[k]!)
  }
  const take = (from: number): number | undefined => {
    const to = next.get(from)?.[0]
    if (to === undefined) return undefined
    next.set(from, next.get(from)!.slice(1))
    const back = next.get(to)!
    back.splice(back.indexOf(from), 1)
    return to
  }
  const chains: number[][] = []
  // Ends first; what is left then has none and is a ring.
  const starts = [...next.keys()]
    .sort((a, b) => (next.get(a)!.length % 2) - (next.get(b)!.length % 2))
    .reverse()
  for (const start of starts)
    for (let on = take(start); on !== undefined; ) {
      const chain = [start, on]
      for (let to = take(on); to !== undefined; to = take(to)) chain.push(to)
      chains.push(chain)
      on = take(start)
    }
  return chains
}
