import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { bytesOf, sampleBytes } from '../../test/job-documents.ts'
import { parseJob, project, type RawDocument, sampleNames, writeJson } from './index.ts'

const parse = (text: string) => parseJob(bytesOf(text), { name: 'job.json' })

describe.each(sampleNames)('the sample %s', (name) => {
  const raw = parseJob(sampleBytes(name)).document!

  it('is the same after it was written and read again', () => {
    const { document, problems } = parse(writeJson(raw))
    expect(problems).toEqual([])
    expect(document).toEqual(raw)
    expect(writeJson(document!)).toBe(writeJson(raw))
  })

  it('means the same as canonical JSON', () => {
    const options = { strict: true }
    const { work, money, log } = project(parse(writeJson(raw)).document!, options)
    const wanted = project(raw, options)
    expect({ work, money, log }).toEqual({ work: wanted.work, money: wanted.money, log: wanted.log })
  })
})

const key = fc.oneof(
  fc.constantFrom('a', 'b', '1', '10', 'zones', 'name', 'order', 'gone', '__proto__', 'é', ''),
  fc.string({ unit: 'grapheme', maxLength: 6 }),
)
const text = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 12 }),
  fc.constantFrom('true', 'null', '3', '1e3', '\u2028', '\ud800', '"', '\\'),
)
const cells = fc.dictionary(key, text, { maxKeys: 5 })
const item = fc.dictionary(fc.constantFrom('name', 'kind', 'order', 'gone', 'x'), text, { maxKeys: 4 })
const items = fc.dictionary(key, item, { maxKeys: 6 })
const raws: fc.Arbitrary<RawDocument> = fc.record(
  {
    hardstand: text,
    work: fc.record(
      {
        job: cells,
        place: cells,
        zones: items,
        people: items,
        unheard: fc.dictionary(key, fc.oneof(text, cells)),
      },
      { requiredKeys: [] },
    ),
    money: fc.record({ terms: cells, prices: items }, { requiredKeys: [] }),
    log: items,
  },
  { requiredKeys: ['hardstand', 'work'] },
) as fc.Arbitrary<RawDocument>

it('writing, reading and writing again gives the same text, whatever stands in the document', () => {
  fc.assert(
    fc.property(raws, (raw) => {
      const once = writeJson(raw)
      const { document, problems } = parse(once)
      expect(problems).toEqual([])
      expect(writeJson(document!)).toBe(once)
    }),
    { numRuns: 300 },
  )
}, 60_000)

it('no text is changed by it; only an order that was missing is added', () => {
  fc.assert(
    fc.property(raws, (raw) => {
      const { document } = parse(writeJson(raw))
      const { zones = {}, ...rest } = raw.work
      const { zones: read = {}, ...readRest } = document!.work
      for (const [id, given] of Object.entries(zones)) expect(read[id]).toMatchObject(given as object)
      expect(readRest.job).toEqual(rest.job)
      expect(readRest.unheard).toEqual(rest.unheard)
      expect(document!.hardstand).toBe(raw.hardstand)
    }),
    { numRuns: 200 },
  )
}, 60_000)

it('the text does not depend on the order of the maps', () => {
  const raw = parseJob(sampleBytes('deck-only')).document!
  const turned = (map: object): object =>
    Object.fromEntries(
      Object.entries(map)
        .reverse()
        .map(([name, value]) => [name, typeof value === 'object' ? turned(value as object) : value]),
    )
  expect(writeJson(turned(raw) as RawDocument)).toBe(writeJson(raw))
})

it('sections and cells stand in the order of their tables, unknown ones behind, items by order', () => {
  const raw: RawDocument = {
    hardstand: '1',
    work: {
      later: { b: 'x', a: { z: '1', y: '2' } },
      zones: { 2: { kind: 'transom', name: 'T', order: 'b', odd: 'x' }, z: { order: 'a', kind: 'hatch' } },
      job: { start: '2027-04-12', name: 'Teal' },
    },
  }
  expect(writeJson(raw)).toBe(`{
  "hardstand": "1",
  "work": {
    "job": {
      "name": "Teal",
      "start": "2027-04-12"
    },
    "zones": {
      "z": {
        "kind": "hatch",
        "order": "a"
      },
      "2": {
        "name": "T",
        "kind": "transom",
        "order": "b",
        "odd": "x"
      }
    },
    "later": {
      "a": {
        "y": "2",
        "z": "1"
      },
      "b": "x"
    }
  }
}
`)
})
