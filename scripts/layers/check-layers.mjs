// The layer checker: holds the sources of src/ against the table of rooms. Reads no file itself.

import { builtinModules } from 'node:module'
import { posix } from 'node:path'
import { tokenize } from '../lex.mjs'
import { corePackages, networkRooms, rooms } from '../rooms.mjs'
import { cyclesIn } from './cycles.mjs'
import { importsOf } from './imports.mjs'
import { impurities, moduleContainers, moduleVariables, networkUse } from './impure.mjs'

/** @typedef {import('./imports.mjs').Import} Import */
/** @typedef {{ path: string, line: number, problem: string }} Fault */
/**
 * @typedef {object} Tree
 * @property {ReadonlyMap<string, string>} files text of each source file by its path, `src/units/index.ts`
 * @property {readonly string[]} packages names of the packages that the program depends on
 */
/**
 * @typedef {object} Source
 * @property {string} path
 * @property {import('../rooms.mjs').Room} room
 * @property {boolean} isTest
 * @property {Import[]} imports
 * @property {import('../lex.mjs').Token[]} tokens without comments
 * @property {import('../lex.mjs').Token[]} comments
 */

const BUILTINS = new Set(builtinModules)
const byName = new Map(rooms.map((room) => [room.name, room]))

/**
 * @param {Tree} tree
 * @returns {Fault[]} every breach, in the order of paths and lines
 */
export function checkLayers(tree) {
  /** @type {Fault[]} */
  const faults = []
  /** @type {Source[]} */
  const sources = []
  for (const [path, text] of [...tree.files].sort(([a], [b]) => (a < b ? -1 : 1))) {
    const room = roomOf(path)
    if (room === undefined) {
      faults.push({ path, line: 1, problem: 'this folder is no room of scripts/rooms.mjs' })
      continue
    }
    sources.push(read({ path, text, room }))
  }
  faults.push(...sources.flatMap((source) => importFaults(source, tree)))
  faults.push(...sources.flatMap((source) => (source.isTest ? [] : bodyFaults(source))))
  faults.push(...cycleFaults(sources, tree))
  return faults.sort((a, b) => (a.path === b.path ? a.line - b.line : a.path < b.path ? -1 : 1))
}

/**
 * @param {string} path
 * @returns {import('../rooms.mjs').Room | undefined}
 */
function roomOf(path) {
  const [, first, second] = path.split('/')
  return byName.get(first === 'core' ? `core/${second}` : (first ?? ''))
}

/**
 * @param {{ path: string, text: string, room: import('../rooms.mjs').Room }} file
 * @returns {Source}
 */
function read({ path, text, room }) {
  const all = tokenize(text)
  const tokens = all.filter((token) => token.kind !== 'comment')
  const comments = all.filter((token) => token.kind === 'comment')
  return { path, room, isTest: isTestPath(path), imports: importsOf(tokens), tokens, comments }
}

/** @param {string} path */
function isTestPath(path) {
  return /\.test\.tsx?$/.test(path)
}

/**
 * @param {Source} source
 * @returns {boolean}
 */
function isCore(source) {
  return source.room.name.startsWith('core/')
}

/**
 * @param {Source} source
 * @param {Tree} tree
 * @returns {Fault[]}
 */
function importFaults(source, tree) {
  return source.imports.flatMap((found) => {
    const problem = importProblem(source, found, tree)
    return problem === undefined ? [] : [{ path: source.path, line: found.line, problem }]
  })
}

/**
 * @param {Source} source
 * @param {Import} found
 * @param {Tree} tree
 * @returns {string | undefined}
 */
function importProblem(source, found, tree) {
  const { from } = found
  if (from === undefined) {
    return isCore(source) && !source.isTest ? 'core imports nothing that is named at run time' : undefined
  }
  if (from.startsWith('#')) return doorProblem(source, found, from.slice(1))
  if (from.startsWith('.')) return relativeProblem(source, from, tree)
  if (from.startsWith('/') || /^[a-z]+:\/\//i.test(from))
    return `${from} is a place on one machine or on the network`
  return packageProblem(source, from, tree)
}

/**
 * @param {Source} source
 * @param {Import} found
 * @param {string} name
 */
function doorProblem({ room, isTest }, found, name) {
  if (!byName.has(name)) {
    const inside = rooms.find((other) => name.startsWith(`${other.name}/`))
    return inside
      ? `#${name} reaches past the door of ${inside.name}`
      : `#${name} is no room of scripts/rooms.mjs`
  }
  if (isTest || room.values.includes(name)) return undefined
  if (room.name === name) return `#${name} is this room’s own door: import the file itself`
  if (!room.types.includes(name)) return `${room.name} may not import ${name}`
  return found.typesOnly ? undefined : `${room.name} may import only types of ${name}: write \`import type\``
}

/**
 * @param {Source} source
 * @param {string} from
 * @param {Tree} tree
 */
function relativeProblem({ path, room, isTest }, from, tree) {
  const target = posix.join(posix.dirname(path), from)
  if (isTest && target.startsWith('test/')) return undefined
  if (!target.startsWith(`src/${room.name}/`))
    return `${from} leaves the room: other rooms are imported by their door`
  if (!isTest && isTestPath(target)) return `${from} is a test`
  if (/\.tsx?$/.test(target) && !tree.files.has(target)) return `${from} does not exist`
  if (room.name === 'web' && target.endsWith('.css')) return undefined
  return /\.(tsx?|json)$/.test(target) ? undefined : `${from} lacks its extension`
}

/**
 * @param {Source} source
 * @param {string} from
 * @param {Tree} tree
 */
function packageProblem(source, from, tree) {
  if (source.isTest) return undefined
  if (from.startsWith('node:') || BUILTINS.has(from)) {
    return isCore(source) ? `${from} is a module of Node, which core does without` : undefined
  }
  const name = from
    .split('/')
    .slice(0, from.startsWith('@') ? 2 : 1)
    .join('/')
  if (isCore(source) && !Object.hasOwn(corePackages, name)) {
    return `${name} is not among the packages of core in scripts/rooms.mjs`
  }
  return tree.packages.includes(name) ? undefined : `${name} is not among the dependencies of package.json`
}

/**
 * @param {Source} source
 * @returns {Fault[]}
 */
function bodyFaults(source) {
  const slips = moduleVariables(source.tokens)
  if (!networkRooms.includes(source.room.name)) slips.push(...networkUse(source.tokens))
  if (isCore(source)) {
    const known = new Set(slips.map((slip) => slip.line))
    slips.push(...impurities(source.tokens).filter((slip) => !known.has(slip.line)))
    slips.push(...moduleContainers(source.tokens), ...references(source))
  }
  return slips.map((slip) => ({ path: source.path, ...slip }))
}

/**
 * A triple-slash line would bring types of Node or the browser into core past its tsconfig.
 *
 * @param {Source} source
 */
function references({ comments }) {
  return comments
    .filter((comment) => /^\/\/\/\s*<reference/.test(comment.text))
    .map(({ line }) => ({ line, problem: 'a reference line brings types into core past its tsconfig' }))
}

/**
 * @param {readonly Source[]} sources
 * @param {Tree} tree
 * @returns {Fault[]}
 */
function cycleFaults(sources, tree) {
  const graph = new Map(
    sources.map(({ path, imports }) => [path, imports.flatMap(({ from }) => targetOf(path, from, tree))]),
  )
  return cyclesIn(graph).map((cycle) => {
    const [first = ''] = cycle
    return { path: first, line: 1, problem: `import cycle: ${[...cycle, first].join(' -> ')}` }
  })
}

/**
 * @param {string} path
 * @param {string | undefined} from
 * @param {Tree} tree
 * @returns {string[]} the file of src/ that is imported, none when it is a package
 */
function targetOf(path, from, tree) {
  if (from === undefined) return []
  const target = from.startsWith('#')
    ? `src/${from.slice(1)}/index.ts`
    : from.startsWith('.')
      ? posix.join(posix.dirname(path), from)
      : ''
  return tree.files.has(target) ? [target] : []
}
