/** What reading weather gives. */
import type { HourlySeries } from '#core/climate'
import type { Problem } from '../problem.ts'

export type WeatherRead =
  | { readonly ok: true; readonly series: HourlySeries; readonly problems: readonly Problem[] }
  | { readonly ok: false; readonly problems: readonly Problem[] }

/** Largest file that is looked at, bytes. */
export const mostWeatherBytes = 20_000_000
