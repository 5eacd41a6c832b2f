/** The limits a coat sets to the hour it is put on and the hours after, and how one of them fails. */

export type PaintLimits = {
  /** Coldest and warmest air to apply in, °C, both included. */
  readonly airLeastC: number
  readonly airMostC: number
  /** Highest relative humidity to apply in, 0..1, included. */
  readonly humidityMost: number
  /** Least distance of the surface over the dew point, K, through the hour and `hoursAfter`. */
  readonly dewMarginK: number
  /** Wind at the hull up to which all is well, and over which nothing is, m/s. */
  readonly windGoMps: number
  readonly windNoMps: number
  /**
   * How many hours after the hour of application dew and rain must stay off, whole numbers, 0 or more: one figure, or
   * one for each hour of the series, since a film dries slower through a cold night.
   */
  readonly hoursAfter: number | readonly number[]
  /** Rain reaches the surface. */
  readonly openToSky: boolean
  /** Chance of rain from which an hour is risky, and from which it is lost, 0..1. */
  readonly rainRiskyShare: number
  readonly rainNoShare: number
  /** A wet surface counts as dry after so many whole hours with the next margin; 0 leaves the rule out. */
  readonly dryHours: number
  readonly dryMarginK: number
}

/**
 * What holds for every sheet unless it says otherwise. Dew margin 3 K: ISO 8502-4. Highest humidity 85 %:
 * commercial data sheets. Wind for gloss 4 and 6 m/s, chance of rain 20 and 50 %, and an hour dry at 3 K after a
 * wet night: common practice, assumed.
 */
export const commonLimits = {
  humidityMost: 0.85,
  dewMarginK: 3,
  windGoMps: 4,
  windNoMps: 6,
  rainRiskyShare: 0.2,
  rainNoShare: 0.5,
  dryHours: 1,
  dryMarginK: 3,
} as const

export type Limit =
  | 'airLeast'
  | 'airMost'
  | 'humidity'
  | 'dewMargin'
  | 'wetSince'
  | 'wind'
  | 'rain'
  | 'rainChance'

/** Unit of `needed` and `had` for each limit. */
export const limitUnits: Readonly<Record<Limit, 'C' | 'share' | 'K' | 'hours' | 'mps' | 'mm'>> = {
  airLeast: 'C',
  airMost: 'C',
  humidity: 'share',
  dewMargin: 'K',
  wetSince: 'hours',
  wind: 'mps',
  rain: 'mm',
  rainChance: 'share',
}

export type Verdict = 'go' | 'risky' | 'no' | 'unknown'

export type FailingLimit = {
  readonly limit: Limit
  /** What this limit alone makes of the hour. */
  readonly effect: Exclude<Verdict, 'go'>
  /** The limit, in the unit of `limitUnits`. */
  readonly needed: number
  /** What the weather has, same unit; null when it is not known. */
  readonly had: number | null
  /** In how many hours it fails: 0 in the hour itself, more while the film is fresh. */
  readonly inHours: number
}

export type HourVerdict = {
  readonly verdict: Verdict
  readonly failing: readonly FailingLimit[]
}

/** A difference this small between a figure and its limit is rounding of decimals, not weather. */
export const limitRounding = 1e-9
