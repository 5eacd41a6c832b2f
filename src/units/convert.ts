/** Brings a value in the unit of the result to a named unit. */

import { type Dimension, dimensionRules } from './dimension.ts'
import { scanUnit } from './scan-unit.ts'
import { stop } from './unit-error.ts'
import { type Unit, unitTable } from './unit-table.ts'

/** The unit with this spelling, simple or a pair; throws a `UnitError` when there is none. */
export const unitNamed = (name: string, dimension: Dimension): Unit => {
  const named = unitTable.find(({ id }) => id === name)
  if (named) return named
  const source = { text: name, dimension }
  const span = { at: 0, end: name.length }
  const scanned = scanUnit(source, 0)
  if (!scanned || scanned.end < name.length) return stop(source, 'units.unknownUnit', span)
  if ('pair' in scanned) return stop(source, 'units.wrongDimension', span, { got: scanned.pair })
  return scanned.unit
}

/** Temperatures are shifted by the zero of the scale, differences are not; `ml/m²` is a coverage upside down. */
export const inUnit = (value: number, unit: Unit, dimension: Dimension): number => {
  const upright = dimensionRules[dimension].inverse === unit.kind ? 1 / value : value
  return (upright * unit.over) / unit.times + (dimension === 'temperature' ? unit.zero : 0)
}

/** The dimension that a unit is written as when none is named; undefined when it has none. */
export const dimensionOf = ({ kind }: Unit): Dimension | undefined => {
  if (kind === 'areicVolume') return 'coverage'
  if (kind === 'massShare') return 'share'
  return kind === 'energy' ? undefined : kind
}
