/** The unit in which a person most likely writes a quantity: a bare number is taken in it, any other is read too. */
import type { QuantityField } from '#job'
import type { Dimension } from '#units'

const hints: Readonly<Partial<Record<Dimension, readonly [metric: string, us: string]>>> = {
  length: ['m', 'ft'],
  area: ['m²', 'ft²'],
  volume: ['L', 'qt'],
  mass: ['kg', 'lb'],
  areicMass: ['g/m²', 'oz/ft²'],
  density: ['kg/L', 'lb/gal'],
  coverage: ['m²/L', 'ft²/gal'],
  temperature: ['°C', '°F'],
  temperatureDifference: ['°C', '°F'],
  share: ['%', '%'],
  time: ['h', 'h'],
  angle: ['°', '°'],
  speed: ['m/s', 'kn'],
  power: ['kW', 'BTU/h'],
}

const small = { film: ['µm', 'mil'], hand: ['mm', 'in'], solvent: ['g/L', 'lb/gal'] } as const

export const unitHint = (
  { dimension, scale }: Pick<QuantityField, 'dimension' | 'scale'>,
  system: 'metric' | 'us',
): string | undefined => (scale ? small[scale] : hints[dimension])?.[system === 'us' ? 1 : 0]

/** A bare number means the unit that the box shows beside it. */
export const withUnit = (text: string, unit: string | undefined): string =>
  unit !== undefined && /^[+−-]?\d+(?:[.,]\d+)?$/.test(text.trim()) ? `${text.trim()} ${unit}` : text
