/** How large a scan is: its unit from its size, told with the reason, and one length that was taped on the boat. */

import type { Note } from '#core/note'
import { assumption, fault } from '../fault.ts'

export type ScanUnit = 'm' | 'mm' | 'cm' | 'in' | 'ft'

/** Metres in a unit of the file; inch and foot of 1959. */
export const metresIn: Readonly<Record<ScanUnit, number>> = {
  m: 1,
  mm: 0.001,
  cm: 0.01,
  in: 0.0254,
  ft: 0.3048,
}

/** Boats that people refit themselves, m; assumed. */
const [shortest, longest, usual] = [2, 25, 8]

export type UnitGuess = {
  readonly unit: ScanUnit
  /** How long the boat would be, m. */
  readonly length: number
  /** Other units that would make a boat of it too. */
  readonly others: readonly ScanUnit[]
  readonly notes: readonly Note[]
}

/**
 * The unit that makes a boat of the scan: of those between 2 and 25 m the one nearest to 8 m. Never silently: it comes
 * with a note. What the file itself says is taken instead. @param size the greatest extent, in the file's unit.
 */
export const guessUnit = (size: number, told: ScanUnit | undefined): UnitGuess => {
  const lengthIn = (unit: ScanUnit): number => size * metresIn[unit]
  const off = (unit: ScanUnit): number => Math.abs(Math.log(lengthIn(unit) / usual))
  const units = (Object.keys(metresIn) as ScanUnit[]).sort((a, b) => off(a) - off(b))
  const likely = units.filter((unit) => lengthIn(unit) >= shortest && lengthIn(unit) <= longest)
  const unit = told ?? units[0]!
  const length = lengthIn(unit)
  const others = told ? [] : likely.filter((other) => other !== unit)
  const data = { unit, lengthM: length, others: others.length }
  const notes = told ? [] : [assumption('boat.scanUnitGuessed', data)]
  return { unit, length, others, notes }
}

/** A scan of a telephone is off by about this share; more than the other is another unit or another length; assumed. */
const [usualOff, mostOff] = [0.02, 0.1]

export type ScaleResult =
  | { readonly ok: true; readonly factor: number; readonly notes: readonly Note[] }
  | { readonly ok: false; readonly notes: readonly Note[] }

/** By what the scan is made larger so that a length in it is the taped one. Refused beyond 10 %. Both in metres. */
export const scaleByTape = ({ seen, taped }: { seen: number; taped: number }): ScaleResult => {
  const factor = taped / seen
  const data = { seenM: seen, tapedM: taped, offShare: Math.abs(factor - 1), mostShare: mostOff }
  if (!(seen > 0 && taped > 0 && Math.abs(factor - 1) <= mostOff))
    return {
      ok: false,
      notes: [fault('boat.scanScaleRefused', { ...data, offShare: finite(data.offShare) })],
    }
  const code = data.offShare > usualOff ? 'boat.scanScaleFarOff' : 'boat.scanScalePut'
  const severity = data.offShare > usualOff ? 'missing' : 'info'
  return { ok: true, factor, notes: [{ code, severity, data }] }
}

const finite = (value: number): number => (Number.isFinite(value) ? value : 0)

/** Without a taped length the scan is taken as it is. */
export const unchecked: Note = { code: 'boat.scanScaleUnchecked', severity: 'missing', data: {} }
