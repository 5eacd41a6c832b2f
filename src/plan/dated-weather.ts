/** A typical year laid over the dates of the job; weather that has dates of its own stays as it is. */
import { type HourlySeries, hourMs, overDates } from '#core/climate'
import type { Runner, Stage } from './remember.ts'

/** How far a job is looked ahead, h: more than a year. */
const HOURS_AHEAD = 400 * 24

/** From the day before the first on which the plan may work. */
export function datedWeather(
  run: Runner,
  { weather, fromDate }: { readonly weather: HourlySeries | undefined; readonly fromDate: string },
): HourlySeries | undefined {
  return weather?.typicalYear ? run(laid, { weather, fromDate }) : weather
}

const laid: Stage<{ readonly weather: HourlySeries; readonly fromDate: string }, HourlySeries> = {
  name: 'dated weather',
  run: ({ weather, fromDate }) =>
    overDates(weather, { fromMs: Date.parse(`${fromDate}T00:00Z`) - 24 * hourMs, hours: HOURS_AHEAD }),
  fresh: true,
}
