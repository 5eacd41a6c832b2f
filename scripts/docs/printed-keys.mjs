// The quantities that the program prints with --json, over the sample jobs and the examples of the docs.

import { existsSync, readdirSync } from 'node:fs'
import { join } from 'node:path'
import { quantityKeys } from './nomenclature.mjs'
import { inShop } from './shop.mjs'

/** Times are relative to a fixed moment in the samples. */
const NOW = '2027-04-10T08:00'

/**
 * @param {object} from
 * @param {string} from.root
 * @param {import('./program.mjs').Program} from.program
 * @param {readonly import('./help.mjs').Command[]} from.commands
 * @param {readonly import('./examples.mjs').Example[]} from.examples
 * @returns {{ keys: Map<string, string>, remarks: string[] }} the command line that first printed each quantity
 */
export function printedKeys({ root, program, commands, examples }) {
  /** @type {Map<string, string>} */
  const keys = new Map()
  /** @type {string[]} */
  const remarks = []
  inShop(root, (cwd) => {
    for (const args of commandLines(root, { commands, examples })) {
      const line = `hardstand ${args.join(' ')}`
      const json = parse(program(args, { cwd }).stdout)
      if (json === undefined) remarks.push(`"${line}" prints no JSON, so its quantities were not looked at`)
      for (const key of quantityKeys(json)) if (!keys.has(key)) keys.set(key, line)
    }
  })
  return { keys, remarks }
}

/**
 * @param {string} root
 * @param {object} from
 * @param {readonly import('./help.mjs').Command[]} from.commands
 * @param {readonly import('./examples.mjs').Example[]} from.examples
 * @returns {(readonly string[])[]}
 */
function commandLines(root, { commands, examples }) {
  const samples = existsSync(join(root, 'samples')) ? readdirSync(join(root, 'samples')).sort() : []
  const jobs = samples.filter((name) => /\.ya?ml$/.test(name))
  const weather = samples.find((name) => /weather/.test(name) && /\.(csv|epw|json)$/.test(name))
  const overJobs = commands
    .filter(({ usage, flags }) => /[<[]job[\]>]|\bJOB\b/i.test(usage) && flags.includes('--json'))
    .flatMap((command) => jobs.map((job) => jobLine({ command, job, weather })))
  const sums = commands.filter(({ path }) => path[0] === 'sum' && path.length === 2).map(sumLine)
  return [...overJobs, ...sums, ...examples.map(({ args }) => args).filter((args) => args.includes('--json'))]
}

/**
 * @param {object} line
 * @param {import('./help.mjs').Command} line.command
 * @param {string} line.job
 * @param {string | undefined} line.weather
 */
function jobLine({ command: { path, flags }, job, weather }) {
  /** @type {[string, string | undefined][]} */
  const values = [
    ['--now', NOW],
    ['--out', 'out'],
    ['--weather', weather && `samples/${weather}`],
  ]
  const given = values.flatMap(([flag, value]) => (value && flags.includes(flag) ? [flag, value] : []))
  return [...path, `samples/${job}`, '--json', ...given]
}

/**
 * A quick sum over the examples that its own help gives.
 *
 * @param {import('./help.mjs').Command} command
 */
function sumLine({ path, samples }) {
  return [...path, ...samples.flat(), '--json']
}

/** @param {string} text */
function parse(text) {
  try {
    return JSON.parse(text)
  } catch {
    return undefined
  }
}
