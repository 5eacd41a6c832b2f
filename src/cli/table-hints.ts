/** What the flags say of a table that is not in our own form. */
import type { DateOrder, TableHints } from '#intake'
import { type Flag, type Flags, textFlag } from './command.ts'
import { CliFault } from './fault.ts'
import { plainWords } from './plain-words.ts'

export const tableFlags: readonly Flag[] = [
  {
    flags: '--time-zone <name>',
    doc: 'clock of a table whose times do not say it: Europe/Paris, or +01:00',
  },
  { flags: '--dates <order>', doc: 'dmy, mdy or ymd, where day and month could be taken for each other' },
  {
    flags: '--columns <list>',
    doc: 'what columns of a table are, for example "Temp = airC °F; Hum = humidityPct %; Probe = ignore"',
  },
]

export function hintsOf(flags: Flags): TableHints {
  const zone = textFlag(flags, 'timeZone')
  const dates = textFlag(flags, 'dates')
  const columns = textFlag(flags, 'columns')
  if (dates !== undefined && !isOrder(dates))
    throw new CliFault([plainWords.sentence('cli.badDates', { text: dates })], 2)
  return {
    ...(zone === undefined ? {} : { zone }),
    ...(dates === undefined ? {} : { dates }),
    ...(columns === undefined ? {} : { columns: columnsOf(columns) }),
  }
}

const isOrder = (text: string): text is DateOrder => ['ymd', 'dmy', 'mdy'].includes(text)

/** `NAME = WHAT UNIT; …`; the unit may be left out where the column says it. */
function columnsOf(text: string): NonNullable<TableHints['columns']> {
  const parts = text.split(';').map((part) => part.trim())
  return Object.fromEntries(
    parts
      .filter((part) => part !== '')
      .map((part) => {
        const found = /^(.+?)\s*=\s*([A-Za-z0-9]+)(?:\s+(\S+))?$/.exec(part)
        if (found === null) throw new CliFault([plainWords.sentence('cli.badColumn', { text: part })], 2)
        return [found[1]!, { to: found[2]!, unit: found[3] ?? '' }] as const
      }),
  )
}
