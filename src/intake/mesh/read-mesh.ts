/** The door of the mesh readers: hostile bytes to a mesh, bounded, with what was found wrong. */
import type { TriangleMesh } from '#core/geometry'
import type { Problem } from '../problem.ts'
import { checkMesh } from './check-mesh.ts'
import { readGlb } from './glb.ts'
import { MeshFault } from './mesh-fault.ts'
import { formatOf, type MeshFormat } from './mesh-format.ts'
import { mostMeshBytes } from './mesh-limits.ts'
import type { MeshWatch } from './mesh-watch.ts'
import { readObj, type SplitMesh } from './obj.ts'
import { readPly } from './ply.ts'
import { readStlBinary, stlCount, stlHead, stlRow } from './stl-binary.ts'
import { readStlText } from './stl-text.ts'

export type MeshRead =
  | {
      readonly ok: true
      readonly format: MeshFormat
      /** As in the file: its axes, its unit. Points are shared where the file shares them, or has no way to. */
      readonly mesh: TriangleMesh
      /** Whether every point is used, and no two are equal. */
      readonly distinct: boolean
      /** What the format says of itself; undefined where anything goes. */
      readonly told: { readonly unit?: 'm'; readonly up?: 'y' }
      readonly problems: readonly Problem[]
    }
  | { readonly ok: false; readonly problems: readonly Problem[] }

const noWatch: MeshWatch = { progress: () => {}, stopped: () => false }

/**
 * Reads a 3D scan from STL, OBJ, PLY or GLB, told apart by content.
 *
 * @param bytes the file as it came, at most 1 GB and 5 million triangles. @param watch is told how far it is and asked
 * whether to stop.
 * @returns the triangles as they stand in the file, with notes, or the first error; never half a mesh.
 */
export function readMesh(bytes: Uint8Array, watch: MeshWatch = noWatch): MeshRead {
  try {
    return readChecked(hasMark(bytes) ? bytes.subarray(3) : bytes, watch)
  } catch (error) {
    if (error instanceof MeshFault) return { ok: false, problems: [problemOf(error)] }
    throw error
  }
}

/** The byte order mark that some programs put before a text. */
function hasMark(bytes: Uint8Array): boolean {
  return bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf
}

function readChecked(bytes: Uint8Array, watch: MeshWatch): MeshRead {
  if (bytes.length > mostMeshBytes)
    throw new MeshFault('intake.meshTooLarge', { sizeBytes: bytes.length, mostBytes: mostMeshBytes })
  if (bytes.length === 0) throw new MeshFault('intake.meshEmpty', {})
  const format = formatOf(bytes)
  const { mesh, split } = readAs(format, bytes, watch)
  // Those of binary STL were looked at one by one.
  if (format !== 'stl' || mesh.triangles.length === 0) checkMesh(mesh)
  watch.progress(1)
  const told = format === 'glb' ? ({ unit: 'm', up: 'y' } as const) : {}
  const distinct = format === 'stl'
  return {
    ok: true,
    format,
    mesh,
    distinct,
    told,
    problems: [...splitNote(split), ...leftNote(format, bytes)],
  }
}

function readAs(format: MeshFormat, bytes: Uint8Array, watch: MeshWatch): SplitMesh {
  if (format === 'obj') return readObj(bytes, watch)
  if (format === 'ply') return readPly(bytes, watch)
  const read = { stl: readStlBinary, stlText: readStlText, glb: readGlb }[format]
  return { mesh: read(bytes, watch), split: 0 }
}

function splitNote(count: number): readonly Problem[] {
  return count === 0 ? [] : [{ code: 'intake.meshSplit', severity: 'note', data: { count } }]
}

/** Some programs add remarks behind the triangles. */
function leftNote(format: MeshFormat, bytes: Uint8Array): readonly Problem[] {
  const left = format === 'stl' ? bytes.length - stlHead - stlRow * stlCount(bytes) : 0
  return left === 0 ? [] : [{ code: 'intake.meshLeftOver', severity: 'note', data: { sizeBytes: left } }]
}

function problemOf({ code, data, line }: MeshFault): Problem {
  return { code, severity: 'error', data, ...(line === undefined ? {} : { line }) }
}
