import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'
import { labels, labelTables } from './labels.ts'
import { readMessage } from './message.ts'
import { messages, tables } from './messages.ts'
import { quantityKey } from './quantity-key.ts'
import { createWords } from './words.ts'

const source = fileURLToPath(new URL('..', import.meta.url))
const here = join(source, 'words')
const entries = Object.entries(messages)

describe('every message', () => {
  it('stands in one table only, labels included', () => {
    const all = [...Object.values(tables), ...Object.values(labelTables)]
    const codes = all.flatMap((table) => Object.keys(table))
    expect(codes.filter((code, at) => codes.indexOf(code) !== at)).toEqual([])
  })

  it('comes from a table that is merged', () => {
    const named = readdirSync(here).flatMap((file) => [
      ...(file.endsWith('.test.ts') ? '' : readFileSync(join(here, file), 'utf8')).matchAll(
        /export const (\w+): Readonly<Record<string, string>> = \{|export const (\w+): Record<string, string> = \{/g,
      ),
    ])
    const missing = named
      .map((match) => match[1] ?? match[2])
      .filter((name) => !(String(name) in tables) && !(String(name) in labelTables))
    expect(missing).toEqual([])
  })

  it('is a code, ICU, and one or more whole sentences', () => {
    for (const [code, text] of entries) {
      expect(code).toMatch(/^[a-z]+\.[a-z][A-Za-z0-9]*$/)
      expect(() => readMessage(text, String), code).not.toThrow()
    }
    const whole = Object.entries(tables).filter(([name]) => !name.endsWith('Phrases'))
    for (const [code, text] of whole.flatMap(([, table]) => Object.entries(table))) {
      expect(text, code).toMatch(/^[A-Z{“].*[.:}]$/s)
    }
  })

  it.each(['metric', 'us'] as const)('formats with sample data in %s units, without a hole', (system) => {
    const words = createWords({ locale: 'en-US', system, timeZone: 'Europe/Paris' })
    for (const [code, text] of entries) {
      const written = words.sentence(code, sampleFor(text))
      expect(written, code).not.toMatch(/NaN|undefined|\{|\}/)
      expect(written, code).not.toBe(code)
    }
  })
})

function sampleFor(text: string): Record<string, number | string> {
  const uses = [...readMessage(text, String).arguments]
  return { currency: 'EUR', ...Object.fromEntries(uses.map(([name, use]) => [name, sampleOf(name, use)])) }
}

function sampleOf(name: string, use: string): number | string {
  if (use === 'count') return 2
  const unit = quantityKey(name)?.writtenAs.kind
  if (unit === 'date') return '2027-04-12'
  if (unit === 'moment') return Date.UTC(2027, 3, 12, 6)
  return unit === undefined ? 'sample' : 12
}

describe('every code', () => {
  it('in the source has a sentence or a label', () => {
    const known = (code: string) => Object.hasOwn(messages, code) || Object.hasOwn(labels, code)
    const missing = codesIn(source).filter(({ code }) => !known(code))
    expect(missing.map(({ code, file }) => `${code} (${file})`)).toEqual([])
  })

  it('of a kind of step has a phrase', () => {
    const steps = filesIn(join(source, 'plan', 'steps')).map(({ text }) => text)
    const kinds = steps.flatMap((text) =>
      [...text.matchAll(/kind: (?:[^,'\n]*\? )?'([a-z-]+)'(?: : '([a-z-]+)')?,/g)].flatMap((match) =>
        match.slice(1),
      ),
    )
    const waits = ['none', 'fixed', 'clock']
    const named = kinds.filter((kind) => kind !== undefined && !waits.includes(kind))
    const codes = named.map(
      (kind) => `step.${kind.replace(/-([a-z])/g, (_, letter) => letter.toUpperCase())}`,
    )
    expect(codes.length).toBeGreaterThan(10)
    expect(codes.filter((code) => !Object.hasOwn(messages, code))).toEqual([])
  })

  it('asked for as a label has one', () => {
    const asked = filesIn(source).flatMap(({ text }) => [
      ...text.matchAll(/\blabel(?:Of)?\('([a-zA-Z.]+)'\)/g),
    ])
    const missing = asked.map((match) => String(match[1])).filter((key) => !Object.hasOwn(labels, key))
    expect([...new Set(missing)]).toEqual([])
  })

  it('made from a kind has at least one label of its kind', () => {
    const made = filesIn(source).flatMap(({ text }) => [
      ...text.matchAll(/\blabel(?:Of)?\(`([a-zA-Z.]+)\.\$/g),
    ])
    const known = (kind: string) => Object.keys(labels).some((key) => key.startsWith(`${kind}.`))
    expect(made.map((match) => String(match[1])).filter((kind) => !known(kind))).toEqual([])
  })
})

type Found = { readonly code: string; readonly file: string }

/** Codes after `code:`, and other texts of that form whose room has messages or gives codes. */
function codesIn(folder: string): readonly Found[] {
  const files = filesIn(folder)
  const given = files.flatMap(({ text }) => [...text.matchAll(/code: '([a-z]+)\.[a-z][A-Za-z0-9]*'/g)])
  const told = [...entries.map(([code]) => code), ...Object.keys(labels)]
  const rooms = new Set([...given.map((match) => match[1]), ...told.map((code) => code.split('.')[0])])
  const found = files.flatMap(({ file, text }) =>
    [...text.matchAll(/'([a-z]+)\.([a-z][A-Za-z0-9]*)'/g)]
      .filter(([, room, what]) => rooms.has(room) && !extensions.has(String(what)))
      .map(([, room, what]) => ({ code: `${room}.${what}`, file })),
  )
  return [...new Map(found.map((each) => [each.code, each])).values()]
}

function filesIn(folder: string): readonly { readonly file: string; readonly text: string }[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((file) => /\.tsx?$/.test(file) && !/\.test\.tsx?$/.test(file) && !file.startsWith('words'))
    .map((file) => ({ file, text: readFileSync(join(folder, file), 'utf8') }))
}

const extensions = new Set(['json', 'yaml', 'csv', 'svg', 'pdf', 'dxf', 'ics', 'html', 'txt', 'ts'])
