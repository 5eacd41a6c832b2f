// Every import of a source file, with its line, whether only types are taken, and how it is written.

/**
 * @typedef {object} Import
 * @property {string | undefined} from what is imported; undefined when it is worked out at run time
 * @property {boolean} typesOnly
 * @property {number} line
 */

/** @typedef {import('../lex.mjs').Token} Token */

/**
 * @param {readonly Token[]} tokens of a file, without comments
 * @returns {Import[]}
 */
export function importsOf(tokens) {
  return tokens.flatMap((token, i) => {
    if (token.kind !== 'word' || isMember(tokens, i)) return []
    if (token.text === 'import') return importAt(tokens, i)
    if (token.text === 'export') return exportAt(tokens, i)
    if (token.text === 'require' && tokens[i + 1]?.text === '(') return [called(tokens, i)]
    return []
  })
}

/**
 * @param {readonly Token[]} tokens
 * @param {number} i
 * @returns {boolean} whether the word is the name of a property: `a.import`, `{ import: 1 }`
 */
export function isMember(tokens, i) {
  const before = tokens[i - 1]
  return before?.text === '.' || before?.text === '?.'
}

/**
 * @param {readonly Token[]} tokens
 * @param {number} i
 * @returns {Import[]}
 */
function importAt(tokens, i) {
  const next = tokens[i + 1]
  if (next === undefined || next.text === '.' || next.text === ':') return []
  if (next.text === '(') return [called(tokens, i)]
  if (next.kind === 'string') return [{ from: next.value, typesOnly: false, line: next.line }]
  return fromClause(tokens, i)
}

/**
 * @param {readonly Token[]} tokens
 * @param {number} i
 * @returns {Import[]}
 */
function exportAt(tokens, i) {
  const start = tokens[i + 1]?.text === 'type' ? i + 2 : i + 1
  const opens = tokens[start]
  if (opens?.text !== '{' && opens?.text !== '*') return []
  return fromClause(tokens, i)
}

/**
 * @param {readonly Token[]} tokens
 * @param {number} i
 * @returns {Import}
 */
function called(tokens, i) {
  const argument = tokens[i + 2]
  const plain = argument?.kind === 'string' || (argument?.kind === 'template' && tokens[i + 3]?.text === ')')
  return { from: plain ? argument.value : undefined, typesOnly: false, line: tokens[i]?.line ?? 0 }
}

/**
 * Reads the names of one import or export line up to `from '...'`; none when the line has no such end.
 *
 * @param {readonly Token[]} tokens
 * @param {number} i
 * @returns {Import[]}
 */
function fromClause(tokens, i) {
  const typed = tokens[i + 1]?.text === 'type' && tokens[i + 2]?.text !== 'from'
  for (let k = i + 1; k < tokens.length; k += 1) {
    const token = tokens[k]
    const source = tokens[k + 1]
    if (token?.kind === 'word' && token.text === 'from' && source?.kind === 'string') {
      return [{ from: source.value, typesOnly: typed, line: source.line }]
    }
    const inList =
      token?.kind === 'word' || token?.kind === 'string' || ['{', '}', ',', '*'].includes(token?.text ?? '')
    if (!inList || (token?.text === '}' && source?.text !== 'from')) return []
  }
  return []
}
