/** The units that a dimension accepts, for a list beside a field. */

import { currencies } from './currency.ts'
import { type Dimension, dimensionRules } from './dimension.ts'
import { unitTable } from './unit-table.ts'

const pairsOf: Readonly<Partial<Record<Dimension, readonly string[]>>> = {
  areicMass: ['g/m²', 'kg/m²', 'oz/ft²', 'oz/yd²', 'lb/ft²'],
  density: ['kg/m³', 'kg/L', 'g/L', 'g/ml', 'g/cm³', 'lb/gal', 'lb/ft³', 'oz/gal'],
  coverage: ['m²/L', 'ft²/gal', 'ft²/qt', 'ml/m²', 'fl oz/ft²'],
  speed: ['m/s', 'km/h', 'kn', 'mph', 'ft/s', 'ft/min'],
  volumeRate: ['m³/h', 'L/s', 'L/min', 'ft³/min', 'gal/min', 'gal/h'],
  volumeShare: ['ml/L', 'fl oz/qt', 'fl oz/gal', '%', '‰'],
  pace: ['m²/h', 'ft²/h', 'min/m²', 'min/ft²'],
  workRate: ['h/m²', 'min/m²', 'h/ft²', 'min/ft²', 'm²/h', 'ft²/h'],
  power: ['W', 'kW', 'hp', 'BTU/h'],
  ratio: [':'],
  money: currencies,
}

/** Canonical spellings; pairs are the usual ones, any unit of the right kind over another is accepted. */
export const unitsOf = (dimension: Dimension): readonly string[] => {
  const { kinds } = dimensionRules[dimension]
  return pairsOf[dimension] ?? unitTable.filter(({ kind }) => kinds.includes(kind)).map(({ id }) => id)
}
