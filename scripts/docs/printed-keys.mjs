// The quantities that the program prints with --json: over the sample jobs, the quick sums and the examples of the docs.

import { existsSync, readdirSync } from 'node:fs'
import { join } from 'node:path'
import { quantityKeys } from './nomenclature.mjs'
import { isCrash } from './program.mjs'
import { inShop } from './shop.mjs'

/**
 * @typedef {import('./help.mjs').Command} Command
 * @typedef {{ args: readonly string[], mustPrint: boolean }} Line
 */

/** Plans of the samples do not depend on the day they are made. */
const NOW = '2027-04-10T08:00'

/**
 * @param {object} from
 * @param {string} from.root
 * @param {import('./program.mjs').Program} from.program
 * @param {readonly Command[]} from.commands
 * @param {readonly import('./examples.mjs').Example[]} from.examples
 * @returns {{ keys: Map<string, string>, faults: string[], remarks: string[] }} the command that first printed each
 *   quantity; commands that break
 */
export function printedKeys({ root, program, commands, examples }) {
  /** @type {Map<string, string>} */
  const keys = new Map()
  /** @type {string[]} */
  const faults = []
  /** @type {string[]} */
  const remarks = []
  inShop(root, (cwd) => {
    for (const { args, mustPrint } of lines(root, { commands, examples })) {
      const run = program(args, { cwd })
      const json = parse(run.stdout)
      const name = nameOf(args)
      if (isCrash(run)) faults.push(`"${name}" breaks:\n${run.stderr}`)
      else if (json === undefined)
        (mustPrint ? faults : remarks).push(`"${name}" prints no JSON: ${run.stderr.trim()}`)
      for (const key of quantityKeys(json)) if (!keys.has(key)) keys.set(key, name)
    }
  })
  if (keys.size === 0) faults.push('no command prints a quantity with --json')
  return { keys, faults, remarks }
}

/**
 * The whole road for every sample; its parts, which print what the road prints and a little more, for the first.
 *
 * @param {string} root
 * @param {object} from
 * @param {readonly Command[]} from.commands
 * @param {readonly import('./examples.mjs').Example[]} from.examples
 * @returns {Line[]}
 */
function lines(root, { commands, examples }) {
  const samples = existsSync(join(root, 'samples')) ? readdirSync(join(root, 'samples')).sort() : []
  const jobs = samples.filter((name) => /\.ya?ml$/.test(name))
  const ofJobs = commands.filter(({ usage, flags }) => /<job>/.test(usage) && flags.includes('--json'))
  const sums = commands.filter(({ path }) => path[0] === 'sum' && path.length === 2)
  return [
    ...ofJobs.flatMap((command) => {
      const isRoad = command.path.join(' ') === 'plan'
      return (isRoad ? jobs : jobs.slice(0, 1)).map((job) => jobLine(command, job))
    }),
    ...sums.map(({ path, samples }) => ({ args: [...path, ...samples.flat(), '--json'], mustPrint: true })),
    ...examples.filter(({ args }) => args.includes('--json')).map(({ args }) => ({ args, mustPrint: false })),
  ]
}

/**
 * @param {Command} command
 * @param {string} job
 * @returns {Line}
 */
function jobLine({ path, flags }, job) {
  const given = [
    ...(flags.includes('--now') ? ['--now', NOW] : []),
    ...(flags.includes('--out') ? ['--out', 'out'] : []),
  ]
  return { args: [...path, `samples/${job}`, '--json', ...given], mustPrint: true }
}

/** @param {readonly string[]} args */
function nameOf(args) {
  const flag = args.findIndex((word) => word.startsWith('-'))
  return ['hardstand', ...args.slice(0, flag === -1 ? undefined : flag)].join(' ')
}

/** @param {string} text */
function parse(text) {
  try {
    return JSON.parse(text)
  } catch {
    return undefined
  }
}
