import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { bytesOf, least, problemsIn, sampleBytes } from '../../test/job-documents.ts'
import { limits, type Problem, parseJob, project, type RawDocument, sampleNames, writeJson } from './index.ts'

/** Reads bytes all the way, both ways of reading, and gives every problem. Must never throw. */
const readAll = (bytes: Uint8Array, name: string): readonly Problem[] => {
  const { document, problems, locate, ok } = parseJob(bytes, { name })
  expect(ok).toBe(problems.length === 0)
  if (document === undefined) {
    expect(problems.length).toBeGreaterThan(0)
    return problems
  }
  project(document, { strict: false })
  writeJson(document)
  return [...problems, ...project(document, { strict: true, locate }).problems]
}

const codesOf = (text: string, name = 'job.yaml'): readonly string[] =>
  readAll(bytesOf(text), name).map(({ code }) => code)

describe('a file that is no job document', () => {
  it.each([
    ['nothing at all', new Uint8Array(), 'job.empty'],
    ['only spaces', bytesOf(' \n\t\r\n '), 'job.empty'],
    ['only a byte order mark', new Uint8Array([0xef, 0xbb, 0xbf]), 'job.empty'],
    ['only a remark', bytesOf('# nothing\n'), 'job.shape'],
    ['a NUL', new Uint8Array([104, 0, 105]), 'job.binary'],
    ['bytes that are no UTF-8', new Uint8Array([104, 0xc3, 0x28]), 'job.notUtf8'],
    ['UTF-16', new Uint8Array([0xff, 0xfe, 104, 0]), 'job.notUtf8'],
    ['one text', bytesOf('just a text'), 'job.shape'],
    ['a list', bytesOf('- a\n- b\n'), 'job.shape'],
    ['a map of something else', bytesOf('name: value\n'), 'job.notAJob'],
  ])('with %s is refused with one problem', (_, bytes, code) => {
    expect(readAll(bytes, 'job.yaml').map((problem) => problem.code)).toEqual([code])
  })

  it('of 50 MB is refused by its size, before it is looked at', () => {
    const bytes = new Uint8Array(50_000_000)
    expect(readAll(bytes, 'job.yaml')).toEqual([
      {
        code: 'job.tooLarge',
        severity: 'error',
        pointer: '',
        data: { bytes: 50_000_000, most: limits.bytes },
      },
    ])
  })
})

describe('a file made to exhaust the reader', () => {
  const deep = 5_000_000
  it.each([
    ['flow lists', '['.repeat(deep), 'job.tooDeep'],
    ['flow maps', '{a: '.repeat(1_000_000), 'job.tooDeep'],
    ['block lists', '- '.repeat(2_000_000), 'job.tooDeep'],
    ['complex keys', '? '.repeat(2_000_000), 'job.tooDeep'],
    ['empty lines', `work:\n${'\n'.repeat(deep)}`, 'job.tooManyPieces'],
    ['remarks', '#\n'.repeat(2_000_000), 'job.tooManyPieces'],
    ['commas', `[${','.repeat(deep)}`, 'job.tooManyPieces'],
    ['anchors', '&a '.repeat(2_000_000), 'job.tooManyAliases'],
    ['tags', '!a '.repeat(2_000_000), 'job.tooManyAliases'],
    ['lines', 'a: b\n'.repeat(1_000_000), 'job.tooManyPieces'],
  ])(
    'with millions of %s is refused with one problem',
    (_, text, code) => {
      expect(codesOf(text)).toEqual([code])
    },
    60_000,
  )

  it.each([
    ['lists', '['.repeat(deep)],
    ['maps', '{"a":'.repeat(1_000_000)],
  ])('with millions of JSON %s inside each other is refused with one problem', (_, text) => {
    expect(codesOf(text, 'job.json')).toEqual(['job.tooDeep'])
  })

  it('with hundreds of aliases is refused', () => {
    const lines = Array.from({ length: 30 }, (_, at) => {
      const cells = Array.from({ length: 10 }, (__, cell) => `c${cell}: *a${at}`)
      return `  a${at + 1}: &a${at + 1} {${cells.join(', ')}}`
    })
    const codes = codesOf(['work:', '  a0: &a0 {x: y}', ...lines].join('\n'))
    expect(codes).toContain('job.tooManyAliases')
    expect(codes.length).toBeLessThan(200)
  })

  it('with few aliases that would grow into thousands of millions is refused', () => {
    const lines = Array.from({ length: 10 }, (_, at) => {
      const cells = Array.from({ length: 10 }, (__, cell) => `c${cell}: *a${at}`)
      return `  a${at + 1}: &a${at + 1} {${cells.join(', ')}}`
    })
    expect(codesOf(['work:', '  a0: &a0 {x: y}', ...lines].join('\n'))).toContain('job.tooManyAliases')
  })

  it('with an alias inside its own anchor ends at the depth limit', () => {
    expect(codesOf(least('  zones: &z {a: *z}'))).toContain('job.tooDeep')
  })

  it('with 100,000 items keeps the first thousands and says so', () => {
    const zones = Object.fromEntries(
      Array.from({ length: 100_000 }, (_, at) => [`z${at}`, { kind: 'transom' }]),
    )
    const raw: RawDocument = { hardstand: '1', work: { zones } }
    const { work, problems } = project(raw, { strict: true })
    expect(work.zones).toHaveLength(limits.itemsPerSection)
    expect(problems.map(({ code }) => code)).toContain('job.tooManyItems')
    expect(codesOf(writeJson(raw), 'job.json')).toContain('job.tooManyItems')
  }, 60_000)
})

describe('names that reach for the prototype', () => {
  const nasty = ['__proto__', 'constructor', 'toString', 'hasOwnProperty']

  it.each(nasty)('%s is an unknown section, cell and id like any other', (name) => {
    const text = least(
      `  ${name}: {a: b}\n  zones:\n    ${name}: {kind: transom}\n    a: {kind: transom, ${name}: x}`,
    )
    const problems = readAll(bytesOf(text), 'job.yaml').map(({ code, pointer }) => `${code} ${pointer}`)
    const wanted = [`job.unknownKey /work/${name}`, `job.unknownKey /work/zones/a/${name}`]
    const bad = name === 'constructor' ? [] : [`job.badId /work/zones/${name}`]
    expect(problems.sort()).toEqual([...bad, ...wanted].sort())
  })

  it.each(nasty)('%s pollutes nothing, in YAML or in JSON', (name) => {
    const inside = `{"${name}": {"polluted": "yes", "kind": "transom"}}`
    for (const file of ['job.yaml', 'job.json']) {
      codesOf(
        `{"hardstand": 1, "${name}": ${inside}, "work": {"${name}": ${inside}, "zones": ${inside}}}`,
        file,
      )
    }
    expect(Object.hasOwn(Object.prototype, 'polluted')).toBe(false)
    expect(({} as Record<string, unknown>).polluted).toBeUndefined()
  })

  it('__proto__ survives writing and reading as a plain name', () => {
    const { document } = parseJob(bytesOf('{"work": {"__proto__": {"a": "b"}}}'), { name: 'job.json' })
    expect(writeJson(document!)).toContain('"__proto__": {\n      "a": "b"\n    }')
  })
})

describe('wrong shapes', () => {
  it('are one problem each at their place, and the rest is read', () => {
    const text = least(
      [
        '  zones: [a, b]',
        '  sheets: text',
        '  layers:',
        '    a: [1]',
        '    b: {coats: [1, 2], zones: {x: y}, sheet: s}',
        '  people:',
        '    1: {name: One}',
        '    a:',
        '    b: {name: }',
        '    c: {name: ~}',
        '    d: {name: null}',
      ].join('\n'),
    )
    expect(problemsIn(text)).toEqual([
      '6:3 job.shape /work/zones',
      '7:3 job.shape /work/sheets',
      '9:5 job.shape /work/layers/a',
      '10:9 job.shape /work/layers/b/coats',
      '10:24 job.shape /work/layers/b/zones',
      '10:5 job.missing /work/layers/b',
      '10:5 job.missing /work/layers/b',
      '10:46 job.ref /work/layers/b/sheet',
      '13:5 job.missing /work/people/a',
      '14:15 job.missing /work/people/b/name',
      '15:15 job.missing /work/people/c/name',
      '16:15 job.missing /work/people/d/name',
    ])
  })

  it('in a shared document never throw either', () => {
    const values = [null, 0, 1, true, [], ['a'], {}, { a: null }, { a: { b: 1 } }, 'text', Number.NaN]
    for (const value of values) {
      for (const raw of [
        value,
        { hardstand: value, work: value, money: value, log: value },
        { work: { job: value, zones: value, stations: value } },
        { work: { zones: { a: value } }, money: { terms: value, prices: { a: value } }, log: { a: value } },
        { work: { zones: { a: { kind: value, order: value, gone: value } } }, log: { a: { at: value } } },
      ]) {
        expect(() => project(raw as unknown as RawDocument, { strict: false })).not.toThrow()
      }
    }
  })

  it('null where the document belongs is a document without anything', () => {
    const { complete, problems } = project(null as unknown as RawDocument, { strict: false })
    expect(complete).toBe(false)
    expect(problems.map(({ pointer }) => pointer)).toContain('/work/job')
  })
})

describe('odd characters', () => {
  it('line separators of Unicode stay in their text and make no new line', () => {
    const odd = 'a\u2028b\u2029c\u0085d'
    const text = least(`  people:\n    ada: {name: "${odd}"}\n    ben: {name: Ben, roll: lead}`)
    const { document } = parseJob(bytesOf(text))
    expect(document?.work.people?.ada).toMatchObject({ name: odd })
    expect(problemsIn(text)).toEqual(['8:22 job.unknownKey /work/people/ben/roll'])
  })

  it('columns count characters, not their halves', () => {
    expect(problemsIn(least('  people: {ada: {name: "🛶🛶", roll: lead}}'))).toEqual([
      '6:30 job.unknownKey /work/people/ada/roll',
    ])
  })

  it.each([
    ['carriage return and line feed', '\r\n'],
    ['carriage return alone', '\r'],
  ])('lines may end in %s', (_, end) => {
    const text = least('  zoness: {}').replaceAll('\n', end)
    expect(parseJob(bytesOf(text)).document).toBeDefined()
  })

  it('a byte order mark is taken off', () => {
    const bytes = new Uint8Array([0xef, 0xbb, 0xbf, ...bytesOf(least())])
    expect(readAll(bytes, 'job.yaml')).toEqual([])
  })
})

describe('references', () => {
  it('to each other in a circle of removed and broken items end with nothing kept and all of them told', () => {
    const text = least(
      [
        '  sheets: {a: {name: x, gone: true}, b: {name: y, mix: bad}}',
        '  packs: {p: {sheet: a, volume: 1 L}, q: {sheet: b, volume: 1 L}, r: {sheet: nothing, volume: 1 L}}',
        'money:',
        '  terms: {currency: EUR}',
        '  prices: {x: {pack: p, price: EUR 1}, y: {pack: q, price: EUR 1}}',
      ].join('\n'),
    )
    expect(problemsIn(text)).toEqual([
      '6:56 units.notANumber /work/sheets/b/mix',
      '7:22 job.ref /work/packs/p/sheet',
      '7:78 job.ref /work/packs/r/sheet',
      '10:22 job.ref /money/prices/x/pack',
    ])
  })
})

describe('damaged samples', () => {
  const cut = fc.record({
    sample: fc.constantFrom(...sampleNames),
    kind: fc.constantFrom('flip', 'drop', 'insert', 'repeat', 'end'),
    at: fc.double({ min: 0, max: 1, noNaN: true }),
    length: fc.integer({ min: 1, max: 400 }),
    byte: fc.oneof(
      fc.constantFrom(...[...'{}[]:,&*!|>"\'#-?\n\t '].map((character) => character.charCodeAt(0))),
      fc.integer({ min: 0, max: 255 }),
    ),
  })

  const damaged = ({
    sample,
    kind,
    at,
    length,
    byte,
  }: typeof cut extends fc.Arbitrary<infer T> ? T : never) => {
    const bytes = [...sampleBytes(sample)]
    const place = Math.floor(at * (bytes.length - 1))
    if (kind === 'flip') bytes[place] = byte
    if (kind === 'drop') bytes.splice(place, length)
    if (kind === 'insert') bytes.splice(place, 0, byte)
    if (kind === 'repeat') bytes.splice(place, 0, ...bytes.slice(place, place + length))
    if (kind === 'end') bytes.length = place
    return new Uint8Array(bytes)
  }

  it('never throw, and give a document or a problem', () => {
    fc.assert(
      fc.property(cut, (how) => {
        readAll(damaged(how), 'job.yaml')
      }),
      { numRuns: 60 },
    )
  }, 60_000)

  it('never throw as JSON either, and every damage that is no JSON any more is told', () => {
    const texts = new Map(sampleNames.map((name) => [name, writeJson(parseJob(sampleBytes(name)).document!)]))
    fc.assert(
      fc.property(
        fc.constantFrom(...sampleNames),
        fc.nat(),
        fc.string({ maxLength: 4 }),
        (name, at, piece) => {
          const text = texts.get(name)!
          const place = at % text.length
          const broken = text.slice(0, place) + piece + text.slice(place + 1)
          const problems = readAll(bytesOf(broken), 'job.json')
          let valid = true
          try {
            JSON.parse(broken)
          } catch {
            valid = false
          }
          if (!valid) expect(problems.length).toBeGreaterThan(0)
        },
      ),
      { numRuns: 100 },
    )
  }, 60_000)

  it('a document cut off anywhere in JSON is refused', () => {
    const text = writeJson(parseJob(sampleBytes('deck-only')).document!).trimEnd()
    fc.assert(
      fc.property(fc.integer({ min: 1, max: text.length - 1 }), (length) => {
        expect(codesOf(text.slice(0, length), 'job.json')).toContain('job.truncated')
      }),
      { numRuns: 100 },
    )
  }, 60_000)

  it('random bytes and random texts never throw', () => {
    fc.assert(fc.property(fc.uint8Array({ maxLength: 200 }), (bytes) => void readAll(bytes, 'job.yaml')))
    fc.assert(fc.property(fc.string({ unit: 'binary', maxLength: 200 }), (text) => void codesOf(text)))
  }, 60_000)
})
