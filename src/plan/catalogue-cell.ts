/** Reads single cells of the shipped tables. */
import type { Certainty } from '#core/note'
import { type Fields, type Figure, readCell } from '#job'

export type AnyRow = {
  readonly cells: Readonly<Record<string, string | undefined>>
  readonly sources: Readonly<
    Record<
      string,
      | { readonly certainty: Certainty; readonly source: string; readonly seen?: readonly [string, string] }
      | undefined
    >
  >
}

/** A cell of the shipped tables; one that does not read is a fault of the program, so it fails loudly. */
export function cell(fields: Fields, row: AnyRow, key: string): unknown {
  const text = row.cells[key]
  const field = fields[key]
  if (text === undefined || !field) return undefined
  const reading = readCell(field, text, { currency: undefined })
  if (!reading.ok) throw new Error(`catalogue: cell does not read, got ${key} “${text}” (${reading.code})`)
  return reading.value
}

/** The SI value of a quantity; nothing where the row does not give it. */
export const figureIn = (fields: Fields, row: AnyRow, key: string): number | undefined =>
  (cell(fields, row, key) as Figure | undefined)?.value
