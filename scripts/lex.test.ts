import { expect, test } from 'vitest'
import { tokenize } from './lex.mjs'

const texts = (source: string) => tokenize(source).map((token) => token.text)
const kinds = (source: string) => tokenize(source).map((token) => `${token.kind} ${token.text}`)

test('comments and strings keep what looks like code inside them', () => {
  expect(kinds(`a // import 'x'\n/* import 'y' */ "import 'z'" 'it\\'s'`)).toEqual([
    'word a',
    "comment // import 'x'",
    "comment /* import 'y' */",
    `string "import 'z'"`,
    "string 'it\\'s'",
  ])
})

test('a string gives its value without the quotes', () => {
  expect(tokenize(`'#units'`)[0]?.value).toBe('#units')
})

test('the code inside a template is read as code and the rest is not', () => {
  expect(kinds('`let a ${ b + `in ${c}` } let` + d')).toEqual([
    'template let a ',
    'word b',
    'mark +',
    'template in ',
    'word c',
    'template ',
    'template  let',
    'mark +',
    'word d',
  ])
})

test('a block inside the substitution of a template does not end it', () => {
  expect(texts('`${ [1].map((n) => { return n }) }z`').at(-1)).toBe('z')
})

test('a slash after a value divides and after an operator opens a regular expression', () => {
  expect(kinds('a / b / c')).toEqual(['word a', 'mark /', 'word b', 'mark /', 'word c'])
  expect(kinds('return /[\'"`/[]x/g.test(y)').slice(0, 3)).toEqual([
    'word return',
    'regex /[\'"`/[]x/g',
    'mark .',
  ])
  expect(kinds('x = /[\'"`/]\\//u')).toEqual(['word x', 'mark =', 'regex /[\'"`/]\\//u'])
})

test('a quote that is not closed on its line is a mark, as in the text of a screen', () => {
  expect(texts(`<p>Don't sand</p>\nimport a from 'b'`).slice(-2)).toEqual(['from', "'b'"])
})

test('depth counts open brackets of every kind and lines count from one', () => {
  const tokens = tokenize('f(\n{ a }\n)\nb')
  const a = tokens.find((token) => token.text === 'a')
  const b = tokens.find((token) => token.text === 'b')
  expect([a?.depth, a?.line, a?.first]).toEqual([2, 2, false])
  expect([b?.depth, b?.line, b?.first]).toEqual([0, 4, true])
})

test('numbers with exponents, separators and a leading point are one token each', () => {
  expect(texts('1_000 1e-3 .5 0x1f a?.5:b')).toEqual([
    '1_000',
    '1e-3',
    '.5',
    '0x1f',
    'a',
    '?',
    '.5',
    ':',
    'b',
  ])
})
