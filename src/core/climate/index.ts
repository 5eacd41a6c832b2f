/** Air, dew and sun at a place and an hour. */

// Moist air.
export {
  absoluteHumidity,
  dewMargin,
  dewPoint,
  frostPoint,
  humidityFromWetBulb,
  relativeHumidity,
  saturationVapourPressure,
} from './dew-point.ts'

// When a surface may be coated.
export type { DewVerdict } from './dew-rule.ts'
export { dewLimitFiveFahrenheitK, dewLimitK, dewRule } from './dew-rule.ts'

// The sun.
export type { BoatSide, Place, SideLight, SunPosition, SunTimes } from './sun.ts'
export { litSides, sunPosition, sunTimes } from './sun.ts'
