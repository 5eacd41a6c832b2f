/** PLY: points, then faces as lists of points from 0; in letters, or in bytes of either order. */
import { oneLine } from '../problem.ts'
import { GrowingTriangles } from './growing.ts'
import { MeshFault } from './mesh-fault.ts'
import { mostPoints, mostTriangles } from './mesh-limits.ts'
import { type MeshWatch, rowsBetween } from './mesh-watch.ts'
import type { SplitMesh } from './obj.ts'
import { type PlyElement, type PlyHeader, type PlyProperty, readPlyHeader } from './ply-header.ts'
import { type PlySource, plySource, sizeOf } from './ply-source.ts'

/** What faces call their list of points; both are in use. */
const faceLists: readonly string[] = ['vertex_indices', 'vertex_index']

export function readPly(bytes: Uint8Array, watch: MeshWatch): SplitMesh {
  const header = readPlyHeader(bytes)
  const source = plySource(bytes, header)
  const needed = leastBytes(header)
  if (needed > bytes.length)
    throw new MeshFault('intake.meshCutShort', { sizeBytes: bytes.length, neededBytes: needed })
  let positions: Float64Array | undefined
  const faces = new GrowingTriangles()
  let split = 0
  for (const element of header.elements) {
    checkRows(element)
    const reading = { source, element, watch }
    if (element.name === 'vertex' && positions === undefined) positions = readPoints(reading)
    else if (element.name === 'face' && listIn(element) !== -1) split += readFaces(reading, faces)
    else skipRows(reading)
  }
  return { mesh: { positions: positions ?? new Float64Array(0), triangles: faces.taken() }, split }
}

/** Rows may be very short, and many. */
function checkRows({ name, rows }: PlyElement): void {
  if (name === 'face' && rows > mostTriangles)
    throw new MeshFault('intake.meshTooManyTriangles', { most: mostTriangles })
  if (name === 'vertex' && rows > mostPoints)
    throw new MeshFault('intake.meshTooManyPoints', { most: mostPoints })
  if (rows > mostPoints)
    throw new MeshFault('intake.meshTooManyRows', { found: oneLine(name, 40), most: mostPoints })
}

/** Bytes that the file must have at the least, each list empty: a wild count is found before room is made for it. */
function leastBytes({ coding, elements, at }: PlyHeader): number {
  const rowBytes = ({ properties }: PlyElement) =>
    properties.reduce((sum, { type, count }) => sum + (coding === 'ascii' ? 1 : sizeOf(count ?? type)), 0)
  return elements.reduce((sum, element) => sum + element.rows * rowBytes(element), at)
}

type Reading = { readonly source: PlySource; readonly element: PlyElement; readonly watch: MeshWatch }

function readPoints({ source, element, watch }: Reading): Float64Array {
  const { rows, properties } = element
  const columns = ['x', 'y', 'z'].map((name) =>
    properties.findIndex((property) => property.name === name && property.count === undefined),
  )
  if (columns.includes(-1)) throw new MeshFault('intake.meshHeader', { found: 'element vertex' })
  const positions = new Float64Array(3 * rows)
  const places = properties.map((_, p) => columns.indexOf(p))
  for (let row = 0; row < rows; row++) {
    if ((row & rowsBetween) === 0) source.look(watch)
    for (let p = 0; p < places.length; p++) {
      const property = properties[p]!
      const place = places[p]!
      if (place === -1) skipProperty(source, property)
      else positions[3 * row + place] = source.next(property.type)
    }
  }
  return positions
}

const listIn = ({ properties }: PlyElement): number =>
  properties.findIndex(({ name, count }) => count !== undefined && faceLists.includes(name))

/** Adds the faces as triangles; tells how many had more than three corners. */
function readFaces({ source, element, watch }: Reading, faces: GrowingTriangles): number {
  const { rows, properties } = element
  const list = listIn(element)
  let split = 0
  for (let row = 0; row < rows; row++) {
    if ((row & rowsBetween) === 0) source.look(watch)
    for (let p = 0; p < properties.length; p++) {
      const property = properties[p]!
      if (p !== list) skipProperty(source, property)
      else if (addFace(source, property, faces) > 3) split++
    }
  }
  return split
}

function addFace(source: PlySource, { type, count }: PlyProperty, faces: GrowingTriangles): number {
  const corners = source.count(count!)
  const first = corners > 0 ? source.next(type) : 0
  let last = corners > 1 ? source.next(type) : 0
  for (let k = 2; k < corners; k++) {
    const corner = source.next(type)
    faces.add(indexFrom(first), indexFrom(last), indexFrom(corner))
    last = corner
  }
  return corners
}

function indexFrom(value: number): number {
  if (Number.isInteger(value) && value >= 0 && value <= 0xffffffff) return value
  throw new MeshFault('intake.meshIndexOdd', { found: String(value) })
}

function skipProperty(source: PlySource, { type, count }: PlyProperty): void {
  if (count === undefined) source.skip(type, 1)
  else source.skip(type, source.count(count))
}

function skipRows({ source, element, watch }: Reading): void {
  const { rows, properties } = element
  if (properties.length === 0) return
  for (let row = 0; row < rows; row++) {
    if ((row & rowsBetween) === 0) source.look(watch)
    for (const property of properties) skipProperty(source, property)
  }
}
