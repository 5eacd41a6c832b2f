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
  const plain = plainNumber(Math.abs(value), style)
  const sign = value < 0 && /[1-9]/.test(plain) ? minus : ''
  const [mantissa = '', power] = plain.split('e')
  const [head = '', tail = ''] = mantissa.split('.')
  const decimal = tail === '' ? '' : decimalSign(style.locale) + tail
  return sign + grouped(head) + decimal + (power === undefined ? '' : `e${power}`)
}

/** The value that the written text stands for. */
export const roundedNumber = (value: number, style: NumberStyle): number =>
  Math.sign(value) * Number(plainNumber(Math.abs(value), style))

/** Digits with a point, before the locale is considered. */
const plainNumber = (size: number, style: NumberStyle): string => {
  if (size >= largest || (size > 0 && size < smallest && style.decimals === undefined))
    return scientific(size, style)
  if (style.decimals !== undefined) return oneReading(size, size.toFixed(style.decimals), style.locale)
  const decimals = style.atMostDecimals ?? decimalsFor(size, style.digits)
  return oneReading(size, trimZeros(size.toFixed(decimals)), style.locale)
}

const scientific = (size: number, { digits, locale }: NumberStyle): string => {
  const [mantissa = '', power = ''] = size.toExponential(digits - 1).split('e')
  return `${oneReading(Number(mantissa), trimZeros(mantissa), locale)}e${power.replace('+', '')}`
}

const decimalsFor = (size: number, digits: number): number => {
  if (size === 0) return 0
  const power = Number(size.toExponential(digits - 1).split('e')[1])
  return Math.max(0, digits - 1 - power)
}

const trimZeros = (text: string): string =>
  text.includes('.') ? text.replace(/0+$/, '').replace(/\.$/, '') : text

/** `1,234` has two readings where the comma is decimal: a fourth digit leaves one. */
const oneReading = (size: number, text: string, locale: string): string => {
  const looksGrouped = /^[1-9]\d{0,2}\.\d{3}$/.test(text) && decimalSign(locale) === ','
  return looksGrouped ? size.toFixed(4) : text
}

const decimalSign = (locale: string): string => {
  const format = new Intl.NumberFormat(locale, { numberingSystem: 'latn', minimumFractionDigits: 1 })
  return format.formatToParts(0.5).find(({ type }) => type === 'decimal')?.value === ',' ? ',' : '.'
}

const grouped = (head: string): string =>
  head.length < 5 ? head : head.replace(/\B(?=(?:\d{3})+$)/g, narrowSpace)
