import { describe, expect, it } from 'vitest'
import { joined, ply } from '../../../test/support/mesh-files.ts'
import { readMesh } from './read-mesh.ts'

const text = (lines: readonly string[]): Uint8Array => new TextEncoder().encode(`${lines.join('\n')}\n`)
const square = { positions: [0, 0, 0, 1, 0, 0, 1, 1, 0, 0, 1, 0], triangles: [0, 1, 2, 0, 2, 3] }
const refused = (bytes: Uint8Array) => {
  const read = readMesh(bytes)
  if (read.ok) throw new Error('read')
  return read.problems[0]!
}

describe('PLY', () => {
  const header = [
    'ply',
    'format ascii 1.0',
    'comment colours, a camera before the points, and faces of four',
    'obj_info none',
    'element camera 1',
    'property float view',
    'property list uchar float lens',
    'element vertex 4',
    'property uchar red',
    'property float z',
    'property float y',
    'property list uchar uchar tags',
    'property float x',
    'element face 2',
    'property list uchar float texcoord',
    'property list uint8 uint32 vertex_index',
    'property int part',
    'end_header',
  ]
  const rows = ['1.5', '3 1 2 3', '9 0 0 0 0', '9 0 0 2 7 7 1', '9 0 1 0 1', '9 0 1 1 8 0']
  const faces = ['2 0.5 0.5 4 0 1 2 3 6', '0 3 0 1 2 6']

  it('finds points and faces among other elements and properties, lists included', () => {
    const read = readMesh(text([...header, ...rows, ...faces]))
    if (!read.ok) throw new Error(JSON.stringify(read.problems))
    expect([...read.mesh.positions]).toEqual([0, 0, 0, 1, 0, 0, 1, 1, 0, 0, 1, 0])
    expect([...read.mesh.triangles]).toEqual([0, 1, 2, 0, 2, 3, 0, 1, 2])
    expect(read.problems).toMatchObject([{ code: 'intake.meshSplit', data: { count: 1 } }])
  })

  it('reads every kind of number in either order of bytes', () => {
    const kinds = {
      char: -5,
      uchar: 250,
      short: -300,
      ushort: 60_000,
      int: -70_000,
      uint: 3e9,
      float: 0.25,
      double: 0.1,
    }
    for (const little of [true, false]) {
      const head = [
        'ply',
        `format binary_${little ? 'little' : 'big'}_endian 1.0`,
        'element vertex 1',
        ...Object.keys(kinds).map(
          (kind, i) => `property ${kind} ${['a', 'b', 'x', 'y', 'c', 'd', 'e', 'z'][i]}`,
        ),
        'element face 1',
        'property list ushort short vertex_index',
        'end_header',
      ]
      const body = new DataView(new ArrayBuffer(34))
      body.setInt8(0, -5)
      body.setUint8(1, 250)
      body.setInt16(2, -300, little)
      body.setUint16(4, 60_000, little)
      body.setInt32(6, -70_000, little)
      body.setUint32(10, 3e9, little)
      body.setFloat32(14, 0.25, little)
      body.setFloat64(18, 0.1, little)
      body.setUint16(26, 3, little)
      const read = readMesh(joined(text(head), new Uint8Array(body.buffer)))
      if (!read.ok) throw new Error(JSON.stringify(read.problems))
      expect([...read.mesh.positions]).toEqual([-300, 60_000, 0.1])
      expect([...read.mesh.triangles]).toEqual([0, 0, 0])
    }
  })

  it('says where the header goes wrong', () => {
    const broken = (from: string, to: string) =>
      refused(text([...header, ...rows, ...faces].map((line) => (line === from ? to : line))))
    expect(broken('format ascii 1.0', 'format wide 1.0')).toMatchObject({
      code: 'intake.meshHeader',
      line: 2,
    })
    expect(broken('format ascii 1.0', 'comment')).toMatchObject({ code: 'intake.meshHeader' })
    expect(broken('property float x', 'property long x')).toMatchObject({
      code: 'intake.meshHeader',
      line: 13,
    })
    expect(broken('property float x', 'property float q')).toMatchObject({ code: 'intake.meshHeader' })
    expect(broken('element face 2', 'element face')).toMatchObject({ code: 'intake.meshHeader', line: 14 })
    expect(broken('element face 2', 'element face 2e9')).toMatchObject({ code: 'intake.meshHeader' })
    expect(broken('end_header', 'end')).toMatchObject({ code: 'intake.meshHeader', data: { found: 'end' } })
    expect(refused(text(header.slice(0, 9)))).toMatchObject({ code: 'intake.meshCutShort' })
  })

  it('refuses rows that are missing, odd lengths of lists and points that are not there', () => {
    expect(refused(text([...header, ...rows]))).toMatchObject({ code: 'intake.meshCutShort' })
    expect(refused(text([...header, ...rows, '-1 4 0 1 2 3 6', faces[1]!]))).toMatchObject({
      line: 25,
      code: 'intake.meshNumberNotRead',
    })
    expect(refused(text([...header, ...rows, '0 4 0 1 2 -3 6', faces[1]!]))).toMatchObject({
      code: 'intake.meshIndexOdd',
      data: { found: '-3' },
    })
    expect(refused(text([...header, ...rows, '0 4 0 1 2 4 6', faces[1]!]))).toMatchObject({
      code: 'intake.meshIndex',
      data: { found: 4, points: 4 },
    })
  })

  it('makes no room for counts that the file does not hold', () => {
    const wild = (form: 'ascii' | 'binary_little_endian', count: string) => {
      const whole = new TextDecoder('latin1').decode(ply(square, form))
      return Uint8Array.from(whole.replace('vertex 4', `vertex ${count}`), (letter) => letter.charCodeAt(0))
    }
    expect(refused(wild('ascii', '4000000000'))).toMatchObject({ code: 'intake.meshCutShort' })
    expect(refused(wild('binary_little_endian', '9007199254740991'))).toMatchObject({
      code: 'intake.meshCutShort',
    })
  })

  it('of points alone is told from a mesh', () => {
    expect(refused(ply({ ...square, triangles: [] }, 'binary_big_endian')).code).toBe('intake.meshPointsOnly')
  })
})
