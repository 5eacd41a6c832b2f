// Commands and flags of the program, read from what --help prints.

/**
 * @typedef {object} Command
 * @property {readonly string[]} path words after the program's name; none for the program itself
 * @property {readonly string[]} flags long forms
 * @property {string} usage the line that begins with `Usage:`
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
  const { usage, flags, commands } = readHelp(run([...path, '--help']).stdout)
  return [{ path, flags, usage }, ...commands.flatMap((name) => commandsOf(run, [...path, name]))]
}

/**
 * @param {string} help
 * @returns {{ usage: string, flags: string[], commands: string[] }}
 */
export function readHelp(help) {
  const lines = help.split(/\r?\n/)
  const usage = lines.find((line) => line.startsWith('Usage:')) ?? ''
  const entries = lines.flatMap((line, i) => {
    const [, term] = /^ {2}(\S.*?)(?: {2,}|$)/.exec(line) ?? []
    return term === undefined ? [] : [{ term, heading: headingAbove(lines, i) }]
  })
  return {
    usage,
    flags: entries
      .filter(({ term }) => term.startsWith('-'))
      .flatMap(({ term }) => term.match(/--[a-z][\w-]*/g) ?? [])
      .filter((flag) => !EVERYWHERE.has(flag)),
    commands: entries
      .filter(({ heading }) => /commands:$/i.test(heading))
      .map(({ term }) => /^[\w-]+/.exec(term)?.[0] ?? 'help')
      .filter((name) => name !== 'help'),
  }
}

/**
 * @param {readonly string[]} lines
 * @param {number} i
 */
function headingAbove(lines, i) {
  return lines.slice(0, i).findLast((line) => /^\S/.test(line)) ?? ''
}
