// How fast an edit shows in a browser: the same 200 seeded edits come to a page in Chromium from another device; timed
// from the page asking its worker for a plan to the page holding the answer, copied; beside it the worker's own time.
// Needs the program to be built.
//
//     node bench/browser.mjs [--json]

import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { HocuspocusProvider, HocuspocusProviderWebsocket } from '@hocuspocus/provider'
import { chromium } from 'playwright-core'
import { WebSocket } from 'ws'
import { parseJob } from '#job'
import { moneyDocument, setCell, workDocument } from '#replica'
import { browserArguments, findBrowser, NO_BROWSER } from '../scripts/browser/find.mjs'
import { startProgram } from '../scripts/pictures/program.mjs'
import { seededEdits } from './edits.mjs'
import { median, p95 } from './statistics.mjs'

const EDITS = 200
const SEED = 20270412
const JOB = 'open-powerboat'
const root = new URL('..', import.meta.url).pathname

const executablePath = findBrowser()
if (executablePath === undefined) throw new Error(NO_BROWSER)
const raw = parseJob(new Uint8Array(readFileSync(join(root, `samples/${JOB}.yaml`))), { name: JOB }).document
if (!raw) throw new Error('bench: the sample does not read')

const folder = mkdtempSync(join(tmpdir(), 'hardstand-bench-'))
const program = await startProgram({ root, folder })
const browser = await chromium.launch({ executablePath, args: browserArguments() })
const other = openOther(program.origin)
try {
  const page = await browser.newPage({ baseURL: program.origin })
  await page.addInitScript(timeWorkers)
  await page.goto(`/job/${JOB}/boat`)
  await other.synced
  await page.evaluate(() => /** @type {any} */ (globalThis).planned(1))
  // The weather has come, the guesses are weighed, and the page is at rest.
  await page.waitForTimeout(6000)
  const before = (await times(page)).length
  for (const { part, path, text } of seededEdits(/** @type {any} */ (raw), { count: EDITS, seed: SEED })) {
    const [section = '', item, key] = path.length === 3 ? path : [path[0], undefined, path[1]]
    const had = (await times(page)).length
    const doc = other.docs[part]
    const edit = new Promise((resolve) => doc.once('update', () => resolve(true)))
    setCell(doc, { section, ...(item === undefined ? {} : { item }), key: key ?? '' }, text)
    // What was written already is no edit.
    if (!(await Promise.race([edit, false]))) continue
    await page.evaluate((count) => /** @type {any} */ (globalThis).planned(count), had + 1)
  }
  const editMs = (await times(page)).slice(before)
  const [all, worked] = [editMs.map(({ all }) => all), editMs.map(({ worked }) => worked)]
  const found = {
    edits: editMs.length,
    editMedianMs: median(all),
    editP95Ms: p95(all),
    workerMedianMs: median(worked),
    workerP95Ms: p95(worked),
  }
  if (process.argv.includes('--json')) console.log(JSON.stringify(found))
  else
    for (const [name, value] of Object.entries(found))
      console.log(`${name.padEnd(18)} ${value.toPrecision(4)}`)
} finally {
  other.close()
  await browser.close()
  await program.stop()
  rmSync(folder, { recursive: true, force: true })
}

/** @param {import('playwright-core').Page} page @returns {Promise<{ all: number, worked: number }[]>} */
function times(page) {
  return page.evaluate(() => /** @type {any} */ (globalThis).planTimes)
}

/** Runs in the page: notes how long each plan took from the asking to the answer in hand. */
function timeWorkers() {
  const seen = /** @type {any} */ (globalThis)
  seen.planTimes = []
  /** @type {(() => void)[]} */
  let waiting = []
  seen.planned = async (/** @type {number} */ count) => {
    while (seen.planTimes.length < count)
      await new Promise((resolve) => waiting.push(() => resolve(undefined)))
  }
  const Real = globalThis.Worker
  globalThis.Worker = class extends Real {
    /** @param {string | URL} url @param {WorkerOptions} [options] */
    constructor(url, options) {
      super(url, options)
      let asked = 0
      const post = this.postMessage.bind(this)
      this.postMessage = (/** @type {any} */ message) => {
        if (message.kind === 'plan') asked = performance.now()
        post(message)
      }
      this.addEventListener('message', ({ data }) => {
        // Reading it is what copies it.
        if (data.kind !== 'planned') return
        seen.planTimes.push({ all: performance.now() - asked, worked: data.tookMs })
        for (const wake of waiting) wake()
        waiting = []
      })
    }
  }
}

/** Another device, without a screen. @param {string} origin */
function openOther(origin) {
  class OtherSocket extends WebSocket {
    /** @param {string} url */
    constructor(url) {
      super(url, { headers: { origin } })
    }
  }
  const websocketProvider = new HocuspocusProviderWebsocket({
    url: `${origin.replace('http', 'ws')}/sync`,
    WebSocketPolyfill: OtherSocket,
  })
  const share = (/** @type {string} */ name) => {
    const provider = new HocuspocusProvider({ websocketProvider, name, token: 'page' })
    provider.attach()
    return provider
  }
  const [work, money] = [share(workDocument(JOB)), share(moneyDocument(JOB))]
  const synced = Promise.all(
    [work, money].map(
      (provider) => new Promise((resolve) => provider.on('synced', () => resolve(undefined))),
    ),
  )
  return {
    docs: { work: work.document, money: money.document },
    synced,
    close: () => {
      for (const provider of [work, money]) provider.destroy()
      websocketProvider.destroy()
    },
  }
}
