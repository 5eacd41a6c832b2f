/** Where the weather is from, and the sun and skins it makes: asked of the worker for the plan that is shown. */
import { useEffect, useState } from 'react'
import type { WeatherAtHand } from '#plan'
import type { JobView } from '../../job/job-view.ts'
import type { ShownPlan } from '../../worker/messages.ts'

/** Undefined without weather, and until the worker has answered; the old answer stays until the new one comes. */
export function useWeather(
  { ask }: Pick<JobView, 'ask'>,
  { conditions }: ShownPlan,
): WeatherAtHand | undefined {
  const [weather, setWeather] = useState<WeatherAtHand>()
  // Conditions that did not change are the same object.
  useEffect(() => {
    let stale = !conditions
    ask({ kind: 'weather' }).then(
      (found) => {
        if (!stale) setWeather(found)
      },
      () => undefined,
    )
    return () => {
      stale = true
    }
  }, [ask, conditions])
  return weather
}
