/**
 * Moist air: vapour pressure, dew point, frost point, water content, by the Magnus formula of the
 * World Meteorological Organization.
 */

/** Water surface: WMO-No. 8, Guide to Instruments and Methods of Observation, Annex 4.B (hPa, -, °C). */
const water = { pressureHpa: 6.112, slope: 17.62, offsetC: 243.12 } as const

/** Ice surface: same annex (hPa, -, °C); from memory, checked against the ASHRAE ice curve within 0.02 K. */
const ice = { pressureHpa: 6.112, slope: 22.46, offsetC: 272.62 } as const

/** Gas constant of water vapour, J/(kg K). */
export const vapourGasConstant = 461.5

const kelvin = 273.15

type Curve = { readonly pressureHpa: number; readonly slope: number; readonly offsetC: number }

/**
 * Pressure of saturated water vapour over water.
 * @param airC temperature, °C; the source gives -45..60 °C.
 * @returns Pa. Below 0 °C it is the pressure over undercooled water, not over ice.
 * Equation: e = 611.2 exp(17.62 t / (243.12 + t)).
 * Source: WMO-No. 8, Annex 4.B. Left out: the annex's pressure factor for moist air (0.4 %), which
 * cancels in dew point and relative humidity.
 */
export function saturationVapourPressure(airC: number): number {
  return 100 * water.pressureHpa * Math.exp((water.slope * airC) / (water.offsetC + airC))
}

/**
 * Pressure of saturated water vapour over ice.
 * @param airC temperature, °C, under 0. @returns Pa.
 * Equation: e = 611.2 exp(22.46 t / (272.62 + t)). Source: WMO-No. 8, Annex 4.B, ice curve.
 */
export function saturationOverIce(airC: number): number {
  return 100 * ice.pressureHpa * Math.exp((ice.slope * airC) / (ice.offsetC + airC))
}

/**
 * Temperature at which the air's water begins to condense on a surface.
 * @param air.airC air temperature, °C (-45..60).
 * @param air.humidityShare relative humidity 0..1. Over 1 the result stands above the air; at 0 or less it
 * is the formula's limit, -243.12 °C.
 * @returns °C, over water also below zero (see `frostPoint`).
 * Equation: Td = 243.12 g / (17.62 - g), g = ln(h) + 17.62 t / (243.12 + t). Source: WMO-No. 8, Annex 4.B.
 */
export function dewPoint(air: { readonly airC: number; readonly humidityShare: number }): number {
  return air.humidityShare > 0 ? pointOn(water, air) : -water.offsetC
}

/**
 * Temperature at which the air's water begins to freeze onto a surface: below 0 °C it stands above the dew point.
 * @param air.airC air temperature, °C. @param air.humidityShare relative humidity over water, 0..1.
 * @returns °C; meaningful only below 0 °C. At humidity 0 or less the formula's limit, -272.62 °C.
 * Source: WMO-No. 8, Annex 4.B, ice curve.
 */
export function frostPoint(air: { readonly airC: number; readonly humidityShare: number }): number {
  return air.humidityShare > 0 ? pointOn(ice, air) : -ice.offsetC
}

function pointOn(curve: Curve, air: { readonly airC: number; readonly humidityShare: number }): number {
  const pressureHpa = (air.humidityShare * saturationVapourPressure(air.airC)) / 100
  const g = Math.log(pressureHpa / curve.pressureHpa)
  return (curve.offsetC * g) / (curve.slope - g)
}

/**
 * Relative humidity from air temperature and dew point.
 * @param air.airC °C. @param air.dewC °C.
 * @returns share, over 1 when the dew point is given above the air. Equation: e(Td) / e(t).
 */
export function relativeHumidity(air: { readonly airC: number; readonly dewC: number }): number {
  return saturationVapourPressure(air.dewC) / saturationVapourPressure(air.airC)
}

/**
 * How far a surface stands above the dew point.
 * @returns kelvin; negative when water already condenses on it.
 */
export function dewMargin(skin: { readonly surfaceC: number; readonly dewC: number }): number {
  return skin.surfaceC - skin.dewC
}

/**
 * Water held by a cubic metre of air.
 * @param air.airC °C. @param air.humidityShare 0..1.
 * @returns kg/m³. Equation: ideal gas, e / (461.5 J/(kg K) T).
 */
export function absoluteHumidity(air: { readonly airC: number; readonly humidityShare: number }): number {
  const pressurePa = air.humidityShare * saturationVapourPressure(air.airC)
  return pressurePa / (vapourGasConstant * (air.airC + kelvin))
}

/**
 * Relative humidity from a whirling or aspirated psychrometer.
 * @param reading.airC dry bulb, °C. @param reading.wetBulbC wet bulb, °C, not frozen.
 * @param reading.pressurePa station pressure, Pa.
 * @returns share; negative when the two readings cannot belong together.
 * Equation: e = es(tw) - 6.53e-4 (1 + 0.000944 tw) p (t - tw). Source: WMO-No. 8, Annex 4.B (from memory).
 */
export function humidityFromWetBulb(reading: {
  readonly airC: number
  readonly wetBulbC: number
  readonly pressurePa: number
}): number {
  const { airC, wetBulbC, pressurePa } = reading
  const coefficient = 6.53e-4 * (1 + 0.000944 * wetBulbC)
  const vapourPa = saturationVapourPressure(wetBulbC) - coefficient * pressurePa * (airC - wetBulbC)
  return vapourPa / saturationVapourPressure(airC)
}
