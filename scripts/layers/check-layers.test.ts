import { expect, test } from 'vitest'
import { ROOT } from '../ready/main.mjs'
import { rooms } from '../rooms.mjs'
import { checkLayers } from './check-layers.mjs'
import { cyclesIn } from './cycles.mjs'
import { readTree } from './read-tree.mjs'

/** Doors of the rooms that fixtures import from, so that only the file under test can be at fault. */
const doors = {
  'src/units/index.ts': 'export const mm = 0.001',
  'src/job/index.ts': 'export type Job = { readonly name: string }',
  'src/core/note/index.ts': 'export type Note = { readonly code: string }',
  'src/core/cure/index.ts': 'export const pot = 1',
  'src/core/climate/index.ts': 'export type Hour = { readonly airC: number }',
}

function problems(files: Record<string, string>, packages = ['suncalc', 'yaml', 'commander']) {
  const all = new Map(Object.entries({ ...doors, ...files }))
  return checkLayers({ files: all, packages }).map(({ path, line, problem }) => `${path}:${line}: ${problem}`)
}

const inCore = (text: string) => problems({ 'src/core/coating/film.ts': text })
const coreFault = (problem: string, line = 1) => [`src/core/coating/film.ts:${line}: ${problem}`]

test('a tree that keeps to the table passes', () => {
  expect(
    problems({
      'src/core/coating/film.ts': [
        "import { pot } from '#core/cure'",
        "import type { Note } from '#core/note'",
        "import { getPosition } from 'suncalc'",
        "import { wet } from './wet.ts'",
        '// Date.now() and Math.random() in a comment are no fault, nor is process in a string:',
        "const words = ['process', `Intl`]",
        'const LIMITS: ReadonlyMap<string, number> = new Map([])',
        'const NONE: readonly string[] = []',
        'type Step = { readonly process: string; fetch?: boolean }',
        'export function film(at: Date): number {',
        '  let sum = 0',
        '  const day = new Date(Date.UTC(2027, 3, 10))',
        '  const step = { process: 1 }',
        '  return step.process + sum + day.getTime()',
        '}',
      ].join('\n'),
      'src/core/coating/wet.ts': 'export const wet = 1',
      'src/core/coating/film.test.ts': [
        "import { test } from 'vitest'",
        "import { mm } from '#units'",
        "import rows from '../../../test/published/film.json' with { type: 'json' }",
        'let clock = Date.now() + Math.random()',
      ].join('\n'),
      'src/cli/main.ts':
        "import { readFileSync } from 'node:fs'\nimport { Command } from 'commander'\nimport { mm } from '#units'",
      'src/intake/read.ts': "import type { Hour } from '#core/climate'",
    }),
  ).toEqual([])
})

test('the sources of this checkout are read: its first room is among them', () => {
  expect([...readTree(ROOT).files.keys()]).toContain('src/core/note/index.ts')
})

test('a folder that is no room is refused', () => {
  expect(problems({ 'src/helpers/a.ts': '', 'src/core/a.ts': '' })).toEqual([
    'src/core/a.ts:1: this folder is no room of scripts/rooms.mjs',
    'src/helpers/a.ts:1: this folder is no room of scripts/rooms.mjs',
  ])
})

test('a room that the table does not allow is refused, however it is imported', () => {
  const fault = 'core/coating may not import units'
  expect(inCore("import { mm } from '#units'")).toEqual(coreFault(fault))
  expect(inCore("import {\n  mm,\n  type Foot\n} from '#units'")).toEqual(coreFault(fault, 4))
  expect(inCore("import * as units from '#units'")).toEqual(coreFault(fault))
  expect(inCore("import type { Mm } from '#units'")).toEqual(coreFault(fault))
  expect(inCore("import '#units'")).toEqual(coreFault(fault))
  expect(inCore("export { mm } from '#units'")).toEqual(coreFault(fault))
  expect(inCore("export * from '#units'")).toEqual(coreFault(fault))
  expect(inCore("export const load = () => import('#units')")).toEqual(coreFault(fault))
  expect(inCore("const a = 1\nexport { a }\nimport { mm } from '#units'")).toEqual(coreFault(fault, 3))
})

test('a room of which only types may be imported gives no values', () => {
  const fault = 'src/intake/read.ts:1: intake may import only types of core/geometry: write `import type`'
  expect(problems({ 'src/intake/read.ts': "import { dew } from '#core/geometry'" })).toEqual([fault])
  expect(problems({ 'src/intake/read.ts': "import { type Hour } from '#core/geometry'" })).toEqual([fault])
  expect(problems({ 'src/intake/read.ts': "export { dew } from '#core/geometry'" })).toEqual([fault])
  expect(problems({ 'src/intake/read.ts': "export type { Hour } from '#core/geometry'" })).toEqual([])
})

test('nobody reaches past a door', () => {
  expect(inCore("import { a } from '#core/cure/arrhenius'")).toEqual(
    coreFault('#core/cure/arrhenius reaches past the door of core/cure'),
  )
  expect(inCore("import { a } from '../cure/arrhenius.ts'")).toEqual(
    coreFault('../cure/arrhenius.ts leaves the room: other rooms are imported by their door'),
  )
  expect(inCore("import { a } from '#elsewhere'")).toEqual(
    coreFault('#elsewhere is no room of scripts/rooms.mjs'),
  )
  expect(problems({ 'src/core/coating/film.test.ts': "import { a } from '../cure/arrhenius.ts'" })).toEqual([
    'src/core/coating/film.test.ts:1: ../cure/arrhenius.ts leaves the room: other rooms are imported by their door',
  ])
})

test('a room does not go out by its own door to come in again', () => {
  expect(inCore("import { a } from '#core/coating'")).toEqual(
    coreFault('#core/coating is this room’s own door: import the file itself'),
  )
})

test('a relative import names a file that exists, with its extension, and no test', () => {
  expect(inCore("import { a } from './gone.ts'")).toEqual(coreFault('./gone.ts does not exist'))
  expect(inCore("import { a } from './wet'")).toEqual(coreFault('./wet lacks its extension'))
  expect(inCore("import { a } from './film.test.ts'")).toEqual(coreFault('./film.test.ts is a test'))
})

test('styles are imported by the web only', () => {
  expect(problems({ 'src/web/sheet.tsx': "import './sheet.css'" })).toEqual([])
  expect(inCore("import './film.css'")).toEqual(coreFault('./film.css lacks its extension'))
})

test('an import by a place on the machine or the network is refused', () => {
  expect(inCore("import a from 'https://example.org/a.js'")).toHaveLength(1)
  expect(inCore("import a from '/opt/a.js'")).toHaveLength(1)
})

test('a package is refused in core unless listed with a reason, elsewhere unless a dependency', () => {
  expect(inCore("import { parse } from 'yaml'")).toEqual(
    coreFault('yaml is not among the packages of core in scripts/rooms.mjs'),
  )
  expect(problems({ 'src/job/read.ts': "import fc from 'fast-check'" })).toEqual([
    'src/job/read.ts:1: fast-check is not among the dependencies of package.json',
  ])
  expect(problems({ 'src/job/read.ts': "import { a } from '@scope/name/part'" }, ['@scope/name'])).toEqual([])
})

test('a module of Node is refused in core', () => {
  expect(inCore("import { readFileSync } from 'node:fs'")).toEqual(
    coreFault('node:fs is a module of Node, which core does without'),
  )
  expect(inCore("import type { Stats } from 'fs'")).toEqual(
    coreFault('fs is a module of Node, which core does without'),
  )
})

test('an import that is named at run time is refused in core', () => {
  expect(inCore('const load = (name: string) => import(name)')).toEqual(
    coreFault('core imports nothing that is named at run time'),
  )
})

test('files that import each other are refused, types or not, through doors too', () => {
  expect(
    problems({
      'src/units/a.ts': "import { b } from './b.ts'",
      'src/units/b.ts': "import type { C } from './c.ts'",
      'src/units/c.ts': "export * from './a.ts'",
    }),
  ).toEqual([
    'src/units/a.ts:1: import cycle: src/units/a.ts -> src/units/b.ts -> src/units/c.ts -> src/units/a.ts',
  ])
})

test('the table of rooms itself has no cycle and names only rooms', () => {
  const graph = new Map(rooms.map((room) => [room.name, [...room.values, ...room.types]]))
  expect(cyclesIn(graph)).toEqual([])
  for (const name of [...graph.values()].flat()) expect(graph.has(name), name).toBe(true)
})

test.each([
  ['Date.now()', 'Date.now reads the clock: take `now` as an argument'],
  ["Date['now']()", 'Date.now reads the clock: take `now` as an argument'],
  ['new Date()', 'new Date without an argument reads the clock: take `now` as an argument'],
  ['new Date', 'new Date without an argument reads the clock: take `now` as an argument'],
  ['Date()', 'Date() reads the clock: take `now` as an argument'],
  ['Date', 'Date under another name hides Date.now'],
  ['at.getHours()', 'getHours depends on the time zone of the machine'],
  ['Temporal.Now.instant()', 'Temporal.Now reads the clock: take `now` as an argument'],
  ['Math.random()', 'Math.random is impure: pass a seed'],
  ['Math', 'Math taken apart hides Math.random'],
  ['Intl.NumberFormat()', 'Intl is impure'],
  ['n.toLocaleString()', 'toLocaleString depends on the locale of the machine'],
  ['d.toLocaleDateString()', 'toLocaleDateString depends on the locale of the machine'],
  ['d?.toLocaleTimeString()', 'toLocaleTimeString depends on the locale of the machine'],
  ['s.toLocaleUpperCase()', 'toLocaleUpperCase depends on the locale of the machine'],
  ['s.toLocaleLowerCase()', 'toLocaleLowerCase depends on the locale of the machine'],
  ['list.sort((a, b) => a.localeCompare(b))', 'localeCompare depends on the locale of the machine'],
  ['globalThis.x', 'globalThis is impure'],
  ['process.env.TZ', 'process is impure'],
  ['`${process.pid}`', 'process is impure'],
  ['ok ? process : none', 'process is impure'],
  ['setTimeout(work, 1)', 'setTimeout is impure'],
  ['setInterval(work, 1)', 'setInterval is impure'],
  ['setImmediate(work)', 'setImmediate is impure'],
  ['queueMicrotask(work)', 'queueMicrotask is impure'],
  ['performance.now()', 'performance is impure'],
  ['crypto.randomUUID()', 'crypto is impure'],
  ['console.log(1)', 'console is impure'],
  ["eval('1')", 'eval is impure'],
  ["new Function('return 1')", 'Function is impure'],
  ['import.meta.url', 'import.meta is impure'],
])('%s is refused in core', (expression, problem) => {
  expect(inCore(`export function f() {\n  const x = ${expression}\n}`)).toEqual(coreFault(problem, 2))
})

test('the network is refused outside the rooms that own it', () => {
  const fault = 'fetch reaches the network, which only feeds, server and web do'
  expect(inCore("export const f = () => fetch('x')")).toEqual(coreFault(fault))
  expect(problems({ 'src/job/a.ts': "export const f = () => fetch('x')" })).toEqual([
    `src/job/a.ts:1: ${fault}`,
  ])
  expect(problems({ 'src/feeds/a.ts': "export const f = () => fetch('x')" })).toEqual([])
})

test('a top-level variable that changes is refused in every room', () => {
  expect(problems({ 'src/cli/a.ts': 'export let count = 0' })).toEqual([
    'src/cli/a.ts:1: top-level let is mutable module state',
  ])
  expect(inCore('let [a, b] = [1, 2]')).toEqual(coreFault('top-level let is mutable module state'))
  expect(inCore('var count = 0')).toEqual(coreFault('top-level var is mutable module state'))
})

test('a top-level container that could be filled is refused in core', () => {
  const fault = 'top-level seen is a container that could be filled: type it as readonly'
  expect(inCore('const seen = new Map<string, number>()')).toEqual(coreFault(fault))
  expect(inCore('const seen: WeakMap<object, number> = new WeakMap()')).toEqual(coreFault(fault))
  expect(inCore('const seen: string[] = []')).toEqual(coreFault(fault))
  expect(inCore('const seen: Record<string, number> = {}')).toEqual(coreFault(fault))
  expect(inCore('const f = () => new Map()\nfunction g() {\n  const seen = new Map()\n}')).toEqual([])
})

test('a reference line that brings other types into core is refused', () => {
  expect(inCore('/// <reference types="node" />')).toEqual(
    coreFault('a reference line brings types into core past its tsconfig'),
  )
})
