// What is wrong with a file of a 3D scan is said in whole sentences with the figures in them.
import { describe, expect, it } from 'vitest'
import { readMesh } from '#intake'
import { createWords } from '#words'
import { meshProblems } from '../src/words/mesh-problems.ts'
import { stlBinary } from './support/hull-meshes.mjs'
import { glb, glbOf, joined, obj, ply } from './support/mesh-files.ts'

const words = createWords({ locale: 'en-GB', system: 'metric', timeZone: 'Europe/Stockholm' })
const text = (lines: string): Uint8Array => new TextEncoder().encode(lines)
const mesh = { positions: [0, 0, 0, 1, 0, 0, 0, 1, 0], triangles: [0, 1, 2] }
const plyHead = (element: string) => text(`ply\nformat ascii 1.0\n${element}\nend_header\n`)
type Json = Record<string, unknown>
const changed = (part: Json): Uint8Array => glb(mesh, (json: Json) => void Object.assign(json, part))
const version = glb(mesh)
version[4] = 1
const wide = stlBinary(mesh)
new DataView(wide.buffer).setUint32(80, 6_000_000, true)
const none = new Uint8Array(0)

const files: readonly Uint8Array[] = [
  none,
  new Uint8Array(1_000_000_001),
  text('a boat'),
  text('PK\x03\x04'),
  text('{"asset": {"version": "2.0"}, "meshes": []}'),
  changed({ buffers: [{ byteLength: 48, uri: 'hull.bin' }] }),
  changed({ extensionsRequired: ['EXT_meshopt_compression'] }),
  changed({ extensionsRequired: ['EXT_of_its_own'] }),
  version,
  wide.slice(),
  stlBinary(mesh).subarray(0, 100),
  text('solid hull\n facet normal 0 0 0\n outer loop\n vertex 0 0'),
  joined(
    plyHead('element vertex 16000000\nproperty float x\nproperty float y\nproperty float z'),
    new Uint8Array(48e6).fill(32),
  ),
  joined(plyHead('element edge 16000000\nproperty int a'), new Uint8Array(16e6).fill(32)),
  changed({ meshes: [{ primitives: Array(100_001).fill({ mode: 0 }) }] }),
  ply({ ...mesh, triangles: [] }, 'ascii'),
  text('solid hull\nendsolid hull\n'),
  text('v 0 0 wide\n'),
  text('v 0 0 nan\n'),
  obj({ ...mesh, positions: [1e13, 0, 0, 1, 0, 0, 0, 1, 0] }),
  text('v 0 0 0\nf 1 2 3\n'),
  ply({ ...mesh, triangles: [0, 1, -2] }, 'ascii'),
  text('v 0 0 0\nf 1 1\n'),
  text('solid hull\n facet\n outer loop\n corner 0 0 0\n endloop\n endfacet\nendsolid\n'),
  plyHead('element vertex many'),
  glbOf(`{"asset": "${'x'.repeat(8e6)}"}`, none),
  glbOf('{"asset": ', none),
  text('v 0 0 0\nv 1 0 0\nv 1 1 0\nv 0 1 0\nf 1 2 3 4\n'),
  joined(stlBinary(mesh), new Uint8Array(7)),
]

describe('every problem of a file of a scan', () => {
  const stopped = readMesh(stlBinary(mesh), { progress: () => {}, stopped: () => true })
  const problems = [stopped, ...files.map((file) => readMesh(file))].flatMap((read) => read.problems)

  it('is said with all its figures', () => {
    for (const { code, data } of problems) {
      const said = words.sentence(code, data)
      expect(said, code).not.toMatch(/\?|undefined|[{}]/)
      expect(said, code).not.toContain('intake.')
    }
  })

  it('comes up in the files tried here, so that none goes unread', () => {
    const codes = new Set(problems.map(({ code }) => code))
    expect([...codes].sort()).toEqual(Object.keys(meshProblems).sort())
  })

  it('reads as one would say it', () => {
    const said = (file: Uint8Array) => {
      const { code, data } = readMesh(file).problems[0]!
      return words.sentence(code, data).replace(/[\u00a0\u2009\u202f]/g, ' ')
    }
    const two = stlBinary({ ...mesh, triangles: [0, 1, 2, 0, 2, 1] })
    expect(said(two.subarray(0, 150))).toBe(
      'The file ends too early: it holds 150 bytes and says that it has 184. Fetch or export it again.',
    )
    expect(said(text('v 0 0 0\nf 1 2 3\n'))).toBe(
      'A triangle goes to point 3 of 1, which is not there. Export the scan again.',
    )
  })
})
