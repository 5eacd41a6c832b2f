/** Wet bulb and mixing ratio of moist air: what a wet surface cools to, and how much water goes with the dry air. */
import { saturationOverIce, saturationVapourPressure } from './dew-point.ts'

/** Molar mass of water over that of dry air. */
const massRatio = 0.621945

export type MoistAir = {
  readonly airC: number
  /** 0..1, over water. */
  readonly humidityShare: number
  readonly pressurePa: number
}

/** Pressure of the standard atmosphere at sea level, Pa. */
export const standardPressurePa = 101_325

/**
 * Water vapour by mass of dry air.
 * @param air.airC °C. @param air.humidityShare 0..1. @param air.pressurePa of the air, Pa.
 * @returns kg/kg; without bound as the vapour pressure nears that of the air.
 * Equation: W = 0.621945 e / (p - e). Source: ASHRAE Handbook - Fundamentals, 2017, ch. 1 (the form from memory,
 * checked against the psychrolib package).
 */
export function mixingRatio({ airC, humidityShare, pressurePa }: MoistAir): number {
  return ratioOf(humidityShare * saturationVapourPressure(airC), pressurePa)
}

const ratioOf = (vapourPa: number, pressurePa: number): number =>
  (massRatio * vapourPa) / (pressurePa - vapourPa)

/**
 * Thermodynamic wet bulb: the temperature at which water evaporating into the air saturates it, and takes from the air
 * the heat that it needs.
 * @param air.airC °C, -40..60. @param air.humidityShare 0..1; over 1 it counts as 1. @param air.pressurePa Pa.
 * @returns °C, at most `airC`; under 0 °C the bulb carries ice.
 * Equation, solved by halving: W = ((2501 - 2.326 t') Ws(t') - 1.006 (t - t')) / (2501 + 1.86 t - 4.186 t'), over ice
 * W = ((2830 - 0.24 t') Ws(t') - 1.006 (t - t')) / (2830 + 1.86 t - 2.1 t'). Source as above.
 */
export function wetBulb({ airC, humidityShare, pressurePa }: MoistAir): number {
  if (humidityShare >= 1) return airC
  const held = mixingRatio({ airC, humidityShare: Math.max(0, humidityShare), pressurePa })
  let low = airC - 60
  let high = airC
  // Sixty degrees halved fifty times is finer than a figure holds.
  for (let step = 0; step < 50; step++) {
    const middle = (low + high) / 2
    if (heldAt({ airC, bulbC: middle, pressurePa }) > held) high = middle
    else low = middle
  }
  return (low + high) / 2
}

/** Water in air that has this wet bulb, kg/kg. */
function heldAt(air: { readonly airC: number; readonly bulbC: number; readonly pressurePa: number }): number {
  const { airC, bulbC, pressurePa } = air
  if (bulbC >= 0) {
    const full = ratioOf(saturationVapourPressure(bulbC), pressurePa)
    return ((2501 - 2.326 * bulbC) * full - 1.006 * (airC - bulbC)) / (2501 + 1.86 * airC - 4.186 * bulbC)
  }
  const full = ratioOf(saturationOverIce(bulbC), pressurePa)
  return ((2830 - 0.24 * bulbC) * full - 1.006 * (airC - bulbC)) / (2830 + 1.86 * airC - 2.1 * bulbC)
}
