// Every function that a room gives out by its door says in a doc comment what it does.

import { posix } from 'node:path'
import { tokenize } from '../lex.mjs'

/** @typedef {import('../lex.mjs').Token} Token */
/** @typedef {{ path: string, name: string }} Given */

/**
 * @param {ReadonlyMap<string, string>} files text of each source by its path
 * @returns {string[]}
 */
export function docCommentFaults(files) {
  return [...files.keys()]
    .filter((path) => /^src\/(core\/)?[^/]+\/index\.ts$/.test(path))
    .sort()
    .flatMap((path) => givenBy(files, path))
    .flatMap((given) => functionFault(files, given))
}

/**
 * @param {ReadonlyMap<string, string>} files
 * @param {string} path
 * @returns {Given[]} every value that a file exports, with the file that declares it
 */
function givenBy(files, path) {
  const tokens = tokenize(files.get(path) ?? '').filter((token) => token.kind !== 'comment')
  return tokens.flatMap((token, i) => {
    if (token.text !== 'export' || token.depth !== 0) return []
    const next = tokens[i + 1]
    if (next?.text === '{') return listed(files, { path, tokens, open: i + 1 })
    if (next?.text === '*') return everything(files, { path, tokens, star: i + 1 })
    const name = tokens
      .slice(i + 1, i + 5)
      .find((word) => !['async', 'function', 'const', '*'].includes(word.text))
    return ['function', 'async', 'const'].includes(next?.text ?? '') && name
      ? [{ path, name: name.text }]
      : []
  })
}

/**
 * `export { a, type B, c as d } from './c.ts'`
 *
 * @param {ReadonlyMap<string, string>} files
 * @param {{ path: string, tokens: readonly Token[], open: number }} at
 * @returns {Given[]}
 */
function listed(files, { path, tokens, open }) {
  const close = tokens.findIndex((token, k) => k > open && token.text === '}')
  const entries = tokens
    .slice(open + 1, close)
    .map((token) => token.text)
    .join(' ')
    .split(',')
    .map((entry) => entry.trim().split(' '))
    .filter(([first]) => first !== '' && first !== 'type')
  const source = tokens[close + 1]?.text === 'from' ? tokens[close + 2]?.value : undefined
  const from = source?.startsWith('.') ? posix.join(posix.dirname(path), source) : path
  if (source !== undefined && !source.startsWith('.')) return []
  return entries.flatMap(([name = '']) => origin(files, { path: from, name }))
}

/**
 * `export * from './c.ts'`
 *
 * @param {ReadonlyMap<string, string>} files
 * @param {{ path: string, tokens: readonly Token[], star: number }} at
 * @returns {Given[]}
 */
function everything(files, { path, tokens, star }) {
  const source = tokens[star + 1]?.text === 'from' ? tokens[star + 2]?.value : tokens[star + 4]?.value
  return source?.startsWith('.') ? givenBy(files, posix.join(posix.dirname(path), source)) : []
}

/**
 * Follows a name through files that only pass it on.
 *
 * @param {ReadonlyMap<string, string>} files
 * @param {Given} given
 * @returns {Given[]}
 */
function origin(files, given) {
  if (declarationOf(files.get(given.path) ?? '', given.name)) return [given]
  return givenBy(files, given.path).filter((other) => other.name === given.name && other.path !== given.path)
}

/**
 * @param {ReadonlyMap<string, string>} files
 * @param {Given} given
 * @returns {string[]}
 */
function functionFault(files, { path, name }) {
  const declared = declarationOf(files.get(path) ?? '', name)
  if (!declared?.isFunction || declared.documented) return []
  return [`${path}:${declared.line}: ${name} is given out by its room and has no doc comment`]
}

/**
 * @param {string} text
 * @param {string} name
 * @returns {{ line: number, isFunction: boolean, documented: boolean } | undefined}
 */
function declarationOf(text, name) {
  const tokens = tokenize(text)
  const at = tokens.findIndex(
    (token, k) =>
      token.text === name &&
      token.depth === 0 &&
      ['function', 'const', '*'].includes(tokens[k - 1]?.text ?? ''),
  )
  const line = tokens[at]?.line
  if (line === undefined) return undefined
  let start = at - 1
  while (['export', 'async', 'function', '*'].includes(tokens[start - 1]?.text ?? '')) start -= 1
  const documented = tokens[start - 1]?.text.startsWith('/**') ?? false
  const isFunction = tokens[at - 1]?.text !== 'const' || holdsFunction(tokens, at)
  return { line, isFunction, documented }
}

/**
 * Whether a constant holds an arrow function or a function.
 *
 * @param {readonly Token[]} tokens
 * @param {number} at
 */
function holdsFunction(tokens, at) {
  const equals = tokens.findIndex((token, k) => k > at && token.depth === 0 && token.text === '=')
  const first = tokens[equals + 1]
  const second = tokens[equals + 2]
  if (equals === -1 || first === undefined) return false
  if (['async', 'function', '<'].includes(first.text) || second?.text === '=>') return true
  if (first.text !== '(') return false
  const close = tokens.findIndex(
    (token, k) => k > equals + 1 && token.text === ')' && token.depth === first.depth,
  )
  return ['=>', ':'].includes(tokens[close + 1]?.text ?? '')
}
