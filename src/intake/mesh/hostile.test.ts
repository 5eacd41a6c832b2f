// Mesh files spoilt on purpose, by a seed: whatever comes, an answer in words, soon, and nothing half read.
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus'
import { describe, expect, it } from 'vitest'
import { createWords } from '#words'
import { stlBinary } from '../../../test/support/hull-meshes.mjs'
import { glb, obj, ply, stlText } from '../../../test/support/mesh-files.ts'
import { garbage } from '../../../test/support/mesh-garbage.mjs'
import { spoilt } from '../../../test/support/spoilt-bytes.ts'
import { readMesh } from './read-mesh.ts'

const words = createWords({ locale: 'en-GB', system: 'metric', timeZone: 'Europe/Stockholm' })

/** A bowl of 7 by 7 points. */
const side = 7
const bowl = {
  positions: Array.from({ length: side * side }, (_, i) => [i % side, Math.floor(i / side)]).flatMap(
    ([x, y]) => [x!, y!, 0.125 * ((x! - 3) ** 2 + (y! - 3) ** 2)],
  ),
  triangles: Array.from({ length: (side - 1) ** 2 }, (_, i) => i + Math.floor(i / (side - 1))).flatMap(
    (a) => [...[a, a + 1, a + side], ...[a + 1, a + side + 1, a + side]],
  ),
}

const files = {
  stl: stlBinary(bowl),
  stlText: stlText(bowl),
  obj: obj(bowl),
  plyText: ply(bowl, 'ascii'),
  plyLittle: ply(bowl, 'binary_little_endian'),
  plyBig: ply(bowl, 'binary_big_endian'),
  glb: glb(bowl),
}

const [seed, tries, mostMs] = [20270412, 600, 2000]

/** Without what is quoted from the file. */
const unquoted = (sentence: string) => sentence.replace(/“[^”]*”/g, '')

/** Reads within two seconds of work into a whole mesh or one error that has a sentence; tells which. */
function answerTo(bytes: Uint8Array): string {
  const before = process.cpuUsage()
  const read = readMesh(bytes)
  const { user, system } = process.cpuUsage(before)
  expect((user + system) / 1000).toBeLessThan(mostMs)
  for (const { code, data } of read.problems)
    expect(unquoted(words.sentence(code, data)), code).not.toMatch(/\?|NaN|undefined|[{}]|intake\./)
  if (!read.ok) {
    expect(read.problems).toHaveLength(1)
    return read.problems[0]!.code
  }
  const { positions, triangles } = read.mesh
  expect(positions.every(Number.isFinite)).toBe(true)
  expect(triangles.every((corner) => corner < positions.length / 3)).toBe(true)
  expect(triangles.length).toBeGreaterThan(0)
  return 'read'
}

describe(`a spoilt mesh file (seed ${seed})`, () => {
  it.each(Object.entries(files))('of %s is read whole or refused', (_, bytes) => {
    const random = xoroshiro128plus(seed)
    expect(answerTo(bytes)).toBe('read')
    const answers = new Set<string>()
    for (let i = 0; i < tries; i++) {
      let bad = spoilt(bytes, random)
      if (i % 3 === 0) bad = spoilt(bad, random)
      answers.add(answerTo(bad))
    }
    expect(answers.size).toBeGreaterThan(3)
  })
})

/** The bench reads 200 MB of each. */
const size = 6_000_000

describe('what is no mesh at all', () => {
  it.each(Object.entries(garbage))('%s is refused', (_, make) => {
    expect(answerTo(make(size))).not.toBe('read')
  })
})
