/** Words and figures for one paper: the reader's units, locale and clock, with spaces that are the same everywhere. */
import type { Certainty } from '#core/note'
import type { Plan } from '#plan'
import { writeAs } from '#units'
import { createWords, type WordsData } from '#words'
import type { Figure } from './figure.ts'
import { noteText } from './note-text.ts'
import type { PaperJob } from './types.ts'

export type Say = {
  readonly sentence: (code: string, data?: WordsData) => string
  /** A note, with the steps it names in words. */
  readonly note: (note: Plan['notes'][number]) => string
  readonly label: (key: string) => string
  /** The value with its unit by the suffix of its key. */
  readonly figure: (key: string, value: number) => string
  readonly sure: (key: string, value: number, certainty: Certainty) => Figure
  /** Hours of work, never as days: `265.5 h`. */
  readonly hours: (hours: number) => string
  /** Measured in cups and on scales: always in ml and g, which every cup and scale has. */
  readonly millilitres: (ml: number, decimals: number) => string
  readonly grams: (g: number) => string
  /** A bare number with so many decimals. */
  readonly digits: (value: number, decimals: number) => string
  /** `2027-05-13` as the reader writes it. */
  readonly date: (isoDate: string) => string
  /** Time of day of a minute since 1970, in the zone of the place. */
  readonly time: (minute: number) => string
  /** The reader's clock counts to twelve. */
  readonly hour12: boolean
  /** Date, YYYY-MM-DD, of a minute in the zone of the place. */
  readonly dateOf: (minute: number) => string
  /** Minutes since local midnight by the wall clock, 0 to 1439. */
  readonly clockOf: (minute: number) => number
}

export function createSay(plan: Plan, job: PaperJob): Say {
  const { timeZone } = plan.days
  const currency = plan.money?.currency
  const words = createWords({
    locale: job.locale,
    system: job.units,
    timeZone,
    ...(currency ? { currency } : {}),
  })
  const parts = partsIn(timeZone)
  const sentence: Say['sentence'] = (code, data = {}) => evenSpaces(words.sentence(code, data))
  const figure: Say['figure'] = (key, value) => evenSpaces(words.figure(key, value))
  return {
    sentence,
    figure,
    note: (note) => noteText(plan, note, { sentence }),
    label: words.label,
    sure: (key, value, certainty) => ({ text: figure(key, value), certainty }),
    hours: (hours) => sentence('paper.workHours', { count: Math.round(hours * 100) / 100 }),
    millilitres: (ml, decimals) => evenSpaces(writeAs(ml * 1e-6, 'ml', { locale: job.locale, decimals })),
    grams: (g) => evenSpaces(writeAs(g * 1e-3, 'g', { locale: job.locale, decimals: g < 20 ? 1 : 0 })),
    digits: (value, decimals) => digits(value, decimals, job.locale),
    date: (isoDate) => evenSpaces(words.date(isoDate)),
    time: (minute) => evenSpaces(words.time(minute * 60_000, timeZone)).replaceAll(' ', '\u2009'),
    hour12: new Intl.DateTimeFormat(job.locale, { hour: 'numeric' }).resolvedOptions().hour12 === true,
    dateOf: (minute) => {
      const { year, month, day } = parts(minute)
      return `${year}-${month}-${day}`
    },
    clockOf: (minute) => {
      const { hour, minute: past } = parts(minute)
      return Number(hour) * 60 + Number(past)
    },
  }
}

const digits = (value: number, decimals: number, locale: string): string =>
  evenSpaces(writeAs(value * 1e-6, 'ml', { locale, decimals }).split('\u2009')[0] ?? '')

/** Engines differ in the space they put before `am`; a thin one stands for all of them. */
const evenSpaces = (text: string): string => text.replace(/[\u00a0\u202f]/g, '\u2009')

type DateParts = Readonly<Record<'year' | 'month' | 'day' | 'hour' | 'minute', string>>

function partsIn(timeZone: string): (minute: number) => DateParts {
  const format = new Intl.DateTimeFormat('en-GB', {
    timeZone,
    hourCycle: 'h23',
    year: 'numeric',
    month: '2-digit',
    day: '2-digit',
    hour: '2-digit',
    minute: '2-digit',
  })
  return (minute) =>
    Object.fromEntries(
      format.formatToParts(minute * 60_000).map(({ type, value }) => [type, value]),
    ) as DateParts
}
