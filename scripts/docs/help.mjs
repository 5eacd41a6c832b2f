// Commands and flags of the program, read from what --help prints.

/**
 * @typedef {object} Command
 * @property {readonly string[]} path words after the program's name; none for the program itself
 * @property {readonly string[]} flags long forms
 * @property {string} usage the line that begins with `Usage:`
 * @property {readonly (readonly [string, string])[]} samples flags whose description has `for example "VALUE"`
 */

/** Flags that every command has; they are described once. */
const EVERYWHERE = new Set(['--help', '--version'])

/**
 * Every command and every command below it.
 *
 * @param {(args: readonly string[]) => { stdout: string }} run
 * @param {readonly string[]} [path]
 * @returns {Command[]}
 */
export function commandsOf(run, path = []) {
  const { commands, ...own } = readHelp(run([...path, '--help']).stdout)
  return [{ path, ...own }, ...commands.flatMap((name) => commandsOf(run, [...path, name]))]
}

/**
 * @param {string} help
 * @returns {Omit<Command, 'path'> & { commands: string[] }}
 */
export function readHelp(help) {
  const lines = help.split(/\r?\n/)
  const usage = lines.find((line) => line.startsWith('Usage:')) ?? ''
  const entries = lines.flatMap((line, i) => {
    const [, term, text = ''] = /^ {2}(\S.*?)(?: {2,}(.*)|$)/.exec(line) ?? []
    if (term === undefined) return []
    return [{ term, text: [text, ...wrapped(lines, i)].join(' '), heading: headingAbove(lines, i) }]
  })
  const options = entries
    .filter(({ term }) => term.startsWith('-'))
    .flatMap(({ term, text }) => {
      const flags = term.match(/--[a-z][\w-]*/g) ?? []
      return flags.filter((flag) => !EVERYWHERE.has(flag)).map((flag) => ({ flag, text }))
    })
  return {
    usage,
    flags: options.map(({ flag }) => flag),
    samples: options.flatMap(({ flag, text }) => {
      const [, value] = /for example "([^"]*)"/.exec(text) ?? []
      return value === undefined ? [] : [/** @type {const} */ ([flag, value])]
    }),
    commands: entries
      .filter(({ heading }) => /commands:$/i.test(heading))
      .map(({ term }) => /^[\w-]+/.exec(term)?.[0] ?? 'help')
      .filter((name) => name !== 'help'),
  }
}

/**
 * The lines that a description runs on over.
 *
 * @param {readonly string[]} lines
 * @param {number} i
 */
function wrapped(lines, i) {
  const rest = lines.slice(i + 1)
  const end = rest.findIndex((line) => !/^ {4,}\S/.test(line))
  return rest.slice(0, end === -1 ? undefined : end).map((line) => line.trim())
}

/**
 * @param {readonly string[]} lines
 * @param {number} i
 */
function headingAbove(lines, i) {
  return lines.slice(0, i).findLast((line) => /^\S/.test(line)) ?? ''
}
