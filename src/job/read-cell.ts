/** One cell: its text and its field to a value, or what is wrong with it. */
import { currenciesOf, read } from '#units'
import type { Field, Figure, Money, Ratio } from './field.ts'
import { limits } from './limits.ts'
import { nearest } from './nearest.ts'
import { type ProblemData, quote } from './problem.ts'
import { readClockTable } from './read-clock-table.ts'
import { isDate, isInstant } from './read-date.ts'
import { namesHours, readWeekdays } from './read-weekdays.ts'

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
      if (days) return good(days)
      return bad(namesHours(trimmed) ? 'job.weekdaysHours' : 'job.weekdays', text, { accepted: 'Mon-Fri' })
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
    case 'currency':
      return currency(trimmed)
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

/** A code that the list does not have, such as XXX for none, is taken as it stands. */
const currency = (text: string): CellReading => {
  if (/^[A-Z]{3}$/.test(text)) return good(text)
  const [code, ...others] = currenciesOf(text)
  if (code === undefined) return bad('job.noCurrency', text, { accepted: 'EUR' })
  return others.length === 0
    ? good(code)
    : bad('job.currencies', text, { accepted: [code, ...others].join(', ') })
}

/** To `HH:MM`, so that texts compare as times do. */
const timeOfDay = (text: string): CellReading => {
  const reading = read(text, 'clock')
  if (!reading.ok) return { ok: false, ...reading.fault }
  const minutes = Math.round(reading.quantity.value * 60)
  const two = (part: number): string => String(part).padStart(2, '0')
  return good(`${two(Math.floor(minutes / 60))}:${two(minutes % 60)}`)
}

/** What a price is for may stand behind it, where it is for nothing else. */
const behindPrice = {
  hour: /\s*(?:\/|\bper\b|\ban?\b)\s*(?:h|hr|hour)\.?$/i,
  piece: /\s*(?:\beach|\bapiece|(?:\/|\bper\b|\ba\b)\s*(?:piece|pc|pack|tin|can))\.?$/i,
} as const

const priceOf = ({ per }: Extract<Field, { readonly kind: 'money' }>, text: string): string =>
  per === undefined ? text : text.trimEnd().replace(behindPrice[per], '')

/** So much more hardener than base is mixed of nothing, but may be meant. */
const oddRatio = 3

const ratio = (parts: readonly number[], text: string): CellReading => {
  const value = { parts, text } satisfies Ratio
  const [base = 1, hardener = 0] = parts
  if (parts.length !== 2 || hardener <= oddRatio * base) return good(value)
  return { ok: true, value, note: { code: 'job.ratioOdd', data: { found: quote(text), base, hardener } } }
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
      : read(field.kind === 'money' ? priceOf(field, text) : text, field.kind, {
          ...(currency === undefined ? {} : { currency }),
        })
  if (!reading.ok) return { ok: false, ...reading.fault }
  const { value, about, parts, currency: paid } = reading.quantity
  if (field.kind === 'quantity') {
    return good({ value, text, certainty: about ? 'assumed' : 'measured' } satisfies Figure)
  }
  if (field.kind === 'ratio') return ratio(parts ?? [value], text)
  if (currency !== undefined && paid !== currency) return bad('job.currency', text, { accepted: currency })
  return good({ coins: value, currency: paid as string, text } satisfies Money)
}
