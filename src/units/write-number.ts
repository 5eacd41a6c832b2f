/**
 * Writes a number: the decimal sign of the locale, a true minus, and no grouping below 10 000.
 * Groups are parted by a narrow no-break space, never by a comma or point, so that the text has one reading.
 */

export type NumberStyle = {
  readonly locale: string
  /** Significant digits, whole digits never rounded away, zeros at the end left off. */
  readonly digits: number
  /** Digits after the decimal sign, exactly; overrides `digits`. */
  readonly decimals?: number | undefined
  /** At most this many digits after the decimal sign, zeros at the end left off; overrides `digits`. */
  readonly atMostDecimals?: number | undefined
}

/** Outside these sizes a number is written with an exponent: `1.2e18`. */
const largest = 1e15
const smallest = 1e-9

const narrowSpace = '\u202f'
const minus = '\u2212'

/** The number as text. */
export const writeNumber = (value: number, style: NumberStyle): string => {
  const text = writeDigits(plainNumber(Math.abs(value), style), style.locale)
  return value < 0 && /[1-9]/.test(text) ? minus + text : text
}

/** The value that the written text stands for. */
export const roundedNumber = (value: number, style: NumberStyle): number =>
  Math.sign(value) * Number(plainNumber(Math.abs(value), style))

/** Plain digits with a point, as the locale writes them. */
export const writeDigits = (plain: string, locale: string): string => {
  const sign = decimalSign(locale)
  const [mantissa = '', power] = (sign === ',' ? withOneReading(plain) : plain).split('e')
  const [head = '', tail = ''] = mantissa.split('.')
  const decimal = tail === '' ? '' : sign + tail
  return grouped(head) + decimal + (power === undefined ? '' : `e${power}`)
}

/** Digits with a point, before the locale is considered. */
const plainNumber = (size: number, { digits, decimals, atMostDecimals }: NumberStyle): string => {
  const tiny = size > 0 && size < smallest && decimals === undefined && atMostDecimals === undefined
  if (size >= largest || tiny) return scientific(size, digits)
  if (decimals !== undefined) return size.toFixed(decimals)
  return trimZeros(size.toFixed(atMostDecimals ?? decimalsFor(size, digits)))
}

const scientific = (size: number, digits: number): string => {
  const [mantissa = '', power = ''] = size.toExponential(digits - 1).split('e')
  return `${trimZeros(mantissa)}e${power.replace('+', '')}`
}

const decimalsFor = (size: number, digits: number): number => {
  if (size === 0) return 0
  const power = Number(size.toExponential(digits - 1).split('e')[1])
  return Math.max(0, digits - 1 - power)
}

const trimZeros = (text: string): string =>
  text.includes('.') ? text.replace(/0+$/, '').replace(/\.$/, '') : text

/** `1,234` has two readings where the comma is decimal: one zero more leaves one. */
const withOneReading = (plain: string): string => plain.replace(/^([1-9]\d{0,2}\.\d{3})(?=e|$)/, '$10')

/** Not by a new `Intl.NumberFormat`, which costs a hundred times as much and is wanted for every number. */
const decimalSign = (locale: string): ',' | '.' => ((0.5).toLocaleString(locale).includes(',') ? ',' : '.')

const grouped = (head: string): string =>
  head.length < 5 ? head : head.replace(/\B(?=(?:\d{3})+$)/g, narrowSpace)
