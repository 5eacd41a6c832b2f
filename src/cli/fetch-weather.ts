/** The forecast of an open service for the place of a job, as if it were a weather file. */
import { type FeedOptions, type Forecast, fetchForecast, type Origins, serviceNames } from '#feeds'
import { seriesHash } from '#intake'
import { CliFault } from './fault.ts'
import { cacheFolder, folderCache } from './folder-cache.ts'
import { loadJob } from './load-job.ts'
import { type LoadedWeather, weatherProblemLines } from './load-weather.ts'
import { appVersion } from './make-plan.ts'
import { plainWords } from './plain-words.ts'

const DEGREES = 180 / Math.PI

export type FetchedWeather = LoadedWeather & { readonly fetchedAtMs: number; readonly stale: boolean }

export async function fetchWeather(path: string, service: string): Promise<FetchedWeather> {
  const known = serviceNames.find((name) => name === service)
  if (!known)
    throw new CliFault([
      plainWords.sentence('feeds.serviceUnknown', { found: service, known: serviceNames.join(', ') }),
    ])
  const { place } = (await loadJob(path)).projected.work
  const { latitude, longitude } = place
  if (!latitude || !longitude) throw new CliFault([plainWords.sentence('feeds.noSpot')])
  const spot = { latitude: latitude.value * DEGREES, longitude: longitude.value * DEGREES }
  const found = await fetchForecast({ service: known, spot }, feedOptions(folderCache(cacheFolder())))
  if (!found.ok) throw new CliFault([sayFault(found), ...weatherProblemLines(service, found.problems)])
  const { series, problems, fetchedAtMs, stale } = found
  return { path: service, series, hash: seriesHash(series), problems, fetchedAtMs, stale }
}

const sayFault = ({ fault }: Extract<Forecast, { readonly ok: false }>): string =>
  plainWords.sentence(fault.code, fault.data)

/** `HARDSTAND_FEEDS=off` keeps the program from asking; another origin is asked where one is named. */
export function feedOptions(cache: FeedOptions['cache']): FeedOptions {
  const origin = process.env.HARDSTAND_FEEDS_ORIGIN
  const origins: Origins | undefined =
    origin === undefined || origin === ''
      ? undefined
      : { 'open-meteo': origin, 'met-norway': origin, 'us-nws': origin }
  return {
    cache,
    userAgent: `hardstand/${appVersion()}`,
    off: process.env.HARDSTAND_FEEDS === 'off',
    ...(origins ? { origins } : {}),
  }
}
