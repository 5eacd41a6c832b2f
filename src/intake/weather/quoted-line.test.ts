import fc from 'fast-check'
import Papa from 'papaparse'
import { describe, expect, it } from 'vitest'
import { splitQuoted } from './quoted-line.ts'

/** As a library splits it; undefined where it has something to complain of. */
function slow(line: string): readonly string[] | undefined {
  const { data, errors } = Papa.parse<string[]>(line, { delimiter: ',', newline: '\n' })
  return errors.length > 0 || data.length !== 1 ? undefined : data[0]
}

describe('a line with quotes', () => {
  it.each([
    ['"a","b"', ['a', 'b']],
    ['"say ""so""",2', ['say "so"', '2']],
    ['"a,b",', ['a,b', '']],
    ['"",""', ['', '']],
    ['"a" ,b', ['a', 'b']],
    ['5" of it,b', ['5" of it', 'b']],
    ['"a" ', ['a']],
    ['"open', undefined],
    ['"a"b,c', undefined],
    ['a,"', undefined],
  ])('%s', (line, fields) => {
    expect(splitQuoted(line, ',')).toEqual(fields)
  })

  it('is split as a library does it', () => {
    const letters = fc.constantFrom('"', '"', ',', 'a', ' ', '1')
    fc.assert(
      fc.property(fc.array(letters, { minLength: 1, maxLength: 14 }), (all) => {
        // Blanks at the end of a line, which it refuses behind a quote, are let be.
        const line = all.join('').trimEnd()
        fc.pre(line !== '')
        expect(splitQuoted(line, ',')).toEqual(slow(line))
      }),
      { numRuns: 5000 },
    )
  })
})
