/** Brings a value in the unit of the result to a named unit. */

import type { Dimension } from './dimension.ts'
import { scanUnit } from './scan-unit.ts'
import { stop } from './unit-error.ts'
import type { Unit } from './unit-table.ts'

/** The unit with this spelling, simple or a pair; throws a `UnitError` when there is none. */
export const unitNamed = (name: string, dimension: Dimension): Unit => {
  const source = { text: name, dimension }
  const span = { at: 0, end: name.length }
  const scanned = scanUnit(source, 0)
  if (!scanned || scanned.end < name.length) return stop(source, 'units.unknownUnit', span)
  if ('pair' in scanned) return stop(source, 'units.wrongDimension', span, { got: scanned.pair })
  return scanned.unit
}

/** Temperatures are shifted by the zero of the scale, differences are not. */
export const inUnit = (value: number, unit: Unit, dimension: Dimension): number =>
  (value * unit.over) / unit.times + (dimension === 'temperature' ? unit.zero : 0)
