// What reads the world or keeps state between calls, and so may not stand in core/.

import { isMember } from './imports.mjs'

/** @typedef {import('../lex.mjs').Token} Token */
/** @typedef {{ line: number, problem: string }} Slip */

const GLOBALS = new Set([
  'Intl',
  'globalThis',
  'process',
  'console',
  'performance',
  'crypto',
  'fetch',
  'setTimeout',
  'setInterval',
  'setImmediate',
  'queueMicrotask',
  'Function',
  'eval',
])

const LOCALE_MEMBERS = new Set([
  'localeCompare',
  'toLocaleString',
  'toLocaleDateString',
  'toLocaleTimeString',
  'toLocaleUpperCase',
  'toLocaleLowerCase',
])

/** Members of a Date that read the clock zone of the machine. */
const ZONE_MEMBERS = new Set(
  'FullYear Month Date Day Hours Minutes Seconds Milliseconds'
    .split(' ')
    .flatMap((part) => [`get${part}`, `set${part}`])
    .concat('getTimezoneOffset', 'toDateString', 'toTimeString'),
)

const NETWORK = new Set(['fetch', 'XMLHttpRequest', 'WebSocket', 'EventSource'])

const CONTAINERS = new Set(['Map', 'Set', 'WeakMap', 'WeakSet', 'Array'])

/**
 * @param {readonly Token[]} tokens of a file of core/, without comments
 * @returns {Slip[]}
 */
export function impurities(tokens) {
  return tokens.flatMap((token, i) => {
    const problem = token.kind === 'word' ? impurityAt(tokens, i) : bracketed(tokens, i)
    return problem === undefined ? [] : [{ line: token.line, problem }]
  })
}

/**
 * @param {readonly Token[]} tokens of a file outside the rooms that may reach the network
 * @returns {Slip[]}
 */
export function networkUse(tokens) {
  return tokens.flatMap((token, i) =>
    token.kind === 'word' &&
    NETWORK.has(token.text) &&
    isFree(tokens, i) &&
    tokens[i - 1]?.text !== 'function'
      ? [
          {
            line: token.line,
            problem: `${token.text} reaches the network, which only feeds, server and web do`,
          },
        ]
      : [],
  )
}

/**
 * Variables of a module that change: two calls would no longer be independent of each other.
 *
 * @param {readonly Token[]} tokens
 * @returns {Slip[]}
 */
export function moduleVariables(tokens) {
  return tokens.flatMap((token, i) => {
    const next = tokens[i + 1]
    const declares =
      token.kind === 'word' &&
      (token.text === 'let' || token.text === 'var') &&
      token.depth === 0 &&
      !isMember(tokens, i) &&
      (next?.kind === 'word' || next?.text === '{' || next?.text === '[')
    return declares ? [{ line: token.line, problem: `top-level ${token.text} is mutable module state` }] : []
  })
}

/**
 * Top-level containers that can be filled later; `ReadonlyMap`, `readonly X[]` or `as const` says that they are not.
 *
 * @param {readonly Token[]} tokens
 * @returns {Slip[]}
 */
export function moduleContainers(tokens) {
  return tokens.flatMap((token, i) => {
    if (token.kind !== 'word' || token.text !== 'const' || token.depth !== 0) return []
    const name = tokens[i + 1]
    const equals = tokens.findIndex((other, k) => k > i && other.depth === 0 && other.text === '=')
    if (name?.kind !== 'word' || equals === -1) return []
    const annotation = tokens.slice(i + 2, equals)
    if (annotation.some((part) => /^readonly/i.test(part.text))) return []
    return opensContainer(tokens, equals + 1)
      ? [
          {
            line: token.line,
            problem: `top-level ${name.text} is a container that could be filled: type it as readonly`,
          },
        ]
      : []
  })
}

/**
 * @param {readonly Token[]} tokens
 * @param {number} k
 */
function opensContainer(tokens, k) {
  const [a, b] = tokens.slice(k, k + 2)
  if (a?.text === 'new') return b !== undefined && CONTAINERS.has(b.text)
  return (a?.text === '[' && b?.text === ']') || (a?.text === '{' && b?.text === '}')
}

/**
 * @param {readonly Token[]} tokens
 * @param {number} i
 * @returns {string | undefined}
 */
function impurityAt(tokens, i) {
  const word = tokens[i]?.text ?? ''
  const next = tokens[i + 1]
  if (isMember(tokens, i)) return memberProblem(word, tokens[i - 2]?.text)
  if (!isFree(tokens, i)) return undefined
  if (GLOBALS.has(word)) return `${word} is impure`
  if (word === 'import' && next?.text === '.') return 'import.meta is impure'
  if (word === 'Math' && isTaken(tokens, i)) return 'Math taken apart hides Math.random'
  if (word === 'Date') return dateProblem(tokens, i)
  return undefined
}

/**
 * @param {string} member
 * @param {string | undefined} owner
 */
function memberProblem(member, owner) {
  if (owner === 'Math' && member === 'random') return 'Math.random is impure: pass a seed'
  if (owner === 'Date' && member === 'now') return 'Date.now reads the clock: take `now` as an argument'
  if (owner === 'Temporal' && member === 'Now')
    return 'Temporal.Now reads the clock: take `now` as an argument'
  if (LOCALE_MEMBERS.has(member)) return `${member} depends on the locale of the machine`
  if (ZONE_MEMBERS.has(member)) return `${member} depends on the time zone of the machine`
  return undefined
}

/**
 * A member written as `x['random']`.
 *
 * @param {readonly Token[]} tokens
 * @param {number} i
 */
function bracketed(tokens, i) {
  const quoted = tokens[i]?.kind === 'string' && tokens[i - 1]?.text === '[' && tokens[i + 1]?.text === ']'
  return quoted ? memberProblem(tokens[i]?.value ?? '', tokens[i - 2]?.text) : undefined
}

/**
 * @param {readonly Token[]} tokens
 * @param {number} i
 */
function dateProblem(tokens, i) {
  const next = tokens[i + 1]?.text
  const constructs = tokens[i - 1]?.text === 'new'
  if (constructs && next === '(' && tokens[i + 2]?.text !== ')') return undefined
  if (constructs) return 'new Date without an argument reads the clock: take `now` as an argument'
  if (next === '(') return 'Date() reads the clock: take `now` as an argument'
  if (isTaken(tokens, i)) return 'Date under another name hides Date.now'
  return undefined
}

/**
 * Whether the word is given away whole, as in `const { now } = Date`; a type alias is not.
 *
 * @param {readonly Token[]} tokens
 * @param {number} i
 */
function isTaken(tokens, i) {
  if (tokens[i - 1]?.text !== '=' || tokens[i - 3]?.text === 'type') return false
  const next = tokens[i + 1]?.text
  const quoted = next === '[' && tokens[i + 2]?.kind === 'string'
  return next !== '.' && next !== '?.' && !quoted
}

/**
 * Whether the word names a variable: not a member, and not the key of an object or type.
 *
 * @param {readonly Token[]} tokens
 * @param {number} i
 */
function isFree(tokens, i) {
  if (isMember(tokens, i)) return false
  const before = tokens[i - 1]?.text
  const next = tokens[i + 1]?.text
  const optional = next === '?' && tokens[i + 2]?.text === ':'
  if (next !== ':' && !optional) return true
  return !(['{', ',', ';', 'readonly'].includes(before ?? '{') || tokens[i]?.first === true)
}
