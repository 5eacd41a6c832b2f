/** Texts are read as bytes: the library ends the process on a text that is not UTF-8, as a damaged file may hold. */
import { type RawBuilder, sql } from 'kysely'
import { StoreError } from './store-error.ts'

type TextColumn = 'document' | 'job' | 'id' | 'cells' | 'hash'

/** The bytes of a column, to be selected in the place of its text. */
export const bytesOf = (column: TextColumn): RawBuilder<Uint8Array> =>
  sql<Uint8Array>`cast(${sql.ref(column)} as blob)`

/** The text, or nothing when it is none. */
export function wholeText(bytes: Uint8Array): string | undefined {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes)
  } catch {
    return undefined
  }
}

/** For people to read: what is no letter shows as a mark. */
export const legibleText = (bytes: Uint8Array): string =>
  new TextDecoder('utf-8', { ignoreBOM: true }).decode(bytes)

export function storedName(kind: 'document' | 'job' | 'hash', bytes: Uint8Array): string {
  const name = wholeText(bytes)
  if (name !== undefined) return name
  const legible = legibleText(bytes)
  throw new StoreError(
    'store.nameDamaged',
    { kind, name: legible },
    `${kind}: name damaged, got ${legible}, expected UTF-8`,
  )
}
