/** Opens a database file for one process alone, with every acknowledged write on the disk. */
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

/** The second time only the other's first steps are waited for. */
const MOST_AGAIN_MS = 250

/** Two processes that make a file at the same moment may each find it locked: they come back apart from each other. */
const apartMs = (): number => 20 + (process.pid % 97)

export async function openDatabase({ path, lockWaitMs }: OpenOptions): Promise<OpenDatabase> {
  const file = await checkedFile(path)
  try {
    return openFile(file, lockWaitMs)
  } catch (error) {
    if (!(error instanceof StoreError && error.code === 'store.locked')) throw error
    await new Promise((resolve) => setTimeout(resolve, apartMs()))
    return openFile(file, Math.min(lockWaitMs, MOST_AGAIN_MS))
  }
}

function openFile(file: string, lockWaitMs: number): OpenDatabase {
  const library = connect(file, lockWaitMs)
  try {
    lock(library)
    settle(library, file)
    return { library, file }
  } catch (error) {
    abandonDatabase(library)
    throw sqliteFault(file, error)
  }
}

function connect(file: string, timeout: number): Database.Database {
  try {
    return new Database(file, { timeout })
  } catch (error) {
    throw sqliteFault(file, error)
  }
}

/**
 * In this mode SQLite keeps the lock of its first transaction until the file is closed, so the lock is the operating
 * system's own: a process that is killed leaves none behind, and a second name of the file is no way around it.
 * Taken before anything is read, lest two processes wait for each other on a new file.
 */
function lock(library: Database.Database): void {
  library.prepare('PRAGMA locking_mode = EXCLUSIVE').all([])
  library.exec('BEGIN EXCLUSIVE')
  library.exec('COMMIT')
  library.prepare(`PRAGMA busy_timeout = ${busyMs}`).all([])
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
