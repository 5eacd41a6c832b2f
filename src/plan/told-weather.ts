/** The weather a plan is made with: the series at hand, with the rain that the log tells of. */
import { type HourlySeries, hourMs, type ToldRain, withToldRain, type YardReading } from '#core/climate'
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

/** Air, humidity and skin as the log has them, and where the skin was read. */
export type ToldReading = Omit<YardReading, 'here'> & { readonly readAt?: Log[number]['readAt'] }

/** In order of time; the very same list while no reading changes. */
export const toldReadings: Stage<{ readonly log: Log }, readonly ToldReading[]> = {
  name: 'told readings',
  run: ({ log }) =>
    inForce(log)
      .flatMap(({ id, kind, at, air, humidity, skin, readAt }) => {
        const atMs = Date.parse(at)
        if (kind !== 'reading' || Number.isNaN(atMs)) return []
        return [
          {
            id,
            atMs,
            ...(air ? { airC: air.value } : {}),
            ...(humidity ? { humidityShare: humidity.value } : {}),
            ...(skin ? { skinC: skin.value } : {}),
            ...(readAt ? { readAt } : {}),
          },
        ]
      })
      .sort((a, b) => a.atMs - b.atMs || (a.id < b.id ? -1 : 1))
      .map(({ id: _, ...reading }) => reading),
}
