// The examples of the docs: each `$ npx hardstand …` of a console fence is run and what it prints is compared.

import { isCrash } from './program.mjs'

/**
 * @typedef {object} Example
 * @property {string} command as written after the `$`
 * @property {readonly string[]} args words after the program's name
 * @property {string | undefined} stdin path that a `<` reads from
 * @property {readonly string[]} expected lines shown; a line of `...` stands for any number of lines
 * @property {number} line
 */

const PROMPT = /^\$ (npx hardstand\b.*)$/
const ANY = /^\s*(\.\.\.|…)\s*$/
/** Spaces that keep a figure and its unit together; in the docs a plain one is typed. */
const NARROW = /[\u00a0\u2009\u202f]/g

/**
 * @param {import('./markdown.mjs').Page} page
 * @returns {Example[]}
 */
export function examplesOf(page) {
  return page.fences.filter(({ language }) => language === 'console').flatMap(examplesIn)
}

/**
 * @param {import('./markdown.mjs').Fence} fence
 * @returns {Example[]}
 */
function examplesIn({ lines, line }) {
  /** @type {Example[]} */
  const examples = []
  for (let i = 0; i < lines.length; i += 1) {
    const start = i
    let command = PROMPT.exec(lines[i] ?? '')?.[1]
    if (command === undefined) continue
    for (; command.endsWith('\\'); i += 1)
      command = `${command.slice(0, -1)}${(lines[i + 1] ?? '').trimStart()}`
    const end = lines.findIndex((other, k) => k > i && other.startsWith('$ '))
    const expected = trimEnd(lines.slice(i + 1, end === -1 ? undefined : end))
    examples.push({ command, ...splitCommand(command), expected, line: line + start })
  }
  return examples
}

/**
 * @param {string} command
 * @returns {{ args: string[], stdin: string | undefined }}
 */
export function splitCommand(command) {
  /** @type {string[]} */
  const words = command.match(/(?:[^\s"'\\]|\\.|"(?:[^"\\]|\\.)*"|'[^']*')+/g) ?? []
  const at = words.indexOf('<')
  const args = at === -1 ? words.slice(2) : [...words.slice(2, at), ...words.slice(at + 2)]
  return { args: args.map(unquote), stdin: at === -1 ? undefined : unquote(words[at + 1] ?? '') }
}

/** @param {string} word */
function unquote(word) {
  return word.replace(/"((?:[^"\\]|\\.)*)"|'([^']*)'|\\(.)/g, (_, double, single, escaped) =>
    double !== undefined ? double.replace(/\\(["\\$`])/g, '$1') : (single ?? escaped),
  )
}

/**
 * @param {Example} example
 * @param {import('./program.mjs').Run} run
 * @returns {string | undefined} what differs
 */
export function exampleProblem({ args, expected }, run) {
  const { status, stdout, stderr } = run
  if (args.some((word) => /^[|>&;]/.test(word))) return 'the example is more than one command'
  const lines = trimEnd(`${stdout}${stderr}`.split(/\r?\n/))
  if (isCrash(run)) return `it ends with ${status}:\n${lines.join('\n')}`
  if (expected.length === 0) return status === 0 ? undefined : `it ends with ${status}:\n${lines.join('\n')}`
  return matches(expected, lines) ? undefined : `it prints instead:\n${lines.join('\n')}`
}

/**
 * @param {readonly string[]} expected
 * @param {readonly string[]} lines
 * @returns {boolean}
 */
export function matches(expected, lines) {
  const [first, ...rest] = expected
  if (first === undefined) return lines.length === 0
  if (!ANY.test(first)) return plain(first) === plain(lines[0]) && matches(rest, lines.slice(1))
  return Array.from({ length: lines.length + 1 }, (_, k) => k).some((k) => matches(rest, lines.slice(k)))
}

/** @param {string | undefined} line */
const plain = (line) => line?.replace(NARROW, ' ').trimEnd()

/** @param {readonly string[]} lines */
function trimEnd(lines) {
  return lines.slice(0, lines.findLastIndex((line) => line.trim() !== '') + 1)
}
