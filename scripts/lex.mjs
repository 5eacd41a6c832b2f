// Splits TypeScript source into tokens: enough to read import lines and names without being fooled by comments,
// strings, templates and regular expressions. It knows no grammar.

/**
 * @typedef {'word' | 'string' | 'template' | 'number' | 'regex' | 'mark' | 'comment'} TokenKind
 *
 * @typedef {object} Token
 * @property {TokenKind} kind
 * @property {string} text as written, with its quotes
 * @property {string} value the part between the quotes of a string or of a piece of a template; empty for the rest
 * @property {number} line from 1
 * @property {number} depth how many brackets of any kind are open around it
 * @property {boolean} first whether it is the first on its line
 */

const SPACE = /[\s\uFEFF]+/y
const COMMENT = /\/\/[^\n]*|\/\*[\s\S]*?(?:\*\/|$)|^#![^\n]*/y
const WORD = /#?[\p{ID_Start}$_][\p{ID_Continue}$\u200c\u200d]*/uy
const NUMBER = /\.?\d(?:[eE][+-]|[\w.])*/y
const STRING = /'((?:[^'\\\n]|\\[\s\S])*)'|"((?:[^"\\\n]|\\[\s\S])*)"/y
const REGEX = /\/(?:[^/\\\n[]|\\.|\[(?:[^\]\\\n]|\\.)*\])+\/[a-z]*/y
const TEMPLATE = /(?:[^`\\$]|\\[\s\S]|\$(?!\{))*/y
const MARK = /\?\.(?!\d)|=>|\.\.\.|[=!]==?|[<>*&|?]{1,3}=|[+\-*/%^]=|&&|\|\||\?\?|\+\+|--|\*\*|[\s\S]/y
const OPERATOR_WORDS = new Set(
  'return typeof case in of delete void throw new instanceof do else await yield extends'.split(' '),
)

/**
 * @param {string} text
 * @returns {Token[]}
 */
export function tokenize(text) {
  /** @type {Token[]} */
  const tokens = []
  /** Depths at which a `}` ends the substitution of a template instead of a block. */
  /** @type {number[]} */
  const templates = []
  let at = 0
  let line = 1
  let depth = 0
  let lastLine = 0

  /** @param {RegExp} pattern */
  function match(pattern) {
    pattern.lastIndex = at
    return pattern.exec(text)
  }

  /**
   * @param {TokenKind} kind
   * @param {string} whole
   * @param {string} [value]
   */
  function push(kind, whole, value = '') {
    tokens.push({ kind, text: whole, value, line, depth, first: line !== lastLine })
    advance(whole)
    if (kind !== 'comment') lastLine = line
  }

  /** @param {string} whole */
  function advance(whole) {
    at += whole.length
    for (const char of whole) if (char === '\n') line += 1
  }

  /** Reads on from just inside a template to its end or its next substitution. */
  function template() {
    const chunk = match(TEMPLATE)?.[0] ?? ''
    push('template', chunk, chunk)
    if (text.startsWith('${', at)) {
      advance('${')
      templates.push(depth)
      depth += 1
    } else {
      advance(text.slice(at, at + 1))
    }
  }

  /** @param {string} mark */
  function punctuation(mark) {
    if (mark === '}' && templates.at(-1) === depth - 1) {
      templates.pop()
      depth -= 1
      advance(mark)
      template()
      return
    }
    if (mark === ')' || mark === ']' || mark === '}') depth = Math.max(0, depth - 1)
    push('mark', mark)
    if (mark === '(' || mark === '[' || mark === '{') depth += 1
  }

  while (at < text.length) {
    const space = match(SPACE)
    if (space) {
      advance(space[0])
      continue
    }
    const comment = match(COMMENT)
    if (comment) push('comment', comment[0])
    else if (text[at] === '`') {
      advance('`')
      template()
    } else {
      const [kind, found] = oneOf(match, regexMayStand(tokens))
      const whole = found[0]
      if (kind === 'mark') punctuation(whole)
      else push(kind, whole, found[1] ?? found[2] ?? '')
    }
  }
  return tokens
}

/**
 * @param {(pattern: RegExp) => RegExpExecArray | null} match
 * @param {boolean} regex
 * @returns {[TokenKind, RegExpExecArray]}
 */
function oneOf(match, regex) {
  /** @type {[TokenKind, RegExp][]} */
  const kinds = [
    ['word', WORD],
    ['number', NUMBER],
    ['string', STRING],
    ['regex', REGEX],
  ]
  for (const [kind, pattern] of kinds) {
    const found = kind === 'regex' && !regex ? null : match(pattern)
    if (found) return [kind, found]
  }
  return ['mark', /** @type {RegExpExecArray} */ (match(MARK))]
}

/**
 * Whether a slash after these tokens begins a regular expression rather than a division.
 *
 * @param {Token[]} tokens
 */
function regexMayStand(tokens) {
  const last = tokens.findLast((token) => token.kind !== 'comment')
  if (last === undefined) return true
  if (last.kind === 'word') return OPERATOR_WORDS.has(last.text)
  return last.kind === 'mark' && ![')', ']', '}'].includes(last.text)
}
