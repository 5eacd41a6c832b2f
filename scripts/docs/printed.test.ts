import { expect, test } from 'vitest'
import { exampleProblem, examplesOf, matches, splitCommand } from './examples.mjs'
import { readPage } from './markdown.mjs'
import { nomenclatureFaults, quantityKeys } from './nomenclature.mjs'

test('quantities are the keys that end in a unit and hold numbers, at any depth', () => {
  const printed = {
    boat: { lengthM: 7.7, name: 'Example', beamM: null },
    zones: [{ areaM2: 12, wetFilmUm: [100, 120] }, { hours: 3 }],
    sky: { sunWPerM2: 600, windMps: 3, atMs: 1, priceCoins: 100, solidsShare: 0.5 },
    idM: 'text',
    count: 4,
    USA: 1,
    seed: 1,
  }
  expect([...quantityKeys(printed)].sort().join(' ')).toBe(
    'areaM2 atMs beamM hours lengthM priceCoins solidsShare sunWPerM2 wetFilmUm windMps',
  )
})

test('a printed quantity that the nomenclature lacks is named with the command', () => {
  const page = readPage('| name | symbol | unit | meaning |\n|---|---|---|---|\n| `areaM2` | A | m² | area |')
  const keys = new Map([
    ['areaM2', 'hardstand boat'],
    ['volumeL', 'hardstand stores'],
  ])
  expect(nomenclatureFaults({ page, keys })).toEqual([
    'docs/nomenclature.md: volumeL is missing, which "hardstand stores" prints',
  ])
})

const fence = (...lines: string[]) => examplesOf(readPage(['```console', ...lines, '```'].join('\n')))

test('the examples of a fence come with what they show and where they stand', () => {
  const examples = fence(
    '$ npx hardstand sum dew --air "20 °C"',
    '9.3 °C',
    '',
    '$ npx hardstand check - \\',
    '    < a.yaml',
    '...',
  )
  expect(examples.map(({ args, stdin, expected, line }) => ({ args, stdin, expected, line }))).toEqual([
    { args: ['sum', 'dew', '--air', '20 °C'], stdin: undefined, expected: ['9.3 °C'], line: 2 },
    { args: ['check', '-'], stdin: 'a.yaml', expected: ['...'], line: 5 },
  ])
})

test('other commands and other fences are left alone', () => {
  expect(fence('$ npm start')).toEqual([])
  expect(examplesOf(readPage('```sh\n$ npx hardstand plan a\n```'))).toEqual([])
})

test('words of a command are split as a shell splits them', () => {
  expect(splitCommand(`npx hardstand sum 'a "b"' "3/8 \\" x" c\\ d e=f`).args).toEqual([
    'sum',
    'a "b"',
    '3/8 " x',
    'c d',
    'e=f',
  ])
})

test('a line of dots stands for any number of lines, none too', () => {
  expect(matches(['a', '...', 'd'], ['a', 'b', 'c', 'd'])).toBe(true)
  expect(matches(['a', '...', 'd'], ['a', 'd'])).toBe(true)
  expect(matches(['...'], [])).toBe(true)
  expect(matches(['a', '...', 'd'], ['a', 'd', 'e'])).toBe(false)
  expect(matches(['a'], ['a', 'b'])).toBe(false)
  expect(matches(['a', 'b'], ['a'])).toBe(false)
})

test('a plain space is taken for one that keeps a figure and its unit together', () => {
  expect(matches(['4.4 mil  3 086 m³/h'], ['4.4\u2009mil  3\u202f086\u00a0m³/h'])).toBe(true)
  expect(matches(['4.4mil'], ['4.4\u2009mil'])).toBe(false)
})

test('an example passes when it prints what it shows, errors included', () => {
  const [example] = fence('$ npx hardstand check a.yaml', 'a.yaml: no such file')
  const run = { status: 1, stdout: '', stderr: 'a.yaml: no such file\n' }
  expect(example && exampleProblem(example, run)).toBeUndefined()
  expect(example && exampleProblem(example, { ...run, stderr: 'other' })).toBe('it prints instead:\nother')
  expect(example && exampleProblem(example, { ...run, status: null })).toContain('it ends with null')
})

test('an example that breaks the program is refused, whatever it shows', () => {
  const [example] = fence('$ npx hardstand check a.yaml', '...')
  const trace = 'Error: x\n    at run (file:///a/main.js:3:7)\n'
  expect(example && exampleProblem(example, { status: 1, stdout: '', stderr: trace })).toContain(
    'it ends with 1',
  )
})

test('an example that shows nothing must end well', () => {
  const [example] = fence('$ npx hardstand new a.yaml')
  expect(example && exampleProblem(example, { status: 0, stdout: 'made', stderr: '' })).toBeUndefined()
  expect(example && exampleProblem(example, { status: 1, stdout: '', stderr: 'x' })).toBe(
    'it ends with 1:\nx',
  )
})

test('an example of more than one command is refused', () => {
  const [example] = fence('$ npx hardstand plan a | head')
  expect(example && exampleProblem(example, { status: 0, stdout: '', stderr: '' })).toBe(
    'the example is more than one command',
  )
})
