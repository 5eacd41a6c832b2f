/**
 * Kinds of place and season that weather can be invented for. Every figure is a rough climate of its kind, made up
 * for demonstration from memory; none is a record of a real place.
 */

export type InventedKind = 'lake spring' | 'town summer' | 'coast autumn'

export type InventedPlace = {
  /** Latitude at which the yearly mean holds, rad; a degree nearer the pole takes 0.6 K off. */
  readonly latitude: number
  readonly yearMeanC: number
  /** Half of what the year's swing is, K, and the day of the year it is warmest on, north of the equator. */
  readonly yearSwingK: number
  readonly warmestDay: number
  /** Warming of the air near the ground by sun, K/h per kW/m², and its cooling under a clear sky, K/h. */
  readonly warming: number
  readonly cooling: number
  /** Spread of the slow swings of air temperature, K. */
  readonly spellK: number
  /** How far the dew point stands under the day's mean air in settled weather, K, and its spread. */
  readonly dewGapK: number
  readonly dewSpreadK: number
  /** Cover in settled weather, 0..1. */
  readonly cloudShare: number
  /** Wind in settled weather, and what full sun adds as a breeze off the water or over the roofs, m/s. */
  readonly windMps: number
  readonly breezeMps: number
  /** Hours from one front to the next, hours a front takes, wind it brings, and rain in a wet hour of it. */
  readonly frontEveryHours: number
  readonly frontHours: number
  readonly frontWindMps: number
  readonly frontRainMm: number
  /** Chance that a warm, moist afternoon hour starts a shower. */
  readonly showerShare: number
}

const degree = Math.PI / 180

export const inventedPlaces: Readonly<Record<InventedKind, InventedPlace>> = {
  'lake spring': {
    latitude: 59.4 * degree,
    yearMeanC: 7,
    yearSwingK: 11.3,
    warmestDay: 203,
    warming: 3.4,
    cooling: 0.75,
    spellK: 2.6,
    dewGapK: 6.8,
    dewSpreadK: 1.8,
    cloudShare: 0.45,
    windMps: 2.2,
    breezeMps: 1.6,
    frontEveryHours: 84,
    frontHours: 16,
    frontWindMps: 5,
    frontRainMm: 0.9,
    showerShare: 0.02,
  },
  'town summer': {
    latitude: 41 * degree,
    yearMeanC: 12.9,
    yearSwingK: 12,
    warmestDay: 203,
    warming: 3.2,
    cooling: 0.7,
    spellK: 2.6,
    dewGapK: 7.2,
    dewSpreadK: 2.2,
    cloudShare: 0.4,
    windMps: 1.9,
    breezeMps: 1.4,
    frontEveryHours: 100,
    frontHours: 11,
    frontWindMps: 4,
    frontRainMm: 2,
    showerShare: 0.07,
  },
  'coast autumn': {
    latitude: 50.5 * degree,
    yearMeanC: 11.2,
    yearSwingK: 5.5,
    warmestDay: 220,
    warming: 2,
    cooling: 0.45,
    spellK: 1.6,
    dewGapK: 4,
    dewSpreadK: 1.3,
    cloudShare: 0.55,
    windMps: 3.6,
    breezeMps: 1,
    frontEveryHours: 54,
    frontHours: 18,
    frontWindMps: 6,
    frontRainMm: 1.2,
    showerShare: 0,
  },
}
