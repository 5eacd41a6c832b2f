// One process with a store, for tests that kill it, trace it or let it meet another: `node store-process.mjs MODE PATH [START] [AT]`.
// What it did stands on standard output, one line each, written only once the store has acknowledged it.
import { writeSync } from 'node:fs'
import { openSqliteStore } from '#store'
import { joined, numbered } from './store-updates.mjs'

const [, , mode, path, start, at] = process.argv
const tell = (line) => writeSync(1, `${line}\n`)
/** Goes on for ever and keeps the store in use: one that nobody can reach is closed as garbage. */
const forever = (store) => new Promise(() => setInterval(() => store.documentNames(), 1000))

const modes = {
  /** Opens, waiting `START` milliseconds if it must, and keeps the file until it is killed. */
  hold: async () => {
    const store = await openSqliteStore({ path, lockWaitMs: Number(start) })
    tell('open')
    await forever(store)
  },
  /** Opens a second time after closing, and lets the first be collected. */
  reopen: async () => {
    const first = await openSqliteStore({ path, lockWaitMs: 0 })
    await first.append('work:a', Uint8Array.of(1))
    await first.close()
    const store = await openSqliteStore({ path, lockWaitMs: 0 })
    for (let turn = 0; turn < 20; turn += 1) {
      globalThis.gc?.()
      await new Promise((resolve) => setTimeout(resolve, 5))
    }
    tell('open')
    await forever(store)
  },
  /** Opens the file while it is open, is refused, and keeps the first. */
  twice: async () => {
    const store = await openSqliteStore({ path, lockWaitMs: 0 })
    const second = await openSqliteStore({ path, lockWaitMs: 0 }).catch((error) => error.code)
    tell(second === 'store.locked' ? 'open' : `not refused: ${second}`)
    await forever(store)
  },
  /** Appends `START` updates, one after the other. */
  few: async () => {
    const store = await openSqliteStore({ path })
    for (let number = 1; number <= Number(start); number += 1) {
      await store.append('work:a', numbered(number))
      tell(`u ${number}`)
    }
    await store.close()
  },
  /** Appends from number `START` on until it is killed, and adds entries and compacts in between. */
  many: async () => {
    const store = await openSqliteStore({ path })
    for (let number = Number(start); ; number += 3) {
      const three = [number, number + 1, number + 2]
      const appending = three.map(async (each) => {
        await store.append('work:a', numbered(each))
        tell(`u ${each}`)
      })
      const entries = three.map((each) => ({ id: `e${each}`, cells: { note: `note ${each}` } }))
      const adding = store.addEntries('a', entries).then(() => tell(`e ${number}`))
      await Promise.all([...appending, adding, store.compact('work:a', { most: 25, merge: joined })])
    }
  },
}

/** Several begin at the same moment, `AT` on the clock of the machine: whoever sleeps until then comes late. */
while (Date.now() < Number(at ?? 0));

try {
  await modes[mode]()
} catch (error) {
  tell(JSON.stringify({ code: error.code, data: error.data }))
  process.exitCode = 1
}
