/** Opens a database file for one process alone, with every acknowledged write on the disk. */
import { randomInt } from 'node:crypto'
import { setTimeout } from 'node:timers/promises'
import Database from 'libsql'
import { checkedFile } from './check-file.ts'
import { abandonDatabase, letGo } from './close-database.ts'
import { checkVersion, migrateDatabase } from './migrate-database.ts'
import { migrations } from './migrations.ts'
import { isBusy, sqliteFault } from './sqlite-fault.ts'
import { StoreError } from './store-error.ts'

export type OpenOptions = {
  readonly path: string
  /** How long to wait for another process to let go of the file. */
  readonly lockWaitMs: number
}

export type OpenDatabase = { readonly library: Database.Database; readonly file: string }

/** How long the library waits for a lock once the file is ours: for programs that only look at it. */
const busyMs = 5000

/** Those that wait for the same file come back apart from each other. */
const apart = { leastMs: 5, mostMs: 25 }

export async function openDatabase({ path, lockWaitMs }: OpenOptions): Promise<OpenDatabase> {
  const file = await checkedFile(path)
  const library = connect(file)
  try {
    await lock(library, lockWaitMs)
    settle(library, file)
    return { library, file }
  } catch (error) {
    abandonDatabase(library)
    throw sqliteFault(file, error)
  }
}

/** The library itself waits for nothing: a try that waits in it would keep its share of the lock meanwhile. */
function connect(file: string): Database.Database {
  try {
    return new Database(file, { timeout: 0 })
  } catch (error) {
    throw sqliteFault(file, error)
  }
}

/**
 * In this mode SQLite keeps the lock of its first transaction until the file is closed, so the lock is the operating
 * system's own: a process that is killed leaves none behind, and a second name of the file is no way around it.
 * Taken before anything is read. A try that fails has its share of the lock all the same, and two processes with a
 * share each would both wait for ever: so it is given back before the next try.
 */
async function lock(library: Database.Database, waitMs: number): Promise<void> {
  const endMs = performance.now() + waitMs
  for (;;)
    try {
      library.prepare('PRAGMA locking_mode = EXCLUSIVE').all([])
      library.exec('BEGIN EXCLUSIVE')
      library.exec('COMMIT')
      library.prepare(`PRAGMA busy_timeout = ${busyMs}`).all([])
      return
    } catch (error) {
      if (!isBusy(error) || performance.now() >= endMs) throw error
      letGo(library)
      await setTimeout(randomInt(apart.leastMs, apart.mostMs))
    }
}

/** Nothing of another program's file is changed: whose it is comes first, the settings that it would keep after. */
function settle(library: Database.Database, file: string): void {
  checkVersion(library, { file, migrations })
  keepSafe(library, file)
  migrateDatabase(library, { file, migrations })
}

/** What each setting must answer. `fullfsync` makes Apple's disks write what they were told to. */
const settings: readonly (readonly [string, string, string | number])[] = [
  ['journal_mode', 'WAL', 'wal'],
  ['synchronous', 'FULL', 2],
  ['fullfsync', 'ON', 1],
  ['foreign_keys', 'ON', 1],
  ['locking_mode', 'EXCLUSIVE', 'exclusive'],
]

/** Bytes that the log of SQLite is cut back to after a large write. */
const walBytes = 64 * 1024 * 1024

function keepSafe(library: Database.Database, file: string): void {
  library.prepare(`PRAGMA journal_size_limit = ${walBytes}`).all([])
  for (const [name, value, expected] of settings) {
    library.prepare(`PRAGMA ${name} = ${value}`).all([])
    const [row] = library.prepare(`PRAGMA ${name}`).all([])
    const got = Object(row)[name]
    if (got === expected) continue
    const text = `${name} ${got}`
    throw new StoreError(
      'store.notDurable',
      { file, text },
      `database: not safe, got ${text}, expected ${expected}`,
    )
  }
}
