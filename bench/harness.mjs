// Measures two ways to do a thing against each other in one run, and both against a fixed loop of arithmetic: times
// differ between machines and hours, ratios measured together hardly do. Baselines are kept of ratios, counts, bytes.
//
//     import { bench } from './harness.mjs'
//     await bench([{ name: 'plan', a: { label: 'edit', run: edit }, b: { label: 'first', run: first } }])
//
// prints a table, or with --json the figures; --rounds N and --only NAME choose how many and which.

import { median, medianRatio, p95 } from './statistics.mjs'

/**
 * @typedef {{ label: string, run: () => unknown | Promise<unknown> }} Side
 * @typedef {{ name: string, a: Side, b: Side }} Pair
 * @typedef {object} SideResult
 * @property {string} label
 * @property {number} medianMs of one call
 * @property {number} p95Ms
 * @property {number} calibrations median time of one call in calibration loops: the figure to keep as a baseline
 * @typedef {{ name: string, rounds: number, a: SideResult, b: SideResult, ratio: number }} PairResult `ratio` is a to b
 */

const ROUNDS = 30
/** A sample shorter than this is mostly the clock's own grain. */
const SAMPLE_MS = 5
const MOST_REPEATS = 1 << 22
const CALIBRATION_STEPS = 1_000_000

/**
 * A fixed loop of integer and floating arithmetic that no compiler can drop.
 *
 * @returns {number}
 */
export function calibrationLoop() {
  let state = 1
  let sum = 0
  for (let i = 0; i < CALIBRATION_STEPS; i += 1) {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) | 0
    sum += Math.sqrt(state >>> 8)
  }
  return sum
}

/**
 * @param {Pair} pair
 * @param {{ rounds: number, now?: () => number }} options `now` in milliseconds
 * @returns {Promise<PairResult>}
 */
export async function measurePair({ name, a, b }, { rounds, now = () => performance.now() }) {
  const sides = [a.run, b.run, calibrationLoop]
  /** @type {number[]} */
  const repeats = []
  for (const run of sides) repeats.push(await repeatsFor(run, now))
  /** @type {[number[], number[], number[]]} */
  const times = [[], [], []]
  for (let round = 0; round < rounds; round += 1) {
    // Every other round runs backwards, so that neither side always follows the other.
    const order = round % 2 === 0 ? [0, 1, 2] : [2, 1, 0]
    for (const i of order) {
      const run = sides[i] ?? calibrationLoop
      times[i]?.push(await timeOf(run, { repeats: repeats[i] ?? 1, now }))
    }
  }
  const [ofA, ofB, ofLoop] = times
  const result = (/** @type {Side} */ side, /** @type {number[]} */ own) => ({
    label: side.label,
    medianMs: median(own),
    p95Ms: p95(own),
    calibrations: medianRatio(own, ofLoop),
  })
  return { name, rounds, a: result(a, ofA), b: result(b, ofB), ratio: medianRatio(ofA, ofB) }
}

/**
 * How often to call in one sample; the calls also warm the code up.
 *
 * @param {() => unknown} run
 * @param {() => number} now
 */
async function repeatsFor(run, now) {
  let repeats = 1
  while (repeats < MOST_REPEATS && (await timeOf(run, { repeats, now })) * repeats < SAMPLE_MS) repeats *= 2
  return repeats
}

/**
 * @param {() => unknown} run
 * @param {{ repeats: number, now: () => number }} options
 * @returns {Promise<number>} milliseconds of one call
 */
async function timeOf(run, { repeats, now }) {
  const start = now()
  for (let i = 0; i < repeats; i += 1) {
    const result = run()
    if (result instanceof Promise) await result
  }
  return (now() - start) / repeats
}

/**
 * @param {readonly PairResult[]} results
 * @returns {string}
 */
export function table(results) {
  const head = ['pair', 'side', 'median ms', 'p95 ms', 'loops', 'a / b']
  const rows = results.flatMap(({ name, a, b, ratio }) => [
    [name, a.label, ...figures(a), ratio.toPrecision(3)],
    ['', b.label, ...figures(b), ''],
  ])
  const widths = head.map((_, column) => Math.max(...[head, ...rows].map((row) => row[column]?.length ?? 0)))
  return [head, ...rows]
    .map((row) =>
      row
        .map((cell, i) => (i < 2 ? cell.padEnd(widths[i] ?? 0) : cell.padStart(widths[i] ?? 0)))
        .join('  ')
        .trimEnd(),
    )
    .join('\n')
}

/** @param {SideResult} side */
function figures({ medianMs, p95Ms, calibrations }) {
  return [medianMs, p95Ms, calibrations].map((value) => value.toPrecision(3))
}

/**
 * Measures and prints: what a file of benches calls.
 *
 * @param {readonly Pair[]} pairs
 * @param {readonly string[]} [args]
 * @returns {Promise<PairResult[]>}
 */
export async function bench(pairs, args = process.argv.slice(2)) {
  const rounds = Number(valueAfter(args, '--rounds') ?? ROUNDS)
  if (!Number.isInteger(rounds) || rounds < 1)
    throw new RangeError('--rounds: expected a whole number of 1 or more')
  const only = valueAfter(args, '--only')
  /** @type {PairResult[]} */
  const results = []
  for (const pair of pairs) {
    if (only === undefined || pair.name === only) results.push(await measurePair(pair, { rounds }))
  }
  console.log(args.includes('--json') ? JSON.stringify(results, null, 2) : table(results))
  return results
}

/**
 * @param {readonly string[]} args
 * @param {string} flag
 */
function valueAfter(args, flag) {
  const at = args.indexOf(flag)
  return at === -1 ? undefined : args[at + 1]
}
