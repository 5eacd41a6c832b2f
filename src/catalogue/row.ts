/**
 * A row of a shipped table: cells as a person would write them, and beside every cell where it comes from.
 * A cell without a published source says `assumed`.
 */
import type { Fields } from '#job'

export type Origin = {
  /** What was read, or `assumed`; `assumed, …` names what the guess leans on. */
  readonly source: string
  /** `typical` when somebody published it, `assumed` when nobody did. */
  readonly certainty: 'typical' | 'assumed'
  /** Smallest and largest figure seen in the source, written as the cell is. */
  readonly seen?: readonly [string, string]
}

export type RowCells<F extends Fields> = { readonly [K in keyof F]?: string }
export type RowSources<F extends Fields> = { readonly [K in keyof F]?: Origin }

export type Row<F extends Fields> = {
  /** By the keys of the table's fields; read as a section of the job document is. */
  readonly cells: RowCells<F>
  /** Origin of every cell, by the same keys. */
  readonly sources: RowSources<F>
  /** Origin of the row's first figures, and the weakest certainty of all of them. */
  readonly source: string
  readonly certainty: Origin['certainty']
}

/** A table that ships: how its cells are read, and its rows by id. */
export type Table<F extends Fields, Id extends string> = Readonly<Record<Id, Row<F>>>

type SeenOf<F extends Fields> = { readonly [K in keyof F]?: readonly [string, string] }

/** Cells that share one origin. */
export type Group<F extends Fields> = {
  readonly source: string
  readonly certainty: Origin['certainty']
  readonly cells: RowCells<F>
  readonly seen: SeenOf<F>
}

export type RowWriter<F extends Fields> = {
  /** Cells that a source gives; `seen` is the range it shows. */
  readonly from: (source: string, cells: RowCells<F>, seen?: SeenOf<F>) => Group<F>
  /** Cells that are common practice without a source. */
  readonly assumed: (cells: RowCells<F>, seen?: SeenOf<F>) => Group<F>
  /** Cells guessed from a record that does not quite fit; `basis` names it. */
  readonly guessedFrom: (basis: string, cells: RowCells<F>, seen?: SeenOf<F>) => Group<F>
  readonly row: (first: Group<F>, ...others: readonly Group<F>[]) => Row<F>
}

/** The words a table of these fields is written with. */
export function rowWriter<F extends Fields>(): RowWriter<F> {
  return {
    from: (source, cells, seen = {}) => ({ source, certainty: 'typical', cells, seen }),
    assumed: (cells, seen = {}) => ({ source: 'assumed', certainty: 'assumed', cells, seen }),
    guessedFrom: (basis, cells, seen = {}) => ({
      source: `assumed, from ${basis}`,
      certainty: 'assumed',
      cells,
      seen,
    }),
    row: (first, ...others) => joinGroups([first, ...others]),
  }
}

function joinGroups<F extends Fields>(groups: readonly [Group<F>, ...Group<F>[]]): Row<F> {
  const cells: Record<string, string> = {}
  const sources: Record<string, Origin> = {}
  for (const group of groups) {
    for (const [field, text] of Object.entries(group.cells)) {
      if (field in cells) throw new Error(`catalogue row: cell twice, got ${field}, expected each once`)
      cells[field] = String(text)
      sources[field] = originOf(group, field)
    }
  }
  return {
    cells: cells as RowCells<F>,
    sources: sources as RowSources<F>,
    source: groups[0].source,
    certainty: groups.some((group) => group.certainty === 'assumed') ? 'assumed' : 'typical',
  }
}

function originOf<F extends Fields>(group: Group<F>, field: string): Origin {
  const { source, certainty } = group
  const seen = (group.seen as Readonly<Record<string, readonly [string, string]>>)[field]
  return seen === undefined ? { source, certainty } : { source, certainty, seen }
}
