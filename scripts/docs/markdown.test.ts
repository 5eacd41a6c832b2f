import { expect, test } from 'vitest'
import { dependencyFaults } from './dependencies.mjs'
import { linkFaults } from './links.mjs'
import { readPage, sectionOf, tableRows } from './markdown.mjs'

const page = readPage(
  [
    '# Wet film & `dry` film',
    'See [the sums](sums.md#dew-point "title"), ![a](pic.png) and `[no](link.md)`.',
    '```console',
    '# no heading [no](link.md)',
    '```',
    '## Steps',
    'one',
    '### [Day](days.md) one',
    '## Steps',
    '<a id="made"></a>',
    '[ref]: other.md',
  ].join('\n'),
)

test('headings get the anchors that code hosts give them, the second of a name numbered', () => {
  expect([...page.anchors]).toEqual(['wet-film--dry-film', 'steps', 'day-one', 'steps-1', 'made'])
})

test('links are found with their line, but none in code', () => {
  expect(page.links).toEqual([
    { target: 'sums.md#dew-point', line: 2 },
    { target: 'pic.png', line: 2 },
    { target: 'days.md', line: 8 },
    { target: 'other.md', line: 11 },
  ])
})

test('a fence gives its language, its lines and where it begins', () => {
  expect(page.fences).toEqual([{ language: 'console', lines: ['# no heading [no](link.md)'], line: 4 }])
})

test('a section ends at the next heading of its level', () => {
  const steps = page.headings.find(({ text }) => text === 'Steps')
  expect(steps && sectionOf(page, steps)).toBe('## Steps\none\n### [Day](days.md) one')
})

test('rows of tables come without the head and the rule', () => {
  expect(tableRows(readPage('| name | unit |\n|---|:-:|\n| `areaM2` | m² |\n| a \\| b | |'))).toEqual([
    ['`areaM2`', 'm²'],
    ['a \\| b', ''],
  ])
})

function faultsOf(text: string) {
  const pages = new Map([
    ['docs/a.md', readPage(text)],
    ['docs/b.md', readPage('# Dew point')],
    ['README.md', readPage('# Top')],
  ])
  const exists = (path: string) => pages.has(path) || path === 'docs' || path === 'LICENSE'
  return linkFaults({ pages, exists })
}

test('a link that leads to a file and a heading passes', () => {
  expect(
    faultsOf(
      '# Here\n[a](b.md#dew-point) [b](../LICENSE) [c](#here) [d](/docs) [e](https://example.org/x) [f](../README.md)',
    ),
  ).toEqual([])
})

test.each([
  ['[a](gone.md)', 'docs/a.md:1: the link gone.md leads to no file'],
  ['[a](b.md#wet-bulb)', 'docs/a.md:1: the link b.md#wet-bulb leads to no heading'],
  ['[a](#nowhere)', 'docs/a.md:1: the link #nowhere leads to no heading'],
  ['[a](../../x.md)', 'docs/a.md:1: the link ../../x.md leads out of the repository'],
  ['[a][r]\n\n[r]: gone.md', 'docs/a.md:3: the link gone.md leads to no file'],
  ['<img src="gone.png">', 'docs/a.md:1: the link gone.png leads to no file'],
])('%s is refused', (text, fault) => {
  expect(faultsOf(text)).toEqual([fault])
})

test('each package has a row that says what it is for, and each row a package', () => {
  const page = readPage('| package | for |\n|---|---|\n| yaml, ajv | reads |\n| gone | was |')
  expect(dependencyFaults({ page, packages: ['yaml', 'ajv', 'new'] })).toEqual([
    'docs/decisions/0002-dependencies.md: new has no row',
    'docs/decisions/0002-dependencies.md: gone is no dependency',
  ])
})
