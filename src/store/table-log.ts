/** The log in its table: entries are taken once and never changed. */

import type { Kysely } from 'kysely'
import type { RawCells } from '#job'
import { sorted } from './checked.ts'
import { type EntryText, isMapOfTexts } from './checked-log.ts'
import type { StoredEntry } from './port.ts'
import type { Tables } from './schema.ts'
import { StoreError } from './store-error.ts'
import { bytesOf, legibleText, storedName, wholeText } from './stored-text.ts'

export async function jobs(db: Kysely<Tables>): Promise<readonly string[]> {
  const rows = await db.selectFrom('log_entry').select(bytesOf('job').as('name')).distinct().execute()
  return sorted(rows.map((row) => storedName('job', row.name)))
}

/** Rows in one statement: far below the number of values that a database takes at once. */
const rowsAtOnce = 500

type Batch = { readonly job: string; readonly entries: readonly EntryText[] }

/** All or none; what the job knows already is passed over. Gives the newest sequence of the job. */
export const addEntries = (db: Kysely<Tables>, { job, entries }: Batch): Promise<number> =>
  db.transaction().execute(async (work) => {
    for (let at = 0; at < entries.length; at += rowsAtOnce) {
      const rows = entries.slice(at, at + rowsAtOnce).map(({ id, cells }) => ({ job, id, cells }))
      await work
        .insertInto('log_entry')
        .values(rows)
        .onConflict((conflict) => conflict.columns(['job', 'id']).doNothing())
        .execute()
    }
    const newest = await work
      .selectFrom('log_entry')
      .select('sequence')
      .where('job', '=', job)
      .orderBy('sequence', 'desc')
      .limit(1)
      .executeTakeFirst()
    return Number(newest?.sequence ?? 0)
  })

type Asked = { readonly job: string; readonly after: number; readonly most: number }

export async function entriesAfter(
  db: Kysely<Tables>,
  { job, after, most }: Asked,
): Promise<readonly StoredEntry[]> {
  const rows = await db
    .selectFrom('log_entry')
    .select(['sequence', bytesOf('id').as('id'), bytesOf('cells').as('cells')])
    .where('job', '=', job)
    .where('sequence', '>', after)
    .orderBy('sequence')
    .limit(most)
    .execute()
  return rows.map((row) => {
    const place = { job, id: legibleText(row.id), sequence: Number(row.sequence) }
    const id = wholeText(row.id)
    if (id === undefined) throw damaged(place)
    return { id, sequence: place.sequence, cells: cellsOf(row.cells, place) }
  })
}

type Place = { readonly job: string; readonly id: string; readonly sequence: number }

/** Something else than a map of texts was put there by another hand, or the file is damaged. */
function cellsOf(bytes: Uint8Array, place: Place): RawCells {
  try {
    const cells: unknown = JSON.parse(wholeText(bytes) ?? '')
    if (isMapOfTexts(cells)) return cells
  } catch (error) {
    if (!(error instanceof SyntaxError)) throw error
  }
  throw damaged(place)
}

const damaged = (place: Place): StoreError =>
  new StoreError('store.entryDamaged', place, `entry: damaged, got ${place.id} of ${place.job}`)
