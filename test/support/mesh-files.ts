/** Mesh files of every kind that is read, written for tests from points and triangles. */

export type WrittenMesh = {
  readonly positions: ArrayLike<number>
  readonly triangles: ArrayLike<number>
}

const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text)
const rows = (values: ArrayLike<number>): number[][] =>
  Array.from({ length: values.length / 3 }, (_, i) => [
    values[3 * i]!,
    values[3 * i + 1]!,
    values[3 * i + 2]!,
  ])

const cornersOf = ({ positions, triangles }: WrittenMesh): number[][][] => {
  const points = rows(positions)
  return rows(triangles).map((corners) => corners.map((corner) => points[corner]!))
}

export function stlText(mesh: WrittenMesh): Uint8Array {
  const facets = cornersOf(mesh).map((corners) => {
    const lines = corners.map((corner) => `      vertex ${corner.join(' ')}`)
    return ['  facet normal 0 0 0', '    outer loop', ...lines, '    endloop', '  endfacet'].join('\n')
  })
  return bytesOf(['solid hull', ...facets, 'endsolid hull', ''].join('\n'))
}

export function obj({ positions, triangles }: WrittenMesh): Uint8Array {
  const points = rows(positions).map((point) => `v ${point.join(' ')}`)
  const faces = rows(triangles).map((corners) => `f ${corners.map((corner) => corner + 1).join(' ')}`)
  return bytesOf(['# made for a test', ...points, ...faces, ''].join('\n'))
}

export type PlyForm = 'ascii' | 'binary_little_endian' | 'binary_big_endian'

export function ply({ positions, triangles }: WrittenMesh, form: PlyForm): Uint8Array {
  const [points, faces] = [rows(positions), rows(triangles)]
  const header = bytesOf(
    [
      'ply',
      `format ${form} 1.0`,
      'comment made for a test',
      `element vertex ${points.length}`,
      'property double x',
      'property double y',
      'property double z',
      `element face ${faces.length}`,
      'property list uchar int vertex_indices',
      'end_header',
      '',
    ].join('\n'),
  )
  if (form === 'ascii') {
    const lines = [...points.map((p) => p.join(' ')), ...faces.map((f) => `3 ${f.join(' ')}`), '']
    return joined(header, bytesOf(lines.join('\n')))
  }
  const little = form === 'binary_little_endian'
  const body = new DataView(new ArrayBuffer(24 * points.length + 13 * faces.length))
  for (let i = 0; i < positions.length; i++) body.setFloat64(8 * i, positions[i]!, little)
  faces.forEach((face, f) => {
    const at = 24 * points.length + 13 * f
    body.setUint8(at, 3)
    face.forEach((corner, k) => {
      body.setInt32(at + 1 + 4 * k, corner, little)
    })
  })
  return joined(header, new Uint8Array(body.buffer))
}

/** A GLB with one shape under the given nodes; `change` may alter its JSON before it is written. */
export function glb(
  { positions, triangles }: WrittenMesh,
  change: (json: Record<string, unknown>) => void = () => {},
): Uint8Array {
  const data = new Uint8Array([
    ...new Uint8Array(Float32Array.from(positions).buffer),
    ...new Uint8Array(Uint32Array.from(triangles).buffer),
  ])
  const split = 4 * positions.length
  const json = {
    asset: { version: '2.0' },
    scene: 0,
    scenes: [{ nodes: [0] }],
    nodes: [{ mesh: 0 }],
    meshes: [{ primitives: [{ attributes: { POSITION: 0 }, indices: 1 }] }],
    accessors: [
      { bufferView: 0, componentType: 5126, count: positions.length / 3, type: 'VEC3' },
      { bufferView: 1, componentType: 5125, count: triangles.length, type: 'SCALAR' },
    ],
    bufferViews: [
      { buffer: 0, byteLength: split },
      { buffer: 0, byteOffset: split, byteLength: data.length - split },
    ],
    buffers: [{ byteLength: data.length }],
  }
  change(json)
  return glbOf(JSON.stringify(json), data)
}

/** The container around a JSON text and bytes. */
export function glbOf(json: string, data: Uint8Array): Uint8Array {
  const text = bytesOf(json + ' '.repeat((4 - (json.length % 4)) % 4))
  const whole = 12 + 8 + text.length + 8 + data.length
  const head = words(0x46546c67, 2, whole, text.length, 0x4e4f534a)
  return joined(head, text, words(data.length, 0x004e4942), data)
}

const words = (...values: number[]): Uint8Array => new Uint8Array(Uint32Array.from(values).buffer)

export function joined(...parts: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0))
  let at = 0
  for (const part of parts) {
    whole.set(part, at)
    at += part.length
  }
  return whole
}
