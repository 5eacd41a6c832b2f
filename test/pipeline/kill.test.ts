// The server is killed while edits come in. Whatever a page was told is kept must be in the database afterwards.
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { uniformInt } from 'pure-rand/distribution/uniformInt'
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus'
import { afterEach, describe, expect, it } from 'vitest'
import * as Y from 'yjs'
import { openSqliteStore } from '#store'
import { openPage, type SharedDoc, until } from '../support/page.ts'
import { freePort, type Served, serve } from '../support/served.ts'

const kills = Number(process.env.HARDSTAND_KILLS ?? 12)
const seed = Number(process.env.HARDSTAND_TEST_SEED ?? 20270412)
const cells = 300
const everyMs = 20
/** After so many edits a writer rests until they are kept, or so long: a slow disk catches up, and no server is none. */
const burst = 25
const restMs = 1500

const running: Served[] = []
const atEnd: (() => Promise<void>)[] = []

afterEach(async () => {
  for (const { child, ended } of running.splice(0)) {
    child.kill('SIGKILL')
    await ended
  }
  for (const end of atEnd.splice(0).reverse()) await end()
})

describe('a server that is killed while edits come in', () => {
  it(`has kept all that it acknowledged, ${kills} times over`, {
    timeout: 60_000 + kills * 15_000,
  }, async () => {
    const random = xoroshiro128plus(seed)
    const folder = await mkdtemp(join(tmpdir(), 'hardstand-kill-'))
    atEnd.push(() => rm(folder, { recursive: true, force: true }))
    const port = await freePort()
    const page = openPage(port)
    atEnd.push(page.close)
    const writers = ['work:teal', 'money:teal', 'shop'].map((name) => writeInto(page.share(name), name))
    const log = postEntries(port)
    atEnd.push(async () => {
      for (const writer of writers) writer.stop()
      await log.stop()
    })
    for (let kill = 0; kill < kills; kill += 1) {
      const served = serve({ port, folder })
      running.push(served)
      // One in four dies while it starts, or while the pages meet it again.
      if (uniformInt(random, 0, 3) > 0) await metAll(kill, { served, writers })
      await pause(uniformInt(random, 0, 400))
      served.child.kill('SIGKILL')
      await served.ended
      running.pop()
      const lost = await lostIn(folder, { writers, posted: log.acknowledged() })
      expect(lost, `kill ${kill}, seed ${seed}`).toEqual([])
    }
    const acknowledged = writers.map((writer) => Math.max(...writer.acknowledged()))
    for (const most of acknowledged) expect(most).toBeGreaterThan(kills)
    expect(log.acknowledged().length).toBeGreaterThan(kills)
    const edits = acknowledged.reduce((sum, most) => sum + most, 0)
    console.log(
      `${kills} kills, ${edits} edits and ${log.acknowledged().length} entries acknowledged, none lost`,
    )
  })
})

/** Every writer was told once by this server that everything is kept. */
async function metAll(
  kill: number,
  { served, writers }: { readonly served: Served; readonly writers: readonly Writer[] },
): Promise<void> {
  const before = writers.map((writer) => writer.keptTimes())
  const met = (): boolean => writers.every((writer, at) => writer.keptTimes() > before[at]!)
  const state = (): string =>
    writers
      .map(({ name, shared: { provider, refusedWith, told } }) =>
        [name, provider.isSynced, provider.unsyncedChanges, refusedWith(), told.at(-1)].join(' '),
      )
      .join('; ')
  await until(
    () => `everything to be kept before kill ${kill}: ${state()}; server: ${served.output()}`,
    met,
    60_000,
  )
}

const pause = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms))

type Writer = {
  readonly name: string
  readonly shared: SharedDoc
  /** By cell, the newest edit that the page was told is kept; -1 for none. */
  readonly acknowledged: () => readonly number[]
  /** How often it was told so. */
  readonly keptTimes: () => number
  readonly stop: () => void
}

/** Edits one cell after another, with or without a server, and notes what was acknowledged. */
function writeInto(shared: SharedDoc, name: string): Writer {
  const newest = new Array<number>(cells).fill(-1)
  let acknowledged = [...newest]
  const note = (): void => {
    if (!shared.kept()) return
    acknowledged = [...newest]
    keptTimes += 1
  }
  shared.provider.on('unsyncedChanges', note)
  shared.provider.on('synced', note)
  let edit = 0
  let keptTimes = 0
  let restUntilMs = 0
  const timer = setInterval(() => {
    if (!shared.kept() && performance.now() < restUntilMs) return
    restUntilMs = edit % burst === burst - 1 ? performance.now() + restMs : 0
    newest[edit % cells] = edit
    shared.doc.getMap('edits').set(`cell${edit % cells}`, String(edit))
    edit += 1
  }, everyMs)
  return {
    name,
    shared,
    acknowledged: () => acknowledged,
    keptTimes: () => keptTimes,
    stop: () => clearInterval(timer),
  }
}

/** Posts entries of the log one after another, and notes those that were acknowledged. */
function postEntries(port: number): { acknowledged: () => readonly string[]; stop: () => Promise<void> } {
  const acknowledged: string[] = []
  let goesOn = true
  const posting = (async () => {
    for (let at = 0; goesOn; at += 1) {
      const id = `entry-${at}`
      try {
        const answer = await fetch(`http://127.0.0.1:${port}/api/jobs/teal/log`, {
          method: 'POST',
          headers: { 'content-type': 'application/json', origin: `http://127.0.0.1:${port}` },
          body: JSON.stringify({ entries: [{ id, cells: { kind: 'note', text: id } }] }),
        })
        if (answer.ok) acknowledged.push(id)
        await answer.arrayBuffer()
      } catch {
        // The server is dead or dies under it: nothing was acknowledged.
      }
      await pause(10)
    }
  })()
  return {
    acknowledged: () => [...acknowledged],
    stop: async () => {
      goesOn = false
      await posting
    },
  }
}

async function lostIn(
  folder: string,
  { writers, posted }: { readonly writers: readonly Writer[]; readonly posted: readonly string[] },
): Promise<readonly string[]> {
  const known = writers.map((writer) => ({ name: writer.name, acknowledged: writer.acknowledged() }))
  const store = await openSqliteStore({ path: join(folder, 'hardstand.db') })
  try {
    const lost: string[] = [...(await store.integrity())]
    for (const { name, acknowledged } of known) {
      const doc = new Y.Doc()
      for (const update of (await store.document(name)).updates) Y.applyUpdate(doc, update)
      const found = doc.getMap('edits')
      acknowledged.forEach((edit, cell) => {
        if (edit > Number(found.get(`cell${cell}`) ?? -1)) lost.push(`${name} cell${cell} edit ${edit}`)
      })
    }
    const entries = await store.entriesAfter('teal', { after: 0, most: 1_000_000 })
    const ids = new Set(entries.map(({ id }) => id))
    return [...lost, ...posted.filter((id) => !ids.has(id))]
  } finally {
    await store.close()
  }
}
