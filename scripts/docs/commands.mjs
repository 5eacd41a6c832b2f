// Every command and flag of the program has its place in docs/commands.md, and nothing there is made up.

import { sectionOf } from './markdown.mjs'

/** @typedef {import('./help.mjs').Command} Command */
/** @typedef {import('./markdown.mjs').Page} Page */

/** Flags of many commands may be described once, under a heading with one of these names. */
const SHARED = /^(every command|common options|options of every command)$/i

/**
 * @param {object} docs
 * @param {Page} docs.page docs/commands.md
 * @param {readonly Command[]} docs.commands
 * @returns {string[]}
 */
export function commandFaults({ page, commands }) {
  if (!commands.some(({ path }) => path.length > 0)) return ['hardstand --help lists no command']
  const shared = page.headings
    .filter(({ text }) => SHARED.test(text))
    .map((heading) => sectionOf(page, heading))
  const known = new Set(commands.map(({ path }) => path.join(' ')))
  const missing = commands
    .filter(({ path }) => path.length > 0)
    .flatMap((command) => entryFaults({ page, command, shared }))
  const invented = page.headings
    .filter(({ text }) => /^hardstand [a-z]/.test(text) && !known.has(commandIn(text).join(' ')))
    .map(({ text, line }) => `docs/commands.md:${line}: the program has no command "${text}"`)
  return [...missing, ...invented]
}

/**
 * @param {object} entry
 * @param {Page} entry.page
 * @param {Command} entry.command
 * @param {readonly string[]} entry.shared
 */
function entryFaults({ page, command, shared }) {
  const name = command.path.join(' ')
  const heading = page.headings.find(({ text }) => commandIn(text).join(' ') === name)
  if (heading === undefined) return [`docs/commands.md: "hardstand ${name}" has no heading`]
  const texts = [sectionOf(page, heading), ...shared]
  return command.flags
    .filter((flag) => !texts.some((text) => new RegExp(`(?<![\\w-])${flag}(?![\\w-])`).test(text)))
    .map((flag) => `docs/commands.md:${heading.line}: ${flag} of "hardstand ${name}" is not described`)
}

/**
 * The words of a heading that name a command: `hardstand sum dew` and `plan JOB --json` alike.
 *
 * @param {string} heading
 */
function commandIn(heading) {
  const words = heading.split(/\s+/)
  if (words[0] === 'hardstand') words.shift()
  const end = words.findIndex((word) => !/^[a-z][a-z-]*$/.test(word))
  return end === -1 ? words : words.slice(0, end)
}
