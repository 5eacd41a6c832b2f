import { readFileSync } from 'node:fs'
import { Ajv2020 } from 'ajv/dist/2020.js'
import { describe, expect, it } from 'vitest'
import { parse } from 'yaml'
import { parseJob, sampleNames, writeJson } from './index.ts'
import { jsonSchema } from './json-schema.ts'

const validate = new Ajv2020({
  strict: true,
  allowUnionTypes: true,
  strictTypes: false,
  strictRequired: false,
  allErrors: true,
}).compile(jsonSchema())
const errorsOf = (document: unknown): readonly string[] => {
  validate(document)
  return (validate.errors ?? []).map(({ instancePath, keyword }) => `${instancePath} ${keyword}`)
}
const read = (name: string): Buffer => readFileSync(new URL(`../../samples/${name}.yaml`, import.meta.url))

describe.each(sampleNames)('the sample %s', (name) => {
  it('passes as YAML reads it, with numbers and booleans', () => {
    expect(errorsOf(parse(read(name).toString('utf8')))).toEqual([])
  })

  it('passes as canonical JSON, all texts', () => {
    const { document } = parseJob(read(name))
    expect(errorsOf(JSON.parse(writeJson(document!)))).toEqual([])
  })
})

const least = () => ({
  hardstand: 1,
  work: {
    job: { name: 'Teal Wren', start: '2027-04-12' },
    boat: { kind: 'open powerboat' },
    place: { shelter: 'cover', timeZone: 'Europe/Stockholm' },
  } as Record<string, unknown>,
})

describe('a document that only just passes', () => {
  it('passes', () => expect(errorsOf(least())).toEqual([]))

  const zone = (cells: object) => ({ zones: { transom: { kind: 'transom', ...cells } } })
  it.each([
    ['an unknown section', { zoness: {} }, '/work additionalProperties'],
    ['an unknown cell', zone({ colour: 'red' }), '/work/zones/transom additionalProperties'],
    ['a bad id', { zones: { 'Aft End': { kind: 'transom' } } }, '/work/zones propertyNames'],
    ['an item without what it needs', { zones: { transom: {} } }, '/work/zones/transom required'],
    ['a list for a collection', { zones: [{ kind: 'transom' }] }, '/work/zones type'],
    ['a choice that is none', zone({ existing: 'tar' }), '/work/zones/transom/existing enum'],
    ['a count beyond its bounds', zone({ count: 100 }), '/work/zones/transom/count maximum'],
    ['a length without a unit', zone({ length: 2 }), '/work/zones/transom/length type'],
    ['a missing section that is needed', { boat: undefined }, '/work required'],
    ['a date that is none', { job: { name: 'x', start: '12.4.2027' } }, '/work/job/start pattern'],
  ])('fails with %s', (_, change, wanted) => {
    const document = least()
    Object.assign(document.work, change)
    expect(errorsOf(JSON.parse(JSON.stringify(document)))).toContain(wanted)
  })

  it('passes with a removed item that has nothing but that', () => {
    const document = least()
    document.work.zones = { transom: { gone: true } }
    expect(errorsOf(document)).toEqual([])
  })
})
