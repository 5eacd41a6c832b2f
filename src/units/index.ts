/** The door of the room: reads what people write and writes it back. */

export { currencies, currenciesOf, minorDigitsOf } from './currency.ts'
export { type Dimension, dimensions, type Sign } from './dimension.ts'
export type { Quantity, Reading, ReadOptions } from './quantity.ts'
export { longestText, read, readOrThrow } from './read.ts'
export { UnitError, type UnitFault, type UnitFaultCode, type UnitFaultData } from './unit-error.ts'
export { unitsOf } from './units-of.ts'
export { type WriteAsOptions, write, writeAs, writeRatio } from './write.ts'
export { writeMoney } from './write-money.ts'
export type { WriteOptions } from './write-options.ts'
export type { UnitSystem } from './write-scale.ts'
