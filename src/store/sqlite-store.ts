/** The port in one SQLite file, which belongs to this process alone while it is open. */
import { Kysely, SqliteDialect } from 'kysely'
import type Database from 'libsql'
import { backUp } from './backup.ts'
import { closeDatabase } from './close-database.ts'
import { guardedDatabase } from './guarded-database.ts'
import { openDatabase } from './open-database.ts'
import type { Store } from './port.ts'
import { createQueue } from './queue.ts'
import type { Tables } from './schema.ts'
import { telling } from './sqlite-fault.ts'
import { createTableStore } from './table-store.ts'

export type SqliteStore = Store & {
  /** A copy in a new file, with everything that was acknowledged before; never written over another file. */
  readonly backupTo: (path: string) => Promise<void>
}

export type SqliteOptions = {
  /** The database file; made when there is none, in a folder that is there. */
  readonly path: string
  /** How long to wait for another process that has the file, one second when left out. */
  readonly lockWaitMs?: number
}

/**
 * Opens or makes a database file and brings it to the newest version. Fails with a `StoreError`: when another process
 * has the file, when it is of a newer version or no database of this program, and when it cannot be read and written.
 */
export async function openSqliteStore({ path, lockWaitMs = 1000 }: SqliteOptions): Promise<SqliteStore> {
  const { library, file } = await openDatabase({ path, lockWaitMs })
  const queue = createQueue()
  const db = new Kysely<Tables>({ dialect: new SqliteDialect({ database: guardedDatabase(library, file) }) })
  /** The query builder closes only what it has used. */
  const close = async (): Promise<void> => {
    await db.destroy()
    closeDatabase(library)
  }
  return {
    ...createTableStore({ db, queue, integrity: () => integrity(library, file), close }),
    backupTo: (path) => queue.run(() => backUp(library, path)),
  }
}

function integrity(library: Database.Database, file: string): readonly string[] {
  const rows = telling(file, () => library.prepare('PRAGMA integrity_check').all([]))
  const found = rows.map((row) => String(Object(row).integrity_check))
  return found.filter((text) => text !== 'ok')
}
