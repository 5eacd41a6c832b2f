import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { testPress } from '../../test/support/paper-press.ts'
import { figurePieces } from './figure.ts'
import { runsOf } from './runs.ts'
import { createSetter } from './setter.ts'
import { breakLines } from './wrap.ts'

const setter = createSetter(await testPress())
const monospace = { most: 10, width: (text: string) => [...text].length }

describe('breakLines', () => {
  it('breaks at spaces and keeps a figure with its unit', () => {
    expect(breakLines('seven of 12\u2009m² done', monospace)).toEqual(['seven of', '12\u2009m² done'])
  })

  it('cuts a word that is wider than the line', () => {
    expect(breakLines('abcdefghijklmno', monospace)).toEqual(['abcdefghij', 'klmno'])
  })

  it('keeps a paragraph for every line break, an empty one too', () => {
    expect(breakLines('one\n\ntwo', monospace)).toEqual(['one', '', 'two'])
  })

  it('loses no letter and makes no line wider than it may be', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 80 }), (text) => {
        const lines = breakLines(text, monospace)
        for (const line of lines) expect([...line].length).toBeLessThanOrEqual(10)
        expect(lines.join('').replaceAll(/[ \t\r\n]/g, '')).toBe(text.replaceAll(/[ \t\r\n]/g, ''))
      }),
    )
  })
})

describe('the setter', () => {
  it('sets every digit equally wide', () => {
    const widths = [...'0123456789'].map((digit) => setter.width(digit, 'body'))
    expect(new Set(widths.map((width) => width.toFixed(4))).size).toBe(1)
  })

  it('measures what a face lacks in the face that has it', () => {
    expect(setter.width('µ', 'body')).toBeCloseTo((setter.width('µ', 'label') * 9.5) / 10, 6)
  })

  it('cuts a line with an ellipsis only when it has to', () => {
    expect(setter.fit('short', 'body', 50)).toBe('short')
    const cut = setter.fit('a very long line of words', 'body', 20)
    expect(cut.endsWith('…')).toBe(true)
    expect(setter.width(cut, 'body')).toBeLessThanOrEqual(20)
  })
})

describe('runsOf', () => {
  const file = (name: string, signs: string) => ({
    name,
    face: 'text' as const,
    font: { hasGlyphForCodePoint: (code: number) => signs.includes(String.fromCodePoint(code)) },
  })
  const files = [file('first', 'abc '), file('second', 'abcč\u2009')]

  it('keeps to the first file and leaves it only for a sign that it lacks', () => {
    expect(runsOf('abčc', 'text', files).map((run) => [run.text, run.file.name])).toEqual([
      ['ab', 'first'],
      ['č', 'second'],
      ['c', 'first'],
    ])
  })

  it('writes a stand-in for a sign that no file has, and drops control signs', () => {
    expect(
      runsOf('a\u202fb\u0007\u202ec', 'text', files)
        .map((run) => run.text)
        .join(''),
    ).toBe('a\u2009bc')
  })
})

describe('figurePieces', () => {
  it('parts digits from units', () => {
    expect(figurePieces('25\u2009ft\u20094\u2009in').map((piece) => piece.text)).toEqual([
      '25',
      '\u2009ft\u2009',
      '4',
      '\u2009in',
    ])
    expect(figurePieces('3 × 25\u2009µm').map((piece) => piece.text)).toEqual(['3 × 25', '\u2009µm'])
    expect(figurePieces('−0.5\u2009°C')[0]!.text).toBe('−0.5')
  })

  it('puts the text together again', () => {
    for (const text of ['€31\u202f915.01', '2 × 1 3/16\u2009in', 'from 10\u2009h', 'n/a', '12,50\u2009€']) {
      expect(
        figurePieces(text)
          .map((piece) => piece.text)
          .join(''),
      ).toBe(text)
    }
  })
})
