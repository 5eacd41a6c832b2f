/** What reading weather gives. */
import type { HourlySeries } from '#core/climate'
import type { Problem } from '../problem.ts'
import type { TableLook } from './table/table-mapping.ts'

export type WeatherRead =
  | { readonly ok: true; readonly series: HourlySeries; readonly problems: readonly Problem[] }
  | {
      readonly ok: false
      readonly problems: readonly Problem[]
      /** The table as it looks, where a person may say what its columns are. */
      readonly table?: TableLook
    }

/** Largest file that is looked at, bytes. */
export const mostWeatherBytes = 20_000_000
