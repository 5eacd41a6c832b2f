/**
 * What a data key says about its value: `areaM2` is square metres, `airC` degrees Celsius, `startDate` a date.
 * Every key in note and error data ends in its unit; a key without one is a count or a name.
 */
import type { Dimension } from '#units'

export type QuantityKey = {
  readonly suffix: string
  readonly writtenAs:
    | { readonly kind: 'dimension'; readonly dimension: Dimension; readonly toSi: number }
    /** A unit that people use the same everywhere, such as g/m³ of water vapour. */
    | { readonly kind: 'symbol'; readonly symbol: string }
    /** Hours of work: never turned into days, of which nobody knows how long they are. */
    | { readonly kind: 'hours' }
    /** A length as it is read off a tape and struck by: whole millimetres, or sixteenths of an inch. */
    | { readonly kind: 'tape' }
    /** Days, halves and all. */
    | { readonly kind: 'days' }
    | { readonly kind: 'money' }
    | { readonly kind: 'moment' }
    | { readonly kind: 'date' }
}

const inUnitsOf = (suffix: string, dimension: Dimension, toSi = 1): QuantityKey => ({
  suffix,
  writtenAs: { kind: 'dimension', dimension, toSi },
})
const withSymbol = (suffix: string, symbol: string): QuantityKey => ({
  suffix,
  writtenAs: { kind: 'symbol', symbol },
})
const as = (suffix: string, kind: 'hours' | 'tape' | 'days' | 'money' | 'moment' | 'date'): QuantityKey => ({
  suffix,
  writtenAs: { kind },
})

/** Longest suffix first, so that `KgM2` is not read as `M2`. */
const keys: readonly QuantityKey[] = [
  inUnitsOf('M', 'length'),
  inUnitsOf('Cm', 'length', 1e-2),
  inUnitsOf('Mm', 'length', 1e-3),
  inUnitsOf('Um', 'length', 1e-6),
  inUnitsOf('M2', 'area'),
  inUnitsOf('M3', 'volume'),
  inUnitsOf('L', 'volume', 1e-3),
  inUnitsOf('Ml', 'volume', 1e-6),
  inUnitsOf('Kg', 'mass'),
  inUnitsOf('G', 'mass', 1e-3),
  inUnitsOf('KgM2', 'areicMass'),
  inUnitsOf('KgPerM2', 'areicMass'),
  inUnitsOf('GPerM2', 'areicMass', 1e-3),
  inUnitsOf('KgM3', 'density'),
  inUnitsOf('KgPerM3', 'density'),
  inUnitsOf('M2PerL', 'coverage', 1000),
  inUnitsOf('M2PerM3', 'coverage'),
  inUnitsOf('C', 'temperature'),
  inUnitsOf('K', 'temperatureDifference'),
  inUnitsOf('Mps', 'speed'),
  inUnitsOf('Hours', 'time'),
  inUnitsOf('Minutes', 'time', 1 / 60),
  inUnitsOf('Seconds', 'time', 1 / 3600),
  inUnitsOf('Rad', 'angle'),
  inUnitsOf('Deg', 'angle', Math.PI / 180),
  inUnitsOf('Share', 'share'),
  inUnitsOf('M3PerHour', 'volumeRate'),
  inUnitsOf('M3H', 'volumeRate'),
  inUnitsOf('M2PerHour', 'pace'),
  inUnitsOf('HoursPerM2', 'workRate'),
  inUnitsOf('Pa', 'pressure'),
  inUnitsOf('TimeOfDay', 'clock'),
  withSymbol('GPerM3', 'g/m³'),
  withSymbol('MgPerM3', 'mg/m³'),
  withSymbol('GPerL', 'g/L'),
  withSymbol('WPerM2', 'W/m²'),
  withSymbol('W', 'W'),
  withSymbol('Kw', 'kW'),
  as('ByTapeM', 'tape'),
  as('PersonHours', 'hours'),
  as('Days', 'days'),
  as('Coins', 'money'),
  as('AtMs', 'moment'),
  as('Date', 'date'),
].sort((a, b) => b.suffix.length - a.suffix.length)

const workHours = as('hours', 'hours')

/** The key's unit; undefined for a count or a name. A whole key may be the unit: `hours`, `coins`, `date`. */
export function quantityKey(key: string): QuantityKey | undefined {
  return key === workHours.suffix ? workHours : keys.find((row) => endsIn(key, row.suffix))
}

function endsIn(key: string, suffix: string): boolean {
  if (key.toLowerCase() === suffix.toLowerCase()) return suffix.length > 2
  return key.endsWith(suffix) && /[a-z0-9]/.test(key.charAt(key.length - suffix.length - 1))
}
