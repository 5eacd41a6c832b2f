/** What a person may say that a column of a table is, and in which units. */
import { weatherColumns } from '../weather-columns.ts'
import { unitChoices } from '../weather-units.ts'

export type TableChoice = { readonly to: string; readonly units: readonly string[] }

/** Times first, then the columns of a series as they are written; what is not used comes last. */
export const tableChoices: readonly TableChoice[] = [
  ...['time', 'date', 'clock'].map((to) => ({ to, units: [] })),
  ...weatherColumns.map(({ name, quantity }) => ({ to: name, units: unitChoices[quantity] })),
  { to: 'ignore', units: [] },
]
