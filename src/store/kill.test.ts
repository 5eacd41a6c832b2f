import { readdir } from 'node:fs/promises'
import { join } from 'node:path'
import { setTimeout } from 'node:timers/promises'
import { describe, expect, it } from 'vitest'
import { startStore } from '../../test/support/store-child.ts'
import { numbersIn } from '../../test/support/store-updates.mjs'
import { inFolder } from '../../test/support/stores.ts'
import type { Store } from './port.ts'
import { openSqliteStore } from './sqlite-store.ts'

const kills = Number(process.env.HARDSTAND_KILLS ?? 20)
const seed = Number(process.env.HARDSTAND_TEST_SEED ?? 20270412)

describe(`a store whose process is killed ${kills} times at seeded moments`, () => {
  it(
    'has everything that was acknowledged, once and whole, and goes on from there',
    { timeout: 60_000 + kills * 3000 },
    () =>
      inFolder(async (folder) => {
        const path = join(folder, 'jobs.db')
        const acknowledged = new Set<string>()
        let kept: readonly number[] = []
        for (let run = 0; run < kills; run += 1) {
          const lines = await killedAfter({ path, run, start: Math.max(0, ...kept) + 1 })
          for (const line of lines) acknowledged.add(line)
          kept = await keptIn(path, acknowledged)
        }
        expect(acknowledged.size).toBeGreaterThan(kills)
        expect(kept.length).toBeGreaterThan(kills)
        expect(await readdir(folder)).toEqual(['jobs.db'])
      }),
  )
})

/** Every fifth run is killed while it opens, also when it makes the file; the others while they write. */
async function killedAfter({ path, run, start }: { path: string; run: number; start: number }) {
  const child = startStore({ mode: 'many', path, start })
  if (run % 5 !== 0) await child.said
  await setTimeout(pick(run) * 180)
  await child.end()
  const lines = child.lines()
  expect(lines.filter((line) => !/^[ue] \d+$/.test(line))).toEqual([])
  return lines
}

/** From 0 to 1, by the seed and the run. */
const pick = (run: number): number => {
  let state = (seed ^ Math.imul(run + 1, 0x9e3779b1)) >>> 0
  state = Math.imul(state ^ (state >>> 15), 0x85ebca6b) >>> 0
  return ((state ^ (state >>> 13)) >>> 0) / 2 ** 32
}

/** The numbers that the file holds, after it was held against what was acknowledged. */
async function keptIn(path: string, acknowledged: ReadonlySet<string>): Promise<readonly number[]> {
  const store = await openSqliteStore({ path, lockWaitMs: 0 })
  try {
    expect(await store.integrity()).toEqual([])
    const numbers = numbersIn((await store.document('work:a')).updates)
    expect(numbers).toEqual([...new Set(numbers)].sort((one, other) => one - other))
    const { known, batches } = await entriesIn(store)
    const found = new Set([
      ...numbers.map((number) => `u ${number}`),
      ...batches.map((number) => `e ${number}`),
    ])
    expect([...acknowledged].filter((line) => !found.has(line))).toEqual([])
    return [...numbers, ...known]
  } finally {
    await store.close()
  }
}

/** Numbers of the entries, and the batches of which all three are there; a batch is there whole or not at all. */
async function entriesIn(store: Store) {
  const entries = await store.entriesAfter('a', { after: 0, most: 1_000_000 })
  expect(entries.filter(({ id, cells }) => cells.note !== `note ${id.slice(1)}`)).toEqual([])
  const known = entries.map(({ id }) => Number(id.slice(1)))
  expect(known.length % 3).toBe(0)
  const batches = known.filter((number, at) => at % 3 === 0 && known[at + 2] === number + 2)
  expect(batches.length).toBe(known.length / 3)
  return { known, batches }
}
