// How long it takes to choose packs: 500 seeded purchases of kits and single parts, an old batch or two on the shelf,
// against a fixed loop in the same run. Each case counts by the faster of three tries, the worst case by itself.
//
//     npm run build && node bench/packs.mjs [--gate] [--json]

import { readFileSync } from 'node:fs'
import { purchase } from '#core/stores'
import { calibrationLoop } from './harness.mjs'
import { median, p95 } from './statistics.mjs'

const CASES = 500
const TRIES = 3
const millilitre = 1e-6

let state = 20270412
const below = (/** @type {number} */ most) => {
  state = (Math.imul(state, 1_664_525) + 1_013_904_223) | 0
  return Math.floor(((state >>> 8) / 2 ** 24) * most)
}
const pick = (/** @type {readonly any[]} */ from) => from[below(from.length)]

/** @param {readonly [number, number]} ratio */
function parts([a, b]) {
  const ml = below(2) === 0 ? pick([250, 500, 750, 946, 1000, 2000, 2500, 3785, 5000]) : 100 + below(5900)
  if (b === 0) return [ml * millilitre]
  const kind = below(5)
  if (kind === 3) return [ml * millilitre, 0]
  if (kind === 4) return [0, ml * millilitre]
  const partB = Math.max(1, Math.round((ml * b) / (a + b)))
  return [(ml - partB) * millilitre, partB * millilitre]
}

const cases = Array.from({ length: CASES }, () => {
  const ratio = pick([
    [1, 0],
    [1, 1],
    [2, 1],
    [3, 1],
    [4, 1],
  ])
  const [a, b] = ratio
  return {
    uses: Array.from({ length: 1 + below(4) }, (_, day) => {
      const ml = 50 + below(4000)
      return {
        day,
        needM3: [a, b].slice(0, b === 0 ? 1 : 2).map((part) => (ml * millilitre * part) / (a + b)),
      }
    }),
    reserveShare: pick([0.1, 0.15, 0.25]),
    touchUpM3: [250 * millilitre],
    sold: Array.from({ length: 1 + below(5) }, (_, at) => ({
      id: `s${at}`,
      partsM3: parts(ratio),
      priceCoins: 500 + below(29_500),
    })),
    shelf: Array.from({ length: below(4) }, (_, at) => ({
      id: `t${at}`,
      partsM3: parts(ratio),
      count: 1 + below(4),
      batch: pick(['', 'K7', 'M2']),
      forThisJob: below(2) === 0,
    })),
    oneBatch: below(2) === 0,
  }
})

/** @param {() => unknown} run */
function timed(run) {
  const start = performance.now()
  run()
  return performance.now() - start
}

const loops = Array.from({ length: 30 }, () => timed(calibrationLoop))
for (const one of cases) purchase(one)
const times = cases.map((one) => Math.min(...Array.from({ length: TRIES }, () => timed(() => purchase(one)))))
const loopMs = median(loops)
const result = {
  cases: CASES,
  medianMs: median(times),
  p95Ms: p95(times),
  worstMs: Math.max(...times),
  loopMs,
  packsWorstLoops: Math.max(...times) / loopMs,
}

if (process.argv.includes('--json')) console.log(JSON.stringify(result, null, 2))
else
  for (const [key, value] of Object.entries(result))
    console.log(`${key.padEnd(16)} ${Number(value.toPrecision(4))}`)

if (process.argv.includes('--gate')) {
  const most = JSON.parse(readFileSync(new URL('./baseline.json', import.meta.url), 'utf8')).mostLoops
  if (result.packsWorstLoops > most.packsWorstLoops) {
    console.error(
      `bench: the slowest purchase takes ${result.packsWorstLoops} loops, at most ${most.packsWorstLoops}`,
    )
    process.exitCode = 1
  }
}
