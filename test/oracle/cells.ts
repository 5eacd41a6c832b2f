/**
 * Readers for the few ways of writing that stand in the sample jobs. They know no more than those, and throw at
 * anything else, so that a sample that changes its writing is noticed.
 */
import type { CureRow } from './cure-clock.ts'

const inch = 0.0254
const foot = 0.3048
/** US liquid gallon, 231 cubic inches, m³. */
const gallon = 231 * inch ** 3

const lengths: Readonly<Record<string, number>> = {
  m: 1,
  mm: 1e-3,
  µm: 1e-6,
  ft: foot,
  in: inch,
  mil: inch / 1000,
}
const areas: Readonly<Record<string, number>> = { 'm²': 1, 'ft²': foot ** 2 }
const volumes: Readonly<Record<string, number>> = {
  L: 1e-3,
  ml: 1e-6,
  gal: gallon,
  qt: gallon / 4,
  'fl oz': gallon / 128,
}
const hoursOf: Readonly<Record<string, number>> = { d: 24, h: 1, min: 1 / 60 }

/** `3`, `2.5`, `1/32`, `1 1/2`. */
function plainNumber(text: string): number {
  let sum = 0
  for (const part of text.trim().split(/\s+/)) {
    const [over, under] = part.split('/')
    const value = under === undefined ? Number(over) : Number(over) / Number(under)
    if (!Number.isFinite(value)) throw new Error(`cell: number not read, got ${text}`)
    sum += value
  }
  return sum
}

/** Number and unit, or several of them added up: `25 ft 4 in`. */
function measure(text: string, units: Readonly<Record<string, number>>): number {
  let rest = text.replace(/^about\s+/, '').trim()
  let sum = 0
  while (rest !== '') {
    const found = /^([0-9][0-9./ ]*)\s*([^\d\s.,/]+(?:\s+oz)?)\s*/.exec(rest)
    const size = found?.[2] === undefined ? undefined : units[found[2]]
    if (!found?.[1] || size === undefined) throw new Error(`cell: measure not read, got ${text}`)
    sum += plainNumber(found[1]) * size
    rest = rest.slice(found[0].length)
  }
  return sum
}

export const metres = (text: string): number => measure(text, lengths)
export const squareMetres = (text: string): number => measure(text, areas)
export const cubicMetres = (text: string): number => measure(text, volumes)
export const hours = (text: string): number => measure(text, hoursOf)
export const kilogramsPerCubicMetre = (text: string): number =>
  1000 * measure(text.replace(/\s*kg\/L$/, ' L'), { L: 1 })

export function share(text: string): number {
  return text.trim().endsWith('%') ? plainNumber(text.trim().slice(0, -1)) / 100 : plainNumber(text)
}

export function celsius(text: string): number {
  const found = /^(-?[\d.]+)\s*°?\s*([CF])$/.exec(text.trim())
  if (!found) throw new Error(`cell: temperature not read, got ${text}`)
  const value = Number(found[1])
  return found[2] === 'C' ? value : (value - 32) / 1.8
}

/** Difference of two temperatures, K. */
export function kelvins(text: string): number {
  const found = /^([\d.]+)\s*°\s*([CF])$/.exec(text.trim())
  if (!found) throw new Error(`cell: temperature difference not read, got ${text}`)
  return Number(found[1]) / (found[2] === 'C' ? 1 : 1.8)
}

/** `9.8 m²/L` and `90 ft²/qt` as m² a m³; `50 ml/m²` turned round. */
export function coverage(text: string): number {
  const [over, under] = text.split('/')
  if (over === undefined || under === undefined) throw new Error(`cell: coverage not read, got ${text}`)
  const areaUnit = areas[under.trim()]
  if (areaUnit !== undefined) return areaUnit / cubicMetres(over)
  return squareMetres(over) / cubicMetres(`1 ${under}`)
}

/** `4 fl oz/qt`: volume in a volume. */
export function volumeShare(text: string): number {
  const [over, under] = text.split('/')
  if (over === undefined || under === undefined) throw new Error(`cell: volume share not read, got ${text}`)
  return cubicMetres(over) / cubicMetres(`1 ${under}`)
}

export const ratio = (text: string): readonly number[] => text.split(':').map(plainNumber)

/** `5C: 24h, 15C: 10h`, coldest first. */
export function cureRows(text: string): readonly CureRow[] {
  return text
    .split(',')
    .map((row) => {
      const [at, time] = row.split(':')
      if (at === undefined || time === undefined) throw new Error(`cell: table not read, got ${text}`)
      return { airC: celsius(at), hours: hours(time) }
    })
    .sort((a, b) => a.airC - b.airC)
}

/** Money of the samples has two decimals: coins are hundredths. */
export function coins(text: string): number {
  const found = /^(?:[A-Z]{3}|[$£€])\s*(\d+)(?:\.(\d{1,2}))?$/.exec(text.trim())
  if (!found) throw new Error(`cell: money not read, got ${text}`)
  return Number(found[1]) * 100 + Number((found[2] ?? '').padEnd(2, '0'))
}

/** Minutes after local midnight. */
export function clockMinutes(text: string): number {
  const [hour, minute] = text.split(':')
  return Number(hour) * 60 + Number(minute)
}

const days = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun']

/** ISO weekdays, Monday 1: `Mon-Fri`, `Tue, Thu`. */
export function weekdays(text: string): readonly number[] {
  return text.split(',').flatMap((part) => {
    const [from, until = from] = part.trim().split('-')
    const first = days.indexOf(from ?? '')
    const last = days.indexOf(until ?? '')
    if (first < 0 || last < first) throw new Error(`cell: weekdays not read, got ${text}`)
    return days.slice(first, last + 1).map((_day, index) => first + index + 1)
  })
}
