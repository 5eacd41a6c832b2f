/** Where a coat is asked for: its air, its skin, its light. */
import type { LightLimits } from './light-limits.ts'
import type { PaintLimits, PlaceLimits } from './paint-limits.ts'
import type { HourlyColumn, HourlySeries } from './series.ts'

export type PaintAir = {
  /** Air and wind at the surface: for a shelter, what `airUnder` gives. */
  readonly series: HourlySeries
  readonly limits: PlaceLimits
}

export type PaintSkin = {
  /** Surface temperature by the hour, °C, NaN where unknown; as long as the series. */
  readonly surfaceC: HourlyColumn
  /** The warmest skin of a place that looks several ways, °C; left out, its only one. */
  readonly warmestC?: HourlyColumn
  /** Sunbeam on the surface, mean over the hour, W/m²: what `beamOnFaces` gives; left out under a roof. */
  readonly beamWm2?: HourlyColumn
  /** Limits of dark and evening by the hour, the same for every product: what `lightLimits` gives. */
  readonly light?: LightLimits
}

export type PaintPlace = PaintAir & PaintSkin

/** A place and what one product asks of it. */
export type PaintQuestion = PaintPlace & { readonly limits: PaintLimits }
