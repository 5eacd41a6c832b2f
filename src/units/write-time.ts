/** Writes a duration: `45 s`, `22.5 min`, `2 h 30 min`, `3 d 4 h`, carrying what rounds up. */

import { type NumberStyle, roundedNumber, writeNumber } from './write-number.ts'

const thin = '\u2009'
const noBreak = '\u00a0'

/** From here on days and hours are written instead of hours and minutes. */
const longHours = 48

/** From here on, a century, only days. */
const longest = 1e6

export const writeTime = (hours: number, style: NumberStyle): string => {
  const size = Math.abs(hours)
  const text = timeText(size, style)
  return hours < 0 && /[1-9]/.test(text) ? `\u2212${text}` : text
}

const timeText = (hours: number, style: NumberStyle): string => {
  if (hours === 0) return `0${thin}min`
  if (roundedNumber(hours * 3600, style) < 60) return `${writeNumber(hours * 3600, style)}${thin}s`
  if (roundedNumber(hours * 60, style) < 60) return `${writeNumber(hours * 60, style)}${thin}min`
  if (hours >= longest) return `${writeNumber(hours / 24, style)}${thin}d`
  const minutes = Math.round(hours * 60)
  if (minutes < longHours * 60) return two({ whole: minutes, per: 60, units: ['h', 'min'] }, style)
  return two({ whole: Math.round(hours), per: 24, units: ['d', 'h'] }, style)
}

type Two = { readonly whole: number; readonly per: number; readonly units: readonly [string, string] }

const two = ({ whole, per, units: [large, small] }: Two, style: NumberStyle): string => {
  const rest = whole % per
  const first = `${writeNumber((whole - rest) / per, { ...style, decimals: 0 })}${thin}${large}`
  return rest === 0 ? first : `${first}${noBreak}${rest}${thin}${small}`
}
