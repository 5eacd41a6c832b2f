/** Opens a database file for one process alone, with every acknowledged write on the disk. */
import { randomInt } from 'node:crypto'
import { setTimeout } from 'node:timers/promises'
import Database from 'libsql'
import { checkedFile } from './check-file.ts'
import { abandonDatabase } from './close-database.ts'
import { checkVersion, migrateDatabase } from './migrate-database.ts'
import { migrations } from './migrations.ts'
import { sqliteFault } from './sqlite-fault.ts'
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
  const library = await lockedLibrary(file, lockWaitMs)
  try {
    settle(library, file)
    return { library, file }
  } catch (error) {
    abandonDatabase(library)
    throw sqliteFault(file, error)
  }
}

/**
 * A try that fails has a share of the lock all the same, and two processes with a share each would both wait for ever.
 * Under a write-ahead log nothing but closing gives that share back, so each try opens the file anew.
 */
async function lockedLibrary(file: string, waitMs: number): Promise<Database.Database> {
  const endMs = performance.now() + waitMs
  for (;;)
    try {
      return tryLock(file)
    } catch (error) {
      const fault = sqliteFault(file, error)
      if (fault.code !== 'store.locked' || performance.now() >= endMs) throw fault
      await setTimeout(randomInt(apart.leastMs, apart.mostMs))
    }
}

/**
 * In this mode SQLite keeps the lock of its first transaction until the file is closed, so the lock is the operating
 * system's own: a process that is killed leaves none behind, and a second name of the file is no way around it.
 * Taken before anything is read. Nothing is prepared, since the library would keep the file open for a statement.
 */
function tryLock(file: string): Database.Database {
  const library = new Database(file, { timeout: 0 })
  try {
    library.exec('PRAGMA locking_mode = EXCLUSIVE')
    library.exec('BEGIN EXCLUSIVE')
    library.exec('COMMIT')
    library.exec(`PRAGMA busy_timeout = ${busyMs}`)
    return library
  } catch (error) {
    library.close()
    throw error
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
