/** Writes single values for one reader: quantities through `#units`, dates and times of day in their time zone. */
import { dimensions, type UnitSystem, write, writeAs, writeMoney } from '#units'
import { type QuantityKey, quantityKey } from './quantity-key.ts'

export type Reader = {
  /** BCP 47 tag, for example `en-GB`. */
  readonly locale: string
  readonly system: UnitSystem
  /** Time zone of the place, for moments whose data names none; else UTC. */
  readonly timeZone?: string
  /** ISO 4217 code, for coins whose data names none. */
  readonly currency?: string
}

/** Values beside the one written that say how: `currency`, `timeZone`, `dimension`. */
export type Beside = Readonly<Record<string, unknown>>

/** How finely a figure is written: significant digits, or exact decimals with their zeros. */
export type Precision = { readonly digits?: number; readonly decimals?: number }

export type Writer = {
  /** The value with its unit by the suffix of its key; a count or name as it stands. */
  readonly figure: (key: string, value: number | string, beside?: Beside, as?: Precision) => string
  /** Date and time of day of a moment in ms since 1970. */
  readonly moment: (atMs: number, timeZone?: string) => string
  /** Time of day of a moment in ms since 1970. */
  readonly time: (atMs: number, timeZone?: string) => string
  /** A calendar date written `2027-04-12`. */
  readonly date: (isoDate: string) => string
}

export function createWriter(given: Reader): Writer {
  const reader = { ...given, locale: knownLocale(given.locale) }
  const formats = dateFormats(reader.locale)
  const zone = (timeZone?: string): string => timeZone ?? reader.timeZone ?? universal
  const moment = (atMs: number, timeZone?: string): string => formats('moment', zone(timeZone), atMs)
  const time = (atMs: number, timeZone?: string): string => formats('time', zone(timeZone), atMs)
  const date = (isoDate: string): string => {
    const atMs = Date.parse(`${isoDate}T12:00:00Z`)
    return Number.isNaN(atMs) ? isoDate : formats('date', universal, atMs)
  }
  const figure: Writer['figure'] = (key, value, beside = {}, as = {}) => {
    const found = quantityKey(key) ?? boundKey(key, beside.dimension)
    if (found === undefined) return plain(value, { ...reader, ...as })
    if (typeof value === 'string') return found.writtenAs.kind === 'date' ? date(value) : value
    return orPlain(
      () => written(found, value, { reader: { ...reader, ...as }, beside, moment }),
      String(value),
    )
  }
  return { figure, moment, time, date }
}

/** A tag that is none is read as English, day before month. */
function knownLocale(locale: string): string {
  try {
    return Intl.getCanonicalLocales(locale)[0] ?? 'en-GB'
  } catch {
    return 'en-GB'
  }
}

const boundKeys: ReadonlySet<string> = new Set(['value', 'over', 'atLeast', 'atMost'])

/** A refused figure and its bounds stand in the unit of its dimension, which is named beside them. */
function boundKey(key: string, dimension: unknown): QuantityKey | undefined {
  const known = dimensions.find((each) => each === dimension)
  if (known === undefined || !boundKeys.has(key)) return undefined
  return { suffix: key, writtenAs: { kind: 'dimension', dimension: known, toSi: 1 } }
}

type Setting = {
  readonly reader: Reader & Precision
  readonly beside: Beside
  readonly moment: Writer['moment']
}

function written(
  { suffix, writtenAs }: QuantityKey,
  value: number,
  { reader, beside, moment }: Setting,
): string {
  switch (writtenAs.kind) {
    case 'dimension':
      return value === 0 && reader.system === 'metric' && suffix in zeroUnits
        ? writeAs(0, zeroUnits[suffix] ?? '', { locale: reader.locale })
        : write(value * writtenAs.toSi, writtenAs.dimension, reader)
    case 'hours':
      return hoursOnly(value, reader)
    case 'tape':
      return onTape(value, reader)
    case 'days':
      return writeAs(value * 24, 'd', { locale: reader.locale })
    case 'symbol':
      return `${write(value, 'number', reader)}\u2009${writtenAs.symbol}`
    case 'money':
      return money(value, text(beside.currency) ?? reader.currency, reader)
    case 'moment':
      return moment(value, text(beside.timeZone))
    case 'date':
      return String(value)
  }
}

const sixteenthM = 0.0254 / 16

/** Nobody strikes a line to a tenth of a millimetre, nor to a centimetre. */
const onTape = (metres: number, { system, locale }: Reader): string =>
  system === 'us'
    ? write(Math.round(metres / sixteenthM) * sixteenthM, 'length', { system, locale })
    : writeAs(Math.round(metres * 1000) / 1000, 'mm', { locale, decimals: 0 })

/** Nothing is written in the unit of its key: 0 mm, not 0 µm. */
const zeroUnits: Readonly<Record<string, string>> = { M: 'm', Mm: 'mm', Um: 'µm', M2: 'm²', M3: 'L', L: 'L' }

/** `178 h 15 min`, whatever its size. */
function hoursOnly(hours: number, reader: Reader): string {
  const minutes = Math.round(Math.abs(hours) * 60)
  if (minutes < 48 * 60) return write(hours, 'time', reader)
  const { locale } = reader
  const whole = writeAs(Math.sign(hours) * Math.floor(minutes / 60), 'h', { locale, digits: 9 })
  return minutes % 60 === 0 ? whole : `${whole}\u00a0${writeAs((minutes % 60) / 60, 'min', { locale })}`
}

// Without a currency the coins are written as they are counted: no guess at how many make a unit.
const money = (coins: number, currency: string | undefined, reader: Reader): string =>
  currency === undefined ? write(coins, 'number', reader) : writeMoney(coins, currency, reader.locale)

const plain = (value: number | string, reader: Reader & Precision): string =>
  typeof value === 'number'
    ? orPlain(() => write(value, 'number', { ...reader, system: 'metric' }), String(value))
    : value

const text = (value: unknown): string | undefined => (typeof value === 'string' ? value : undefined)

/** A value that cannot be written (not finite, an unknown currency) stands as it is. */
function orPlain(write: () => string, value: string): string {
  try {
    return write()
  } catch {
    return value
  }
}

const styles = {
  moment: {
    weekday: 'short',
    day: 'numeric',
    month: 'short',
    year: 'numeric',
    hour: '2-digit',
    minute: '2-digit',
  },
  time: { hour: '2-digit', minute: '2-digit' },
  date: { weekday: 'short', day: 'numeric', month: 'short', year: 'numeric' },
} as const satisfies Readonly<Record<string, Intl.DateTimeFormatOptions>>

type Style = keyof typeof styles

const universal = 'UTC'

/** Formats of one locale, made once for each style and zone; an unknown zone is read as universal time. */
function dateFormats(locale: string): (style: Style, timeZone: string, atMs: number) => string {
  const made = new Map<string, Intl.DateTimeFormat>()
  return (style, timeZone, atMs) => {
    const key = `${style} ${timeZone}`
    const format = made.get(key) ?? dateFormat(locale, style, timeZone)
    made.set(key, format)
    return orPlain(() => format.format(atMs), String(atMs))
  }
}

function dateFormat(locale: string, style: Style, timeZone: string): Intl.DateTimeFormat {
  try {
    return new Intl.DateTimeFormat(locale, { ...styles[style], timeZone })
  } catch {
    return new Intl.DateTimeFormat(locale, { ...styles[style], timeZone: universal })
  }
}
