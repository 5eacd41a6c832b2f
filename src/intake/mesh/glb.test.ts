import { describe, expect, it } from 'vitest'
import { glb, glbOf } from '../../../test/support/mesh-files.ts'
import { readMesh } from './read-mesh.ts'

const triangle = { positions: [0, 0, 0, 1, 0, 0, 0, 1, 0, 0, 0, 1], triangles: [0, 1, 2, 0, 2, 3] }
type Json = Record<string, unknown>
/** What the tests change of it is put where the JSON holds it. */
// biome-ignore lint/suspicious/noExplicitAny: a test may put anything anywhere
type Loose = any
type Change = (json: Loose) => void

function read(change: Change) {
  const result = readMesh(glb(triangle, change as (json: Json) => void))
  if (!result.ok) throw new Error(JSON.stringify(result.problems))
  return result
}

const refused = (change: Change) => {
  const result = readMesh(glb(triangle, change as (json: Json) => void))
  if (result.ok) throw new Error('read')
  return result.problems[0]!
}

const rounded = (values: Float64Array) => [...values].map((value) => Math.round(value * 1e12) / 1e12 + 0)

describe('GLB', () => {
  it('is in metres with y up, as the standard has it', () => {
    expect(read(() => {}).told).toEqual({ unit: 'm', up: 'y' })
  })

  it('places a shape as often as nodes name it: scaled, turned, moved, parents after children', () => {
    const half = Math.SQRT1_2
    const { mesh } = read((json) => {
      json.scenes[0].nodes = [0, 2]
      json.nodes = [
        { translation: [10, 0, 0], children: [1] },
        { mesh: 0, rotation: [0, 0, half, half], scale: [2, 3, 4] },
        { mesh: 0, matrix: [1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0, 0, 0, 5, 1] },
      ]
    })
    expect(rounded(mesh.positions.slice(0, 12))).toEqual([0, 0, 5, 1, 0, 5, 0, 1, 5, 0, 0, 6])
    expect(rounded(mesh.positions.slice(12))).toEqual([10, 0, 0, 10, 2, 0, 7, 0, 0, 10, 0, 4])
    expect([...mesh.triangles]).toEqual([0, 1, 2, 0, 2, 3, 4, 5, 6, 4, 6, 7])
  })

  it('turns triangles round under a mirror', () => {
    const { mesh } = read((json) => {
      json.nodes[0].scale = [-1, 1, 1]
    })
    expect([...mesh.triangles]).toEqual([0, 2, 1, 0, 3, 2])
  })

  it('reads strips, fans, and points without an order; lines are left out', () => {
    const one = (primitive: object) =>
      read((json) => {
        json.meshes[0].primitives = [
          { attributes: { POSITION: 0 }, ...primitive },
          { attributes: {}, mode: 1 },
        ]
      }).mesh.triangles
    expect([...one({ mode: 5 })]).toEqual([0, 1, 2, 1, 3, 2])
    expect([...one({ mode: 6 })]).toEqual([0, 1, 2, 0, 2, 3])
    expect([...one({})]).toEqual([0, 1, 2])
  })

  it('reads whole numbers that stand for shares', () => {
    const bytes = new Uint8Array(new Int16Array([0, 0, 0, 32767, 0, 0, 0, -32767, 0]).buffer)
    const json = {
      asset: { version: '2.0' },
      extensionsRequired: ['KHR_mesh_quantization'],
      nodes: [{ mesh: 0, children: [1] }, {}],
      meshes: [{ primitives: [{ attributes: { POSITION: 0 } }] }],
      accessors: [{ bufferView: 0, componentType: 5122, normalized: true, count: 3, type: 'VEC3' }],
      bufferViews: [{ buffer: 0, byteLength: 18 }],
      buffers: [{ byteLength: 18 }],
    }
    const result = readMesh(glbOf(JSON.stringify(json), bytes))
    if (!result.ok) throw new Error(JSON.stringify(result.problems))
    expect([...result.mesh.positions]).toEqual([0, 0, 0, 1, 0, 0, 0, -1, 0])
  })

  it('refuses what is compressed, what is elsewhere and what it does not know', () => {
    const compressed = { code: 'intake.meshCompressed', data: { found: 'KHR_draco_mesh_compression' } }
    expect(refused((json) => (json.extensionsRequired = ['KHR_draco_mesh_compression']))).toMatchObject(
      compressed,
    )
    expect(
      refused((json) => (json.meshes[0].primitives[0].extensions = { KHR_draco_mesh_compression: {} })),
    ).toMatchObject(compressed)
    expect(
      refused((json) => (json.bufferViews[0].extensions = { EXT_meshopt_compression: {} })),
    ).toMatchObject({ code: 'intake.meshCompressed', data: { found: 'EXT_meshopt_compression' } })
    expect(refused((json) => (json.extensionsRequired = ['EXT_mesh_gpu_instancing']))).toMatchObject({
      code: 'intake.meshNeeds',
    })
    expect(refused((json) => (json.accessors[0].sparse = {}))).toMatchObject({ code: 'intake.meshNeeds' })
    expect(refused((json) => (json.buffers[0].uri = 'hull.bin'))).toMatchObject({
      code: 'intake.meshElsewhere',
    })
    expect(read((json) => (json.extensionsRequired = ['KHR_materials_unlit'])).ok).toBe(true)
  })

  it.each<[string, string, Change]>([
    ['PartMissing', 'meshes/7', (json) => (json.nodes[0].mesh = 7)],
    ['a node under itself', 'nodes/0', (json) => (json.nodes[0].children = [0])],
    ['children that are no numbers', 'nodes/0/children', (json) => (json.nodes[0].children = ['x'])],
    ['a matrix of nine', 'nodes/0/matrix', (json) => (json.nodes[0].matrix = Array(9).fill(1))],
    ['a type of its own', 'accessors/0/type', (json) => (json.accessors[0].type = 'VEC2')],
    [
      'a component type of its own',
      'accessors/0/componentType',
      (json) => (json.accessors[0].componentType = 1),
    ],
    ['a negative count', 'accessors/0/count', (json) => (json.accessors[0].count = -1)],
    ['a huge stride', 'bufferViews/0/byteStride', (json) => (json.bufferViews[0].byteStride = 1e6)],
    ['nodes that are no list', 'JSON/nodes', (json) => (json.nodes = 3)],
    ['a prototype for a part', 'nodes/0', (json) => (json.nodes[0] = null)],
  ])('names the part that is wrong: %s', (_, part, change) => {
    expect(refused(change)).toMatchObject({ code: 'intake.meshPart', data: { part } })
  })

  it('holds every length against the bytes that are there', () => {
    const cutShort = { code: 'intake.meshCutShort' }
    expect(refused((json) => (json.accessors[0].count = 9e15))).toMatchObject(cutShort)
    expect(refused((json) => (json.bufferViews[1].byteLength = 1e9))).toMatchObject(cutShort)
    expect(refused((json) => (json.accessors[1].byteOffset = 8))).toMatchObject(cutShort)
    const bytes = glb(triangle)
    for (const field of [8, 12]) {
      const wild = bytes.slice()
      new DataView(wild.buffer).setUint32(field, 0xfffffff0, true)
      expect(readMesh(wild)).toMatchObject({ ok: false, problems: [cutShort] })
    }
    expect(readMesh(bytes.subarray(0, bytes.length - 4))).toMatchObject({ problems: [cutShort] })
    expect(readMesh(bytes.subarray(0, 15))).toMatchObject({ problems: [cutShort] })
  })

  it('is no way to make a small file large', () => {
    const nodes = (json: Loose, count: number) => {
      json.nodes = Array.from({ length: count }, () => ({ mesh: 0 }))
      json.scenes[0].nodes = json.nodes.map((_: unknown, i: number) => i)
    }
    expect(refused((json) => nodes(json, 150_000)).code).toBe('intake.meshTooManyPieces')
    expect(
      refused((json) => {
        nodes(json, 2000)
        const empty = { attributes: { POSITION: 0 }, mode: 6 }
        json.accessors[0].count = 0
        json.meshes[0].primitives = Array.from({ length: 20_000 }, () => empty)
      }).code,
    ).toBe('intake.meshTooManyPieces')
    const deep = `${'['.repeat(4_000_000)}${']'.repeat(3_999_000)}`
    expect(readMesh(glbOf(deep, new Uint8Array(0)))).toMatchObject({ ok: false })
    expect(readMesh(glbOf(`{"a":"${' '.repeat(9e6)}"}`, new Uint8Array(0)))).toMatchObject({
      problems: [{ code: 'intake.meshHeaderTooLong' }],
    })
  })
})
