import { createHash } from 'node:crypto'
import Database from 'libsql'
import { describe, expect, it } from 'vitest'
import { migrateDatabase } from './migrate-database.ts'
import { migrations } from './migrations.ts'

/** One for each step that was ever given out. Never edit a line: add one. */
const hashes = ['22f2e432581b2f0b']

const file = 'test.db'
const rowsOf = (library: Database.Database, query: string): unknown[] => library.prepare(query).all([])

describe('the steps of the database', () => {
  it('are those that were given out, letter by letter', () => {
    const found = migrations.map((step) => createHash('sha256').update(step).digest('hex').slice(0, 16))
    expect(found).toEqual(hashes)
  })

  it('are each taken once, in order, and the file knows how far it is', () => {
    const library = new Database(':memory:')
    const steps = ['CREATE TABLE a (x)', 'INSERT INTO a VALUES (1)']
    migrateDatabase(library, { file, migrations: steps.slice(0, 1) })
    migrateDatabase(library, { file, migrations: steps })
    migrateDatabase(library, { file, migrations: [...steps, 'INSERT INTO a VALUES (2)'] })
    expect(rowsOf(library, 'SELECT x FROM a')).toEqual([{ x: 1 }, { x: 2 }])
    expect(rowsOf(library, 'PRAGMA user_version')).toEqual([{ user_version: 3 }])
    library.close()
  })

  it('are taken whole or not at all: a step that fails half way leaves the file as the step before', () => {
    const library = new Database(':memory:')
    const bad = 'CREATE TABLE b (x); INSERT INTO b VALUES (1); INSERT INTO none VALUES (1)'
    const steps = { file, migrations: ['CREATE TABLE a (x)', bad] }
    expect(() => migrateDatabase(library, steps)).toThrow('none')
    expect(rowsOf(library, "SELECT name FROM sqlite_schema WHERE type = 'table'")).toEqual([{ name: 'a' }])
    expect(rowsOf(library, 'PRAGMA user_version')).toEqual([{ user_version: 1 }])
    expect(library.inTransaction).toBe(false)
    library.close()
  })
})
