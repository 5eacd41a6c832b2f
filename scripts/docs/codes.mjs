// Every code of a note or an error has a sentence in src/words/.

import { tokenize } from '../lex.mjs'

/** @typedef {import('../lex.mjs').Token} Token */

const CODE = /^[a-z]+(\.[a-zA-Z]+)+$/

/**
 * @param {ReadonlyMap<string, string>} files text of each source by its path
 * @returns {string[]}
 */
export function codeFaults(files) {
  const told = new Set([...files].filter(([path]) => isWords(path)).flatMap(([, text]) => stringsOf(text)))
  return [...codesUsed(files)]
    .filter(([code]) => !told.has(code))
    .map(([code, place]) => `${place}: the code ${code} has no sentence in src/words/`)
}

/**
 * @param {ReadonlyMap<string, string>} files
 * @returns {Map<string, string>} where each code is first written
 */
export function codesUsed(files) {
  /** @type {Map<string, string>} */
  const codes = new Map()
  for (const [path, text] of [...files].sort(([a], [b]) => (a < b ? -1 : 1))) {
    if (isWords(path) || /\.test\.tsx?$/.test(path)) continue
    const room = path.split('/').at(path.startsWith('src/core/') ? 2 : 1) ?? ''
    for (const { code, line } of codesIn(text, room)) if (!codes.has(code)) codes.set(code, `${path}:${line}`)
  }
  return codes
}

/** @param {string} path */
function isWords(path) {
  return path.startsWith('src/words/') && !/\.test\.tsx?$/.test(path)
}

/** @param {string} text */
function stringsOf(text) {
  return tokenize(text).flatMap((token) =>
    token.kind === 'string' || token.kind === 'template' ? [token.value] : [],
  )
}

/**
 * A string is a code when it is given as `code:`, is the first argument of an error, or begins with the room's name.
 *
 * @param {string} text
 * @param {string} room
 * @returns {{ code: string, line: number }[]}
 */
function codesIn(text, room) {
  const tokens = tokenize(text).filter((token) => token.kind !== 'comment')
  return tokens.flatMap((token, i) => {
    if (token.kind !== 'string' || !CODE.test(token.value)) return []
    const isCode = token.value.startsWith(`${room}.`) || isErrorArgument(tokens, i) || isCodeValue(tokens, i)
    return isCode ? [{ code: token.value, line: token.line }] : []
  })
}

/**
 * @param {readonly Token[]} tokens
 * @param {number} i
 */
function isErrorArgument(tokens, i) {
  return (
    tokens[i - 1]?.text === '(' && tokens[i - 3]?.text === 'new' && /Error$/.test(tokens[i - 2]?.text ?? '')
  )
}

/**
 * Whether the string stands after `code:`, in a choice of several too: `code: wet ? 'a.b' : 'a.c'`.
 *
 * @param {readonly Token[]} tokens
 * @param {number} i
 */
function isCodeValue(tokens, i) {
  const depth = tokens[i]?.depth
  for (let k = i - 1; k >= 0; k -= 1) {
    const token = tokens[k]
    if (token === undefined || token.depth < (depth ?? 0)) return false
    if (token.depth > (depth ?? 0)) continue
    if (token.text === 'code' && tokens[k + 1]?.text === ':') return true
    if ([',', ';', '{', '('].includes(token.text)) return false
  }
  return false
}
