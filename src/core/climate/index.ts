/** Air, dew and sun at a place and an hour; which hours take a coat. */
export {
  absoluteHumidity,
  dewMargin,
  dewPoint,
  frostPoint,
  humidityFromWetBulb,
  relativeHumidity,
  saturationOverIce,
  saturationVapourPressure,
} from './dew-point.ts'
export { dewPoints } from './dew-points.ts'
export type { DewVerdict } from './dew-rule.ts'
export { dewLimitFiveFahrenheitK, dewLimitK, dewRule } from './dew-rule.ts'
export type { InventedWeather } from './invent.ts'
export { inventWeather } from './invent.ts'
export type { InventedKind } from './invented-places.ts'
export { limitNote } from './limit-note.ts'
export { overDates } from './over-dates.ts'
export type { FailingLimit, HourVerdict, Limit, PaintLimits, Verdict } from './paint-limits.ts'
export { commonLimits, limitUnits } from './paint-limits.ts'
export type { PaintQuestion } from './paintable.ts'
export { paintableHours } from './paintable.ts'
export type { Run } from './runs-of.ts'
export { runsOf } from './runs-of.ts'
export type { Gap, HourlyColumn, HourlySeries, OptionalColumn } from './series.ts'
export { hourAt, hourMs, optionalColumns, startOfHour, valueAt } from './series.ts'
export type { Shelter, ShelterFigures } from './shelter.ts'
export { airUnder, shelterNotes, shelters } from './shelter.ts'
export { clearSkySun, throughCloud } from './sun/clear-sky.ts'
export type { Parted } from './sun/erbs.ts'
export { beamFrom, erbsDiffuseShare, partLight } from './sun/erbs.ts'
export { extraterrestrialSun, solarConstantWm2 } from './sun/extraterrestrial.ts'
export type { Direction, Slope } from './sun/incidence.ts'
export { cosIncidence, normalOf, towardsSun } from './sun/incidence.ts'
export type { Face } from './sun/light-on.ts'
export { lightOn, usualAlbedo } from './sun/light-on.ts'
export type { BoatSide, SideLight } from './sun/lit-sides.ts'
export { litSides } from './sun/lit-sides.ts'
export type { ShelterLight } from './sun/shelter-light.ts'
export { shelterLight } from './sun/shelter-light.ts'
export type { LightFrom, SkyLight } from './sun/sky-light.ts'
export { skyLight } from './sun/sky-light.ts'
export type { Place, SunPosition, SunTimes } from './sun/sun-position.ts'
export { sunPosition, sunTimes } from './sun/sun-position.ts'
export type { LevelLight, Tilted } from './sun/transposition.ts'
export { beamOn, groundLight, groundView, hayDaviesSky, isotropicSky, skyView } from './sun/transposition.ts'
export { surfaceTemperature } from './surface-temperature.ts'
export type { ToldRain } from './told-rain.ts'
export { withToldRain } from './told-rain.ts'
export type { MoistAir } from './wet-bulb.ts'
export { mixingRatio, standardPressurePa, wetBulb } from './wet-bulb.ts'
