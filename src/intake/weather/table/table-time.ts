/** Dates and clocks as loggers write them: any order, one or two fields, twelve or twenty-four hours. */
import type { DateOrder } from './table-mapping.ts'

export type WrittenTime = {
  /** The three numbers of the date in the order in which they stand. */
  readonly date: readonly [number, number, number]
  /** How many digits the first has: four make it a year. */
  readonly yearFirst: boolean
  readonly separator: string
  readonly minutes: number
  readonly seconds: number
  /** Minutes east of UTC, where the text says it. */
  readonly offset: number | undefined
}

const dateForm = String.raw`(\d{1,4})([-/. ])(\d{1,2})\2\s?(\d{1,4})`
const clockForm = String.raw`(\d{1,2})[:.h](\d{2})(?:[:.](\d{2})(?:[.,]\d{1,6})?)?\s*([ap])?\.?\s?(?:m\b\.?)?`
const offsetForm = String.raw`\s*(?:(Z|UTC|GMT)|(?:UTC|GMT)?([+-])(\d{1,2}):?(\d{2})?)?`
const form = new RegExp(`^${dateForm}[T,]?\\s*${clockForm}${offsetForm}$`, 'i')

/** Undefined when it is no date, or no hour that there is. */
export function readWritten(text: string): WrittenTime | undefined {
  const parts = form.exec(text)
  if (parts === null || text.length > 60) return undefined
  const [, first = '', separator = '', second = '', third = ''] = parts
  const hour = clockHour(Number(parts[5] ?? 0), parts[8])
  const minute = Number(parts[6] ?? 0)
  const seconds = Number(parts[7] ?? 0)
  if (hour === undefined || minute > 59 || seconds > 59) return undefined
  const offset = parts[9] !== undefined ? 0 : parts[10] === undefined ? undefined : offsetOf(parts)
  if (Number.isNaN(offset)) return undefined
  const date = [Number(first), Number(second), Number(third)] as const
  return { date, yearFirst: first.length === 4, separator, minutes: hour * 60 + minute, seconds, offset }
}

/** Twelve at night is nought, twelve at noon is twelve. */
function clockHour(hour: number, half: string | undefined): number | undefined {
  if (half === undefined) return hour < 24 ? hour : undefined
  if (hour < 1 || hour > 12) return undefined
  return (hour % 12) + (half.toLowerCase() === 'p' ? 12 : 0)
}

function offsetOf(parts: RegExpExecArray): number {
  const minutes = Number(parts[11]) * 60 + Number(parts[12] ?? 0)
  return minutes > 14 * 60 ? Number.NaN : (parts[10] === '-' ? -1 : 1) * minutes
}

/** As if the clock stood in UTC, ms since 1970; undefined when there is no such day. */
export function asUtc({ date, minutes, seconds }: WrittenTime, order: DateOrder): number | undefined {
  const [a, b, c] = date
  const [year, month, day] = order === 'ymd' ? [a, b, c] : order === 'dmy' ? [c, b, a] : [c, a, b]
  const full = year < 100 ? 2000 + year : year
  if (full < 1900 || full >= 2200 || month < 1 || month > 12 || day < 1) return undefined
  const midnight = Date.UTC(full, month - 1, day)
  if (new Date(midnight).getUTCDate() !== day) return undefined
  return midnight + minutes * 60_000 + seconds * 1000
}

/**
 * In which order the dates of a file stand: the one in which most of them are days that there are.
 * @returns the order, or undefined when day and month could be taken for each other throughout.
 */
export function orderOf(times: readonly WrittenTime[]): DateOrder | undefined {
  const moments = (['ymd', 'dmy', 'mdy'] as const).map((order) => ({
    order,
    real: times.flatMap((time) => {
      const atMs = time.yearFirst === (order === 'ymd') ? asUtc(time, order) : undefined
      return atMs === undefined ? [] : [atMs]
    }),
  }))
  const best = Math.max(...moments.map(({ real }) => real.length))
  const [first, second] = moments.filter(({ real }) => real.length === best)
  if (best === 0 || first === undefined) return undefined
  if (second === undefined) return first.order
  // Points part day, month and year in this order wherever they part them at all.
  if (times[0]?.separator === '.') return 'dmy'
  // Read the wrong way, days that follow each other lie months apart.
  const [one, other] = [spanOf(first.real), spanOf(second.real)]
  if (one < other / 2) return first.order
  return other < one / 2 ? second.order : undefined
}

function spanOf(moments: readonly number[]): number {
  const least = moments.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY)
  return moments.reduce((a, b) => Math.max(a, b), 0) - least
}
