/** Which unit a value is written in, by dimension, system and size. */

import type { Dimension } from './dimension.ts'

export type UnitSystem = 'metric' | 'us'

/** `from` is the smallest value, in the unit of the result, that is written in this unit; largest first. */
export type Step = { readonly unit: string; readonly from: number }

type Scale = readonly Step[]

const only = (unit: string): Scale => [{ unit, from: 0 }]

type Scaled = Exclude<Dimension, 'ratio' | 'money' | 'clock' | 'count' | 'number' | 'time'>

const metric: Readonly<Record<Scaled, Scale>> = {
  length: [
    { unit: 'm', from: 1 },
    { unit: 'mm', from: 0.001 },
    { unit: 'µm', from: 0 },
  ],
  area: [
    { unit: 'm²', from: 0.01 },
    { unit: 'cm²', from: 0.0001 },
    { unit: 'mm²', from: 0 },
  ],
  volume: [
    { unit: 'm³', from: 1 },
    { unit: 'L', from: 0.001 },
    { unit: 'ml', from: 0 },
  ],
  mass: [
    { unit: 'kg', from: 1 },
    { unit: 'g', from: 0 },
  ],
  areicMass: [
    { unit: 'kg/m²', from: 1 },
    { unit: 'g/m²', from: 0 },
  ],
  density: [
    { unit: 'kg/L', from: 100 },
    { unit: 'g/L', from: 0 },
  ],
  coverage: only('m²/L'),
  temperature: only('°C'),
  temperatureDifference: only('°C'),
  speed: only('m/s'),
  angle: only('°'),
  share: only('%'),
  volumeRate: only('m³/h'),
  volumeShare: only('ml/L'),
  pace: only('m²/h'),
  workRate: [
    { unit: 'h/m²', from: 1 },
    { unit: 'min/m²', from: 0 },
  ],
  pressure: [
    { unit: 'bar', from: 2e5 },
    { unit: 'hPa', from: 100 },
    { unit: 'Pa', from: 0 },
  ],
  power: [
    { unit: 'kW', from: 1000 },
    { unit: 'W', from: 0 },
  ],
}

/** Lengths from a quarter inch up are feet and inches (`write-feet.ts`); below, mils. */
const us: Readonly<Record<Scaled, Scale>> = {
  length: [
    { unit: 'mi', from: 1000 },
    { unit: 'mil', from: 0 },
  ],
  area: [
    { unit: 'ft²', from: 0.3048 ** 2 },
    { unit: 'in²', from: 0 },
  ],
  volume: [
    { unit: 'ft³', from: 1 },
    { unit: 'gal', from: 3.785411784e-3 },
    { unit: 'qt', from: 3.785411784e-3 / 4 },
    { unit: 'fl oz', from: 0 },
  ],
  mass: [
    { unit: 'lb', from: 0.45359237 },
    { unit: 'oz av', from: 0 },
  ],
  areicMass: only('oz/yd²'),
  density: [
    { unit: 'lb/gal', from: 100 },
    { unit: 'lb/ft³', from: 0 },
  ],
  coverage: only('ft²/gal'),
  temperature: only('°F'),
  temperatureDifference: only('°F'),
  speed: only('mph'),
  angle: only('°'),
  share: only('%'),
  volumeRate: only('ft³/min'),
  volumeShare: only('fl oz/qt'),
  pace: only('ft²/h'),
  workRate: [
    { unit: 'h/ft²', from: 1 / 0.3048 ** 2 },
    { unit: 'min/ft²', from: 0 },
  ],
  pressure: [
    { unit: 'psi', from: 689.4757 },
    { unit: 'in wg', from: 0 },
  ],
  power: only('BTU/h'),
}

const scales: Readonly<Record<UnitSystem, Readonly<Record<Scaled, Scale>>>> = { metric, us }

export const hasScale = (dimension: Dimension): dimension is Scaled => dimension in metric

export const scaleOf = (dimension: Scaled, system: UnitSystem): Scale => scales[system][dimension]
