/** A first look at somebody's own table: what its columns are, as far as it says so itself. */
import { linesOf, mostLineLength, splitLine } from '../weather-rows.ts'
import { anyHead, findHead, type TableHead } from './table-head.ts'
import { columnKeys, type TableColumn, type TableHints, type TableLook } from './table-mapping.ts'
import { readNumber } from './table-numbers.ts'
import { orderOf, readWritten, type WrittenTime } from './table-time.ts'

const samplesKept = 5
/** Rows looked at for the order of day and month. */
const rowsLookedAt = 5000

export type LookedAt = { readonly head: TableHead; readonly look: TableLook }

/** Undefined when there is no table with a time and a figure; once a person says what its columns are, with any names. */
export function lookAt(text: string, hints: TableHints): LookedAt | undefined {
  const head = findHead(text) ?? (hints.columns === undefined ? undefined : anyHead(text))
  if (head === undefined) return undefined
  const samples: (readonly string[])[] = []
  const times: WrittenTime[] = []
  const columns = withHints(head.columns, hints)
  let seen = 0
  for (const { line, text: row } of linesOf(text)) {
    if (line <= head.line || row.length > mostLineLength || row.trim() === '') continue
    if (++seen > rowsLookedAt) break
    const fields = splitLine(row, head.delimiter)
    if (fields === undefined) continue
    if (samples.length < samplesKept) samples.push(fields)
    const time = readWritten(timeText(fields, columns))
    if (time !== undefined) times.push(time)
  }
  return {
    head,
    look: {
      columns: columns.map((column, at) => withUnit(column, samples, at)),
      samples,
      dates: hints.dates ?? (times.length === 0 ? undefined : orderOf(times)),
      zoned: times.length > 0 && times.every(({ offset }) => offset !== undefined),
    },
  }
}

/** Date and clock in one text, from one column or two. */
export function timeText(fields: readonly string[], columns: readonly TableColumn[]): string {
  const at = (to: string) => fields[columns.findIndex((column) => column.to === to)]?.trim() ?? ''
  const whole = at('time')
  return whole === '' ? `${at('date')} ${at('clock')}`.trim() : whole
}

function withHints(columns: readonly TableColumn[], hints: TableHints): readonly TableColumn[] {
  const keys = columnKeys(columns.map(({ name }) => name))
  const said = (at: number) =>
    Object.hasOwn(hints.columns ?? {}, keys[at]!) ? hints.columns?.[keys[at]!] : undefined
  const taken = new Set(columns.flatMap((_, at) => said(at)?.to ?? []))
  return columns.map((column, at) => {
    const word = said(at)
    if (word !== undefined) return { name: column.name, to: word.to, unit: word.unit || column.unit }
    // What a person says of one column takes it from the one that was guessed.
    return taken.has(column.to) ? { ...column, to: 'ignore', unit: '' } : column
  })
}

/** A unit that stands behind every figure says as much as one in the name. */
function withUnit(column: TableColumn, samples: readonly (readonly string[])[], at: number): TableColumn {
  if (column.unit !== '') return column
  const units = new Set(samples.map((fields) => readNumber(fields[at] ?? '')?.unit ?? ''))
  const [unit = ''] = units
  return units.size === 1 && unit !== '' ? { ...column, unit } : column
}
