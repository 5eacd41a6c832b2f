import { Kysely, SqliteDialect, sql } from 'kysely'
import Database from 'libsql'
import { describe, expect, it } from 'vitest'
import { faultOf } from '../../test/support/stores.ts'
import { bind } from './bind.ts'
import { guardedDatabase } from './guarded-database.ts'

const kept = [
  '',
  'text',
  '⚓🚤',
  'e\u0301',
  'x'.repeat(1_000_000),
  0,
  -1,
  1.5,
  -2.25e-300,
  Number.MAX_SAFE_INTEGER,
  Number.MIN_SAFE_INTEGER,
  null,
  new Uint8Array(0),
  Uint8Array.of(0, 1, 255),
]

const refused = [
  true,
  false,
  undefined,
  Number.NaN,
  Number.POSITIVE_INFINITY,
  2 ** 53,
  -(2 ** 53),
  1e300,
  10n,
  'a\0b',
  '\ud83d',
  'x\udc00',
  Symbol('s'),
  {},
  [],
  [1],
  new Date(0),
  new ArrayBuffer(2),
  new Uint16Array(2),
  new DataView(new ArrayBuffer(2)),
]

const inMemory = (): Kysely<unknown> =>
  new Kysely({
    dialect: new SqliteDialect({ database: guardedDatabase(new Database(':memory:'), ':memory:') }),
  })

describe('the gate to the database', () => {
  it.each(kept.map((value) => [value]))('lets pass, and SQLite gives back, %j', async (value) => {
    expect(bind(value)).toBe(value)
    const db = inMemory()
    const { rows } = await sql<{ value: unknown }>`SELECT ${value} AS value`.execute(db)
    expect(rows).toEqual([{ value }])
    await db.destroy()
  })

  it('gives bytes of a window into a larger buffer, and of them alone', async () => {
    const db = inMemory()
    const value = Buffer.from('hardstand').subarray(4, 7)
    const { rows } = await sql<{ value: Uint8Array }>`SELECT ${value} AS value`.execute(db)
    expect(rows[0]?.value).toEqual(Uint8Array.from(Buffer.from('sta')))
    await db.destroy()
  })

  it.each(refused.map((value) => [value]))('refuses %s before the library sees it', async (value) => {
    const db = inMemory()
    expect((await faultOf(sql`SELECT ${value} AS value`.execute(db))).code).toBe('store.badValue')
    await sql`CREATE TABLE kept (value)`.execute(db)
    expect((await faultOf(sql`INSERT INTO kept VALUES (${value})`.execute(db))).code).toBe('store.badValue')
    const { rows } = await sql`SELECT count(*) AS many FROM kept`.execute(db)
    expect(rows).toEqual([{ many: 0 }])
    await db.destroy()
  })
})
