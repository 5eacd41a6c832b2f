// How fast the page's worker follows an edit: 200 seeded edits of the big sample as updates of its shared documents,
// reading, planning and copying the answer included, against a fixed loop in the same run. Before, as in the page, the
// guesses are weighed. `--gate` holds the ratio
// against bench/baseline.json.
//
//     node bench/worker.mjs [--gate] [--json]

import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { build } from 'vite'
import * as Y from 'yjs'
import { readWeatherCsv, seriesHash } from '#intake'
import { parseJob } from '#job'
import { fillPart, setCell } from '#replica'
import { seededEdits } from './edits.mjs'
import { calibrationLoop } from './harness.mjs'
import { median, p95 } from './statistics.mjs'

const EDITS = 200
const SEED = 20270412

const root = new URL('..', import.meta.url).pathname
const sample = (/** @type {string} */ name) =>
  new Uint8Array(readFileSync(new URL(`../samples/${name}`, import.meta.url)))

/** The desk is made for the page's bundle; Node takes it bundled too. */
async function bundledDesk() {
  const outDir = mkdtempSync(join(tmpdir(), 'hardstand-bench-'))
  try {
    await build({
      root,
      configFile: false,
      logLevel: 'error',
      resolve: { conditions: ['hardstand-source', 'module', 'browser', 'development|production'] },
      build: {
        outDir,
        minify: false,
        lib: { entry: join(root, 'src/web/worker/plan-desk.ts'), formats: ['es'], fileName: 'desk' },
      },
    })
    return await import(pathToFileURL(join(outDir, 'desk.js')).href)
  } finally {
    rmSync(outDir, { recursive: true, force: true })
  }
}

const { createPlanDesk } = await bundledDesk()
const parsed = parseJob(sample('open-powerboat.yaml'), { name: 'open-powerboat.yaml' })
const csv = sample('open-powerboat.weather.csv')
const weather = readWeatherCsv(csv)
if (!parsed.document || !weather.ok) throw new Error('bench: the sample does not read')
const raw = parsed.document

const docs = { work: new Y.Doc(), money: new Y.Doc() }
fillPart(docs.work, raw.work, '1')
fillPart(docs.money, raw.money ?? {})
const hash = seriesHash(weather.series)
setCell(docs.work, { section: 'weather', key: 'hash' }, hash)

const desk = createPlanDesk({ app: 'bench', seed: 1, clockMs: () => performance.now() })
for (const part of /** @type {const} */ (['work', 'money'])) {
  desk.update(part, Y.encodeStateAsUpdate(docs[part]))
  docs[part].on('update', (/** @type {Uint8Array} */ update) => desk.update(part, update))
}
desk.setEntries(raw.log ?? {})
desk.setWeather(hash, csv)
const nowMs = Date.parse('2027-04-10T08:00:00Z')
const answer = (/** @type {number} */ turn) => structuredClone(desk.plan({ turn, nowMs }))

/** @param {() => unknown} run */
function timed(run) {
  const start = performance.now()
  run()
  return performance.now() - start
}

const firstMs = timed(() => answer(0))
// As the page does once the first plan stands.
for (const candidate of desk.answer({ kind: 'candidates' })) desk.answer({ kind: 'weigh', candidate, nowMs })
const loops = Array.from({ length: 30 }, () => timed(calibrationLoop))
const edits = seededEdits(/** @type {any} */ (raw), { count: EDITS, seed: SEED })
const editMs = edits.map(({ part, path, text }, at) => {
  const [section = '', item, key] = path.length === 3 ? path : [path[0], undefined, path[1]]
  return timed(() => {
    setCell(docs[part], { section, ...(item === undefined ? {} : { item }), key: key ?? '' }, text)
    answer(at + 1)
  })
})

const found = {
  edits: EDITS,
  firstMs,
  editMedianMs: median(editMs),
  editP95Ms: p95(editMs),
  loopMs: median(loops),
  workerP95Loops: p95(editMs) / median(loops),
}
if (process.argv.includes('--json')) console.log(JSON.stringify(found))
else
  for (const [name, value] of Object.entries(found)) console.log(`${name.padEnd(18)} ${value.toPrecision(4)}`)

if (process.argv.includes('--gate')) {
  const { mostLoops } = JSON.parse(readFileSync(new URL('./baseline.json', import.meta.url), 'utf8'))
  if (found.workerP95Loops > mostLoops.workerP95Loops) {
    console.error(
      `bench: an edit takes ${found.workerP95Loops.toFixed(1)} loops in the worker, at most ${mostLoops.workerP95Loops}`,
    )
    process.exitCode = 1
  }
}
