/** What a person says of a table while they say it: preset with what was guessed, and what the reader is told of it. */
import {
  columnKeys,
  type DateOrder,
  type TableColumn,
  type TableHints,
  type TableLook,
  tableChoices,
} from '#intake'

export type TableSaid = {
  readonly columns: readonly TableColumn[]
  readonly zone: string
  readonly dates: DateOrder | ''
}

/** @param at.zone clock of the job, which a logger in its shed most likely keeps. */
export const firstSaid = (at: { readonly table: TableLook; readonly zone: string }): TableSaid => ({
  columns: at.table.columns.map((column) => ({ ...column, unit: unitAs(column) })),
  zone: at.zone,
  dates: at.table.dates ?? '',
})

export const unitsFor = (to: string): readonly string[] =>
  tableChoices.find((choice) => choice.to === to)?.units ?? []

/** As it can be chosen, where it is one of those; else as it stands, so that nothing that was read is lost. */
function unitAs({ to, unit }: TableColumn): string {
  const plain = (text: string): string => text.toLowerCase().replaceAll(/[\s°]/g, '')
  return unitsFor(to).find((one) => plain(one) === plain(unit)) ?? unit
}

/** One column is something else: its unit goes unless it fits, and what another column was is taken from it. */
export function withTarget(said: TableSaid, at: number, to: string): TableSaid {
  const units = unitsFor(to)
  const columns = said.columns.map((column, index): TableColumn => {
    if (index !== at) return column.to === to && to !== 'ignore' ? { ...column, to: 'ignore' } : column
    const unit = units.includes(column.unit) ? column.unit : units.length === 1 ? units[0]! : ''
    return { ...column, to, unit }
  })
  return { ...said, columns }
}

export const withUnit = (said: TableSaid, at: number, unit: string): TableSaid => ({
  ...said,
  columns: said.columns.map((column, index) => (index === at ? { ...column, unit } : column)),
})

export function hintsOf({ columns, zone, dates }: TableSaid, zoned: boolean): TableHints {
  const keys = columnKeys(columns.map(({ name }) => name))
  return {
    columns: Object.fromEntries(columns.map(({ to, unit }, at) => [keys[at]!, { to, unit }])),
    ...(zoned || zone.trim() === '' ? {} : { zone: zone.trim() }),
    ...(dates === '' ? {} : { dates }),
  }
}

/** Of columns of one name which it is: where it stands in the table, from 1, and its first figure. */
export function toldApart(
  { columns }: TableSaid,
  { samples }: TableLook,
  at: number,
): { readonly at: number; readonly first: string } | undefined {
  const { name } = columns[at]!
  const alike = columns.filter((column) => column.name === name).length > 1
  const first = samples.map((row) => row[at]?.trim() ?? '').find((text) => text !== '')
  return alike ? { at: at + 1, first: first ?? '' } : undefined
}
