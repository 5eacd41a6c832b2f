/** The unit in which a person most likely writes a quantity: a hint in the box, any other unit is read too. */
import type { Dimension } from '#units'

const hints: Readonly<Partial<Record<Dimension, readonly [metric: string, us: string]>>> = {
  length: ['m', 'ft'],
  area: ['m²', 'ft²'],
  volume: ['L', 'qt'],
  mass: ['kg', 'lb'],
  density: ['kg/L', 'lb/gal'],
  coverage: ['m²/L', 'ft²/gal'],
  temperature: ['°C', '°F'],
  temperatureDifference: ['°C', '°F'],
  share: ['%', '%'],
  time: ['h', 'h'],
  angle: ['°', '°'],
  speed: ['m/s', 'kn'],
}

export const unitHint = (dimension: Dimension, system: 'metric' | 'us'): string | undefined =>
  hints[dimension]?.[system === 'us' ? 1 : 0]
