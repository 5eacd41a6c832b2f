/** The weather a plan is made with: the series at hand, with the rain that the log tells of. */
import { type HourlySeries, hourMs, type ToldRain, withToldRain } from '#core/climate'
import { inForce, type Log } from '#job'
import type { Runner, Stage } from './remember.ts'

/** The very same series when the log tells of no rain. */
export function weatherAsTold(
  run: Runner,
  { weather, log }: { readonly weather: HourlySeries | undefined; readonly log: Log },
): HourlySeries | undefined {
  const rains = run(toldRains, { log })
  return weather === undefined || rains.length === 0 ? weather : run(toldWeather, { weather, rains })
}

const toldRains: Stage<{ readonly log: Log }, readonly ToldRain[]> = {
  name: 'told rains',
  run: ({ log }) =>
    inForce(log)
      .flatMap((entry) => {
        const fromMs = Date.parse(entry.at)
        if (entry.kind !== 'rain' || Number.isNaN(fromMs)) return []
        const until = entry.until === undefined ? Number.NaN : Date.parse(entry.until)
        const toMs = until > fromMs ? until : fromMs + hourMs
        return [{ id: entry.id, fromMs, toMs, ...amountOf(entry) }]
      })
      .sort((a, b) => a.fromMs - b.fromMs || (a.id < b.id ? -1 : 1))
      .map(({ id: _, ...rain }) => rain),
}

const amountOf = ({ rain }: Log[number]): Pick<ToldRain, 'amountMm'> =>
  rain === undefined ? {} : { amountMm: rain.value * 1000 }

const toldWeather: Stage<
  { readonly weather: HourlySeries; readonly rains: readonly ToldRain[] },
  HourlySeries
> = {
  name: 'told weather',
  run: ({ weather, rains }) => withToldRain({ series: weather, rains }),
  fresh: true,
}
