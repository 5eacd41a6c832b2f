/** One cell: its text and its field to a value, or what is wrong with it. */
import { read } from '#units'
import type { Field, Figure, Money, Ratio } from './field.ts'
import { limits } from './limits.ts'
import { nearest } from './nearest.ts'
import { type ProblemData, quote } from './problem.ts'
import { readClockTable } from './read-clock-table.ts'
import { isDate, isInstant } from './read-date.ts'
import { readWeekdays } from './read-weekdays.ts'

export type CellFault = { readonly code: string; readonly data: ProblemData }
export type CellReading =
  | { readonly ok: true; readonly value: unknown; readonly note?: CellFault }
  | ({ readonly ok: false } & CellFault)

/** What a cell's meaning depends on besides its text. */
export type CellContext = { readonly currency: string | undefined }

const good = (value: unknown): CellReading => ({ ok: true, value })
const bad = (code: string, text: string, data: ProblemData = {}): CellReading => ({
  ok: false,
  code,
  data: { found: quote(text), ...data },
})

/** References are only cut into ids here; whether the items exist is seen when all sections are read. */
export const readCell = (field: Field, text: string, context: CellContext): CellReading => {
  if (text.length > limits.text) return bad('job.tooLong', text, { length: text.length, most: limits.text })
  const trimmed = text.trim()
  switch (field.kind) {
    case 'text':
      return field.pattern === undefined || new RegExp(`^(?:${field.pattern})$`).test(trimmed)
        ? good(field.pattern === undefined ? text : trimmed)
        : bad('job.pattern', text, { accepted: field.example ?? field.pattern })
    case 'choice':
      return choice(field.choices, trimmed)
    case 'count':
      return count(field, trimmed)
    case 'yesno':
      return yesNo(trimmed)
    case 'date':
      return isDate(trimmed) ? good(trimmed) : bad('job.date', text, { accepted: '2027-04-12' })
    case 'instant':
      return isInstant(trimmed)
        ? good(trimmed)
        : bad('job.instant', text, { accepted: '2027-04-14T09:30+02:00' })
    case 'timeOfDay':
      return timeOfDay(trimmed)
    case 'weekdays': {
      const days = readWeekdays(trimmed)
      return days ? good(days) : bad('job.weekdays', text, { accepted: 'Mon-Fri' })
    }
    case 'ref':
      return good(trimmed)
    case 'refs': {
      const ids = [...new Set(trimmed.split(/[\s,;]+/).filter((id) => id !== ''))]
      return ids.length > 0 ? good(ids) : bad('job.refs', text)
    }
    case 'clockTable': {
      const table = readClockTable(trimmed)
      if (!table.ok) return table
      const note = { code: 'job.clockOdd', data: { found: quote(text) } }
      return table.odd ? { ok: true, value: table.points, note } : good(table.points)
    }
    case 'quantity':
    case 'money':
    case 'ratio':
      return quantity(field, text, context)
  }
}

const fold = (text: string): string => text.toLowerCase().replaceAll("'", '’').replace(/\s+/g, ' ')

const choice = (choices: readonly string[], text: string): CellReading => {
  const folded = fold(text)
  const found = choices.find((each) => fold(each) === folded)
  if (found !== undefined) return good(found)
  const guess = nearest(text, choices)
  return bad('job.choice', text, { accepted: choices.join(', '), ...(guess ? { nearest: guess } : {}) })
}

const count = (
  { least, most }: { readonly least: number; readonly most: number },
  text: string,
): CellReading => {
  const value = /^\d{1,6}$/.test(text) ? Number(text) : Number.NaN
  return value >= least && value <= most ? good(value) : bad('job.count', text, { least, most })
}

const yesNo = (text: string): CellReading => {
  const lower = text.toLowerCase()
  if (lower === 'yes' || lower === 'true') return good(true)
  if (lower === 'no' || lower === 'false') return good(false)
  return bad('job.yesNo', text, { accepted: 'yes, no' })
}

/** To `HH:MM`, so that texts compare as times do. */
const timeOfDay = (text: string): CellReading => {
  const reading = read(text, 'clock')
  if (!reading.ok) return { ok: false, ...reading.fault }
  const minutes = Math.round(reading.quantity.value * 60)
  const two = (part: number): string => String(part).padStart(2, '0')
  return good(`${two(Math.floor(minutes / 60))}:${two(minutes % 60)}`)
}

type Measured = Extract<Field, { readonly kind: 'quantity' | 'money' | 'ratio' }>

const quantity = (field: Measured, text: string, { currency }: CellContext): CellReading => {
  const reading =
    field.kind === 'quantity'
      ? read(text, field.dimension, {
          ...(field.sign ? { sign: field.sign } : {}),
          ...(field.least === undefined ? {} : { atLeast: field.least }),
          ...(field.most === undefined ? {} : { atMost: field.most }),
        })
      : read(text, field.kind, currency === undefined ? {} : { currency })
  if (!reading.ok) return { ok: false, ...reading.fault }
  const { value, about, parts, currency: paid } = reading.quantity
  if (field.kind === 'quantity') {
    return good({ value, text, certainty: about ? 'assumed' : 'measured' } satisfies Figure)
  }
  if (field.kind === 'ratio') return good({ parts: parts ?? [value], text } satisfies Ratio)
  if (currency !== undefined && paid !== currency) return bad('job.currency', text, { accepted: currency })
  return good({ coins: value, currency: paid as string, text } satisfies Money)
}
