import { describe, expect, it } from 'vitest'
import { stlBinary } from '../../../test/support/hull-meshes.mjs'
import { glb, joined, obj, ply, stlText } from '../../../test/support/mesh-files.ts'
import { mostTriangles } from './mesh-limits.ts'
import { type MeshRead, readMesh } from './read-mesh.ts'

/** A corner of a box with figures that a float holds exactly. */
const corner = {
  positions: [0, 0, 0, 1.5, 0, 0, 0, -2.25, 0, 0, 0, 1024],
  triangles: [0, 2, 1, 0, 1, 3, 0, 3, 2],
}
const soup = corner.triangles.flatMap((i) => corner.positions.slice(3 * i, 3 * i + 3))
const text = (lines: string): Uint8Array => new TextEncoder().encode(lines)

function taken(read: MeshRead): Extract<MeshRead, { ok: true }> {
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  return read
}

function refused(bytes: Uint8Array) {
  const read = readMesh(bytes)
  if (read.ok) throw new Error('read')
  const [{ code, data, line }] = read.problems as unknown as [MeshProblem]
  return { code: code.replace('intake.mesh', ''), ...data, ...(line === undefined ? {} : { line }) }
}
type MeshProblem = (MeshRead & { ok: false })['problems'][number]

describe('a mesh file', () => {
  it('of STL in letters gives every triangle its own corners', () => {
    const read = taken(readMesh(stlText(corner)))
    expect(read).toMatchObject({ format: 'stlText', distinct: false, problems: [] })
    expect([...read.mesh.positions]).toEqual(soup)
    expect([...read.mesh.triangles]).toEqual([0, 1, 2, 3, 4, 5, 6, 7, 8])
  })

  it('of STL in bytes has its equal corners joined, in the order they come', () => {
    for (const bytes of [stlBinary(corner), stlBinary(corner, 'solid in name only')]) {
      const read = taken(readMesh(bytes))
      expect(read).toMatchObject({ format: 'stl', distinct: true, problems: [] })
      expect([...read.mesh.positions]).toEqual([0, 0, 0, 0, -2.25, 0, 1.5, 0, 0, 0, 0, 1024])
      expect([...read.mesh.triangles]).toEqual([0, 1, 2, 0, 2, 3, 0, 3, 1])
    }
  })

  it('of STL in bytes joins what is equal and nothing else', () => {
    const count = 20_000
    const places = Array.from(
      { length: 3 * count },
      (_, i) => Math.fround(Math.sin((i * i) % 4999) * 100) * (i % 7 === 0 ? 0 : 1),
    )
    const positions = places.map((value, i) => (value === 0 && i % 2 === 0 ? -0 : value))
    const triangles = Array.from({ length: count - (count % 3) }, (_, i) => i)
    const { mesh } = taken(readMesh(stlBinary({ positions, triangles })))
    const key = (list: ArrayLike<number>, i: number) => [0, 1, 2].map((k) => list[3 * i + k]! + 0).join(' ')
    const distinct = new Set(triangles.map((i) => key(places, i)))
    expect(mesh.positions).toHaveLength(3 * distinct.size)
    for (const i of triangles) expect(key(mesh.positions, mesh.triangles[i]!)).toBe(key(places, i))
  })

  it.each([
    ['obj', obj(corner)],
    ['ply', ply(corner, 'ascii')],
    ['ply', ply(corner, 'binary_little_endian')],
    ['ply', ply(corner, 'binary_big_endian')],
    ['glb', glb(corner)],
  ] as const)('of %s keeps points shared as they are', (format, bytes) => {
    const read = taken(readMesh(bytes))
    expect(read.format).toBe(format)
    expect([...read.mesh.positions]).toEqual(corner.positions)
    expect([...read.mesh.triangles]).toEqual(corner.triangles)
  })

  it('is read from the middle of a larger block of bytes', () => {
    for (const bytes of [stlBinary(corner), ply(corner, 'binary_little_endian'), glb(corner)]) {
      const within = joined(new Uint8Array(7), bytes, new Uint8Array(5)).subarray(7, 7 + bytes.length)
      expect(taken(readMesh(within)).mesh.triangles).toHaveLength(9)
    }
  })

  it('tells its progress, never falling, and stops when asked', () => {
    for (const bytes of [
      stlText(corner),
      stlBinary(corner),
      obj(corner),
      ply(corner, 'ascii'),
      glb(corner),
    ]) {
      const shares: number[] = []
      readMesh(bytes, { progress: (share) => shares.push(share), stopped: () => false })
      expect(shares.length).toBeGreaterThan(1)
      expect(shares).toEqual([...shares].sort((a, b) => a - b))
      expect(shares.at(-1)).toBe(1)
      const read = readMesh(bytes, { progress: () => {}, stopped: () => true })
      expect(read).toMatchObject({ ok: false, problems: [{ code: 'intake.meshStopped' }] })
    }
  })
})

describe('STL', () => {
  it('takes capitals, odd spaces and several solids', () => {
    const one =
      'FACET NORMAL 0 0 1\nOUTER LOOP\nVERTEX 0 0 0\r\nvertex\t1 0 0\nvertex 0 +1. -.5e-1\nENDLOOP\nendfacet\n'
    const read = taken(readMesh(text(`\n solid a b\n${one}endsolid\nsolid\n${one}${one}endsolid c\n\n`)))
    expect(read.mesh.triangles).toHaveLength(9)
    expect([...read.mesh.positions.slice(6, 9)]).toEqual([0, 1, -0.05])
  })

  it('notes what stands behind its triangles', () => {
    const read = taken(readMesh(joined(stlBinary(corner), new Uint8Array(11))))
    expect(read.problems).toEqual([
      { code: 'intake.meshLeftOver', severity: 'note', data: { sizeBytes: 11 } },
    ])
  })

  it('says where it goes wrong', () => {
    const body = new TextDecoder().decode(stlText(corner))
    expect(refused(text(body.slice(0, -20)))).toMatchObject({ code: 'CutShort' })
    expect(refused(text(body.slice(0, 150)))).toMatchObject({ code: 'CutShort' })
    expect(refused(text(body.replace('-2.25', '-2,25')))).toEqual({
      code: 'NumberNotRead',
      found: '-2,25',
      line: 5,
    })
    expect(refused(text(body.replace('endfacet', 'endfast')))).toEqual({
      code: 'Word',
      found: 'endfast',
      line: 8,
    })
    expect(refused(text(body.replace('1024', 'nan')))).toMatchObject({ code: 'NotFinite', line: 13 })
    expect(refused(text(body.replace(/ +vertex.*\n/, '')))).toEqual({ code: 'Corners', line: 6 })
    expect(refused(stlBinary(corner).subarray(0, 200))).toEqual({
      code: 'CutShort',
      sizeBytes: 200,
      neededBytes: 234,
    })
    expect(refused(text('solid empty\nendsolid empty\n'))).toMatchObject({ code: 'Nothing' })
  })

  it('makes no room for a count that the file does not hold', () => {
    const bytes = stlBinary(corner)
    new DataView(bytes.buffer).setUint32(80, 4_000_000_000, true)
    expect(refused(bytes)).toEqual({ code: 'TooManyTriangles', most: mostTriangles })
  })
})

describe('OBJ', () => {
  it('reads texture and normal numbers, numbers from the end, joined lines, and splits faces', () => {
    const file = [
      '\ufeffv 0 0 0 1 0.5 0.5',
      'v 1 0 0 # remark',
      'vt 0 0',
      'vn 0 0 1',
      'o hull',
      'v 1 1 \\',
      '  0',
      'v 0 1 0',
      'f 1/1/1 2//1 3/1 -1',
      'f 1 2 -2',
    ]
    const { mesh, problems } = taken(readMesh(text(file.join('\r\n'))))
    expect([...mesh.triangles]).toEqual([0, 1, 2, 0, 2, 3, 0, 1, 2])
    expect([...mesh.positions]).toEqual([0, 0, 0, 1, 0, 0, 1, 1, 0, 0, 1, 0])
    expect(problems).toEqual([{ code: 'intake.meshSplit', severity: 'note', data: { count: 1 } }])
  })

  it('names the line of a point that is not there', () => {
    expect(refused(text('v 0 0 0\nv 1 0 0\nv 0 1 0\nf 1 2 4\n'))).toEqual({
      code: 'Index',
      found: 4,
      points: 3,
      line: 4,
    })
    expect(refused(text('v 0 0 0\nf -1 -2 -3\n'))).toEqual({ code: 'Index', found: -2, points: 1, line: 2 })
    expect(refused(text('v 0 0 0\nf 0 1 1\n'))).toMatchObject({ code: 'Index', found: 0 })
    expect(refused(text('v 0 0 0\nf 99999999999999999999 1 1\n'))).toMatchObject({ code: 'Index' })
    expect(refused(text('v 0 0 0\nf 1 1\n'))).toEqual({ code: 'Corners', line: 2 })
    expect(refused(text('v 0 0 0\nf 1 1 x\n'))).toMatchObject({ code: 'NumberNotRead', found: 'x' })
    expect(refused(text('v 0 0\nf 1 1 1\n'))).toMatchObject({ code: 'NumberNotRead', line: 1 })
    expect(refused(text('v 0 0 0\nv 1 0 0\n'))).toEqual({ code: 'PointsOnly' })
  })

  it('reads every number as the language does', () => {
    const written = [
      '0.1',
      '-1e-7',
      '123456.789e3',
      '1.7976931348623157e0',
      '.5',
      '5.',
      '0.000000000000000000000001',
      '123456789012.34567890',
      '4.35',
      '1E+22',
    ]
    const points = written.map((number) => `v ${number} 0 0`).join('\n')
    const { mesh } = taken(readMesh(text(`${points}\nf 1 2 3\n`.replaceAll('1E+22', '1E+2'))))
    const got = written.map((_, i) => mesh.positions[3 * i])
    expect(refused(text(`${points}\nf 1 2 3\n`))).toMatchObject({ code: 'TooFar' })
    expect(got).toEqual(written.map((number) => Number(number.replace('1E+22', '1E+2'))))
  })
})
