// How fast a plan follows an edit: 200 seeded edits of the big sample against the first plan and a fixed loop, in one
// run. `--gate` compares with bench/baseline.json: counts of stages exactly, times only as ratios.
//
//     npm run build && node bench/plan.mjs [--gate] [--json]

import { readFileSync } from 'node:fs'
import { catalogue, catalogueIds } from '#catalogue'
import { readWeatherCsv } from '#intake'
import { parseJob, project } from '#job'
import { createPlanner, plan } from '#plan'
import { seededEdits, withEdit } from './edits.mjs'
import { calibrationLoop } from './harness.mjs'
import { median, p95 } from './statistics.mjs'

const EDITS = 200
const SEED = 20270412
const FIRST_PLANS = 15

const file = (/** @type {string} */ name) =>
  new Uint8Array(readFileSync(new URL(`../samples/${name}`, import.meta.url)))

const parsed = parseJob(file('open-powerboat.yaml'), { name: 'open-powerboat.yaml' })
const weather = readWeatherCsv(file('open-powerboat.weather.csv'))
if (!parsed.document || !weather.ok) throw new Error('bench: the sample does not read')

const consumableIds = catalogueIds.priced
const read = (/** @type {any} */ raw, /** @type {any} */ previous) =>
  project(raw, {
    strict: true,
    catalogueIds: catalogueIds.sheets,
    consumableIds,
    ...(previous ? { previous } : {}),
  })
const inputOf = (/** @type {any} */ projected) => ({
  work: projected.work,
  money: projected.money,
  log: projected.log,
  weather: weather.series,
  catalogue,
  nowMs: Date.parse('2027-04-10T08:00:00Z'),
  seed: 1,
  app: 'bench',
})

/** @param {() => unknown} run */
function timed(run) {
  const start = performance.now()
  run()
  return performance.now() - start
}

const raw = parsed.document
const coldMs = timed(() => plan(inputOf(read(raw, undefined))))
const loops = Array.from({ length: 30 }, () => timed(calibrationLoop))
const firstMs = Array.from({ length: FIRST_PLANS }, () => timed(() => plan(inputOf(read(raw, undefined)))))

const planner = createPlanner()
let document = raw
let projected = read(document, undefined)
planner.plan(inputOf(projected))
let stages = 0
const editMs = seededEdits(/** @type {any} */ (raw), { count: EDITS, seed: SEED }).map((edit) => {
  document = withEdit(document, edit)
  return timed(() => {
    projected = read(document, projected)
    stages += planner.plan(inputOf(projected)).trace.filter((entry) => entry.ran).length
  })
})

const loopMs = median(loops)
const result = {
  edits: EDITS,
  stagesRun: stages,
  firstPlanColdMs: coldMs,
  firstPlanMedianMs: median(firstMs),
  editMedianMs: median(editMs),
  editP95Ms: p95(editMs),
  loopMs,
  editP95Loops: p95(editMs) / loopMs,
  firstPlanLoops: median(firstMs) / loopMs,
  editToFirst: median(editMs) / median(firstMs),
}

if (process.argv.includes('--json')) console.log(JSON.stringify(result, null, 2))
else
  for (const [key, value] of Object.entries(result))
    console.log(`${key.padEnd(18)} ${Number(value.toPrecision(4))}`)

if (process.argv.includes('--gate')) {
  const baseline = JSON.parse(readFileSync(new URL('./baseline.json', import.meta.url), 'utf8'))
  const slow = ['editP95Loops', 'firstPlanLoops'].filter((key) => result[key] > baseline.mostLoops[key])
  const moved = result.stagesRun === baseline.stagesRun ? [] : ['stagesRun']
  for (const key of [...slow, ...moved])
    console.error(
      `bench: ${key} is ${result[key]}, the baseline has ${baseline.mostLoops[key] ?? baseline[key]}`,
    )
  process.exitCode = slow.length + moved.length === 0 ? 0 : 1
}
