/** The SQLite library as the query builder wants it: values go in through the gate, bytes come out as bytes. */
import type { SqliteDatabase, SqliteStatement } from 'kysely'
import type Database from 'libsql'
import { bind } from './bind.ts'
import { closeDatabase } from './close-database.ts'
import { telling } from './sqlite-fault.ts'

export function guardedDatabase(library: Database.Database, file: string): SqliteDatabase {
  return {
    prepare: (sql) => {
      if (sql === 'rollback' && !library.inTransaction) return nothingToDo
      return guardedStatement(
        telling(file, () => library.prepare(sql)),
        file,
      )
    },
    close: () => {
      closeDatabase(library)
    },
  }
}

/**
 * SQLite has rolled back by itself when the disk is full or fails. A second rollback would fail in its turn and hide
 * the first error.
 */
const nothingToDo: SqliteStatement = {
  reader: false,
  all: () => [],
  run: () => ({ changes: 0, lastInsertRowid: 0 }),
  iterate: () => [][Symbol.iterator](),
}

function guardedStatement(statement: Database.Statement, file: string): SqliteStatement {
  const all = (values: readonly unknown[]): unknown[] => {
    const bound = values.map(bind)
    return telling(file, () => statement.all(bound)).map(withBytes)
  }
  return {
    reader: statement.reader,
    all,
    run: (values) => {
      const bound = values.map(bind)
      return telling(file, () => statement.run(bound))
    },
    iterate: (values) => all(values)[Symbol.iterator](),
  }
}

/** The library gives blobs as bare buffers. */
const withBytes = (row: unknown): unknown =>
  typeof row === 'object' && row !== null
    ? Object.fromEntries(
        Object.entries(row).map(([key, value]) => [
          key,
          value instanceof ArrayBuffer ? new Uint8Array(value) : value,
        ]),
      )
    : row
