/** The limits a coat sets to the hour it is put on and the hours after, and how one of them fails. */

export type PaintLimits = {
  /** Coldest and warmest air to apply in, °C, both included. */
  readonly airLeastC: number
  readonly airMostC: number
  /** Skin under which and over which an hour is lost, °C. */
  readonly skinLeastC: number
  readonly skinMostC: number
  /** Skin under which and over which it is a risk, °C: the same where a sheet tells the skin. */
  readonly skinCoolC: number
  readonly skinWarmC: number
  /** A side that the sun stands on is a risk when its skin is warmer over the air than this, K. */
  readonly sunnyOverAirK: number
  /** Sunbeam on the side from which the sun stands on it, W/m². */
  readonly sunnyBeamWm2: number
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

/** Limits that a sheet sets by itself. */
export type SheetLimits = Pick<
  PaintLimits,
  | 'airLeastC'
  | 'airMostC'
  | 'skinLeastC'
  | 'skinMostC'
  | 'skinCoolC'
  | 'skinWarmC'
  | 'humidityMost'
  | 'hoursAfter'
>

/** Limits that sheets at a place mostly share. */
export type PlaceLimits = Omit<PaintLimits, keyof SheetLimits>

/**
 * What holds for every sheet unless it says otherwise. Dew margin 3 K: ISO 8502-4. Highest humidity 85 %:
 * commercial data sheets. Wind for gloss 4 and 6 m/s, chance of rain 20 and 50 %, an hour dry at 3 K after a
 * wet night, and a side in the sun left alone when it is 5 K over the air (follow the shade round the boat): common
 * practice, assumed. Sunshine is a beam of over 120 W/m²: WMO-No. 8, part I, chapter 8; that the beam on the side
 * itself is asked for is ours.
 */
export const commonLimits = {
  humidityMost: 0.85,
  sunnyOverAirK: 5,
  sunnyBeamWm2: 120,
  dewMarginK: 3,
  windGoMps: 4,
  windNoMps: 6,
  rainRiskyShare: 0.2,
  rainNoShare: 0.5,
  dryHours: 1,
  dryMarginK: 3,
} as const

/**
 * A sheet that tells only its air: a skin colder or warmer than the air may be is a risk, and lost from so much further
 * on, K. Assumed: sheets that tell both mostly have the same figures, or the skin's 5 K inside those of the air.
 */
export const skinAllowanceK = 5

/**
 * Limits of the skin.
 * @param sheet what the sheet tells of air and of the surface, °C. @returns by the surface where it is told, else by the
 * air, see `skinAllowanceK`.
 */
export function skinLimits(sheet: {
  readonly airLeastC: number
  readonly airMostC: number
  readonly skinLeastC?: number | undefined
  readonly skinMostC?: number | undefined
}): Pick<PaintLimits, 'skinLeastC' | 'skinCoolC' | 'skinWarmC' | 'skinMostC'> {
  const { airLeastC, airMostC, skinLeastC, skinMostC } = sheet
  return {
    skinLeastC: skinLeastC ?? airLeastC - skinAllowanceK,
    skinCoolC: skinLeastC ?? airLeastC,
    skinWarmC: skinMostC ?? airMostC,
    skinMostC: skinMostC ?? airMostC + skinAllowanceK,
  }
}

/** Where nobody has set an evening stop, painting in the open stops so long before sunset, h. Common practice, assumed. */
export const usualStopHours = 2

export type Limit =
  | 'airLeast'
  | 'airMost'
  | 'skinLeast'
  | 'skinMost'
  | 'hotSun'
  | 'dark'
  | 'evening'
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
  skinLeast: 'C',
  skinMost: 'C',
  hotSun: 'K',
  dark: 'hours',
  evening: 'hours',
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
