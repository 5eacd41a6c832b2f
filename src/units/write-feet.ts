/** Writes a length as feet, inches and sixteenths: `25 ft 4 3/16 in`. */

import { inchesPerFoot, metresPerInch } from './inch.ts'
import { type NumberStyle, roundedNumber, writeNumber } from './write-number.ts'

const thin = '\u2009'
const noBreak = '\u00a0'
const perInch = 16

/** In inches: shorter lengths are written in mils, those too long for any yard in miles. */
const shortest = 1 / 4
const longest = 1e7

/** Whether a length in metres is written in feet and inches; a short one is when it is whole sixteenths. */
export const suitsFeet = (metres: number, style: NumberStyle): boolean => {
  const inches = Math.abs(metres) / metresPerInch
  const written = roundedNumber(inches * 1000, style) / 1000
  const size = Math.max(inches, written)
  return size === 0 || (size >= shortest && size < longest) || isEven(inches) || isEven(written)
}

const isEven = (inches: number): boolean => {
  const sixteenths = Math.round(inches * perInch)
  return sixteenths > 0 && inches < shortest && Math.abs(inches * perInch - sixteenths) < 1e-6
}

/** Rounds to the nearest sixteenth of an inch and carries: 11 31/32 in is 1 ft. */
export const writeFeet = (metres: number, style: NumberStyle): string => {
  const sixteenths = Math.round((Math.abs(metres) / metresPerInch) * perInch)
  const feet = Math.floor(sixteenths / (perInch * inchesPerFoot))
  const left = sixteenths - feet * perInch * inchesPerFoot
  const pieces = [
    ...(feet > 0 ? [`${writeNumber(feet, { ...style, decimals: 0 })}${thin}ft`] : []),
    ...(left > 0 || feet === 0 ? [`${inchesText(left)}${thin}in`] : []),
  ]
  return (metres < 0 && sixteenths > 0 ? '\u2212' : '') + pieces.join(noBreak)
}

const inchesText = (sixteenths: number): string => {
  const whole = Math.floor(sixteenths / perInch)
  const rest = sixteenths - whole * perInch
  if (rest === 0) return String(whole)
  const shared = commonDivisor(rest, perInch)
  const fraction = `${rest / shared}/${perInch / shared}`
  return whole === 0 ? fraction : `${whole}${noBreak}${fraction}`
}

const commonDivisor = (a: number, b: number): number => (b === 0 ? a : commonDivisor(b, a % b))
