import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readJson } from './read-json.ts'
import type { Tree } from './tree.ts'

/** A tree as the texts in it; lists are not kept. */
const plain = (tree: Tree | undefined): unknown => {
  if (tree?.kind === 'map')
    return Object.fromEntries(tree.entries.map(({ key, value }) => [key, plain(value)]))
  return tree?.kind === 'text' ? tree.text : tree?.kind
}

const asTexts = (value: unknown): unknown => {
  if (value === null) return ''
  if (Array.isArray(value)) return 'list'
  if (typeof value === 'object')
    return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, asTexts(each)]))
  return String(value)
}

it('reads what JSON.parse reads', () => {
  const value = fc.jsonValue({ maxDepth: 6 })
  fc.assert(
    fc.property(value, fc.constantFrom(undefined, 2, '\t'), (given, indent) => {
      const { tree, faults } = readJson(JSON.stringify(given, null, indent))
      expect(faults).toEqual([])
      expect(plain(tree)).toEqual(asTexts(given))
    }),
  )
})

it('refuses what JSON.parse refuses', () => {
  const piece = fc.constantFrom(...'{}[]:,"\\-+.0189eEtrufalsn \n\t\u0001é')
  const isJson = (text: string): boolean => {
    try {
      JSON.parse(text)
      return true
    } catch {
      return false
    }
  }
  fc.assert(
    fc.property(fc.array(piece, { maxLength: 12 }), (pieces) => {
      const text = pieces.join('')
      const { tree, faults } = readJson(text)
      const refused = tree === undefined || faults.some(({ code }) => code !== 'job.duplicateKey')
      expect(refused).toBe(!isJson(text))
    }),
    { numRuns: 3000 },
  )
})

describe('faults', () => {
  it.each([
    ['{"a": 1,}', 'job.json', 8],
    ['{"a" 1}', 'job.json', 5],
    ["{'a': 1}", 'job.json', 1],
    ['{"a": tru}', 'job.json', 6],
    ['{"a": 01}', 'job.json', 7],
    ['{"a": "x\ny"}', 'job.json', 8],
    ['{"a": "\\x"}', 'job.json', 7],
    ['{"a": 1} x', 'job.json', 9],
    ['{"a": 1', 'job.truncated', 7],
    ['{"a": "x', 'job.truncated', 8],
    ['[1, 2', 'job.truncated', 5],
    ['{"a": 1, "a": 2}', 'job.duplicateKey', 9],
  ])('%j is %s at %i', (text, code, at) => {
    expect(readJson(text).faults).toMatchObject([{ code, at }])
  })

  it('every duplicate key is told, with its pointer, and the first one counts', () => {
    const { tree, faults } = readJson('{"a": {"b": 1, "b": 2}, "a": 3}')
    expect(faults.map(({ pointer }) => pointer)).toEqual(['/a/b', '/a'])
    expect(plain(tree)).toEqual({ a: { b: '1' } })
  })
})

it('a number stays the text it was', () => {
  expect(plain(readJson('{"a": 3.0, "b": 1e3, "c": 12345678901234567890}').tree)).toEqual({
    a: '3.0',
    b: '1e3',
    c: '12345678901234567890',
  })
})
