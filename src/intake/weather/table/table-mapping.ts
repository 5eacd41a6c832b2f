/** What the columns of somebody's own table are: guessed from their names, and put right by the person. */

export type DateOrder = 'ymd' | 'dmy' | 'mdy'

/** A column of our own (`airC`), or what else a column of a table may be. */
export type TableTarget = string | 'time' | 'date' | 'clock' | 'ignore'

export type TableColumn = {
  /** As the head of the table has it. */
  readonly name: string
  readonly to: TableTarget
  /** As a person writes it; empty while nobody has said it. */
  readonly unit: string
}

/** What a person says of a table: nothing here is guessed any more. */
export type TableHints = {
  /** Name in the time zone database, or an offset such as `+01:00`: of times that do not say it themselves. */
  readonly zone?: string
  readonly dates?: DateOrder
  /** By the name of the column, as `columnKeys` tells those of one name apart. */
  readonly columns?: Readonly<Record<string, { readonly to: TableTarget; readonly unit: string }>>
}

/** What a table looks like, for a person to say what is what. */
export type TableLook = {
  readonly columns: readonly TableColumn[]
  /** The first rows, field by field. */
  readonly samples: readonly (readonly string[])[]
  readonly dates: DateOrder | undefined
  /** The times say themselves how far they are from UTC. */
  readonly zoned: boolean
}

/**
 * What each column is called by: its name, and of several of one name from the second on `Temp #2`, counted from the left.
 * No two are alike.
 */
export function columnKeys(names: readonly string[]): readonly string[] {
  const taken = new Set(names)
  const seen = new Map<string, number>()
  return names.map((name) => {
    let nr = (seen.get(name) ?? 0) + 1
    while (nr > 1 && taken.has(`${name} #${nr}`)) nr++
    seen.set(name, nr)
    return nr === 1 ? name : `${name} #${nr}`
  })
}
