/** The forecast for a spot from an open service, as one hourly series: the only room that talks to the outside. */
import { type HourlySeries, mostWeatherBytes, type Problem, readWeather } from '#intake'
import { type Asked, type AskOptions, ask, type FeedFault } from './ask.ts'
import { firstUrl, nextUrl, type Origins, origins, type ServiceName, type Spot } from './service.ts'

export type FeedOptions = Partial<Omit<AskOptions, 'mostBytes' | 'cache' | 'userAgent'>> &
  Pick<AskOptions, 'cache' | 'userAgent'> & {
    readonly origins?: Origins
    /** Nobody is asked; every question is refused with that reason. */
    readonly off?: boolean
  }

export type Forecast =
  | {
      readonly ok: true
      readonly series: HourlySeries
      readonly problems: readonly Problem[]
      readonly fetchedAtMs: number
      /** Kept from before: the service could not be reached now. */
      readonly stale: boolean
    }
  | {
      readonly ok: false
      readonly fault: Pick<FeedFault, 'data'> & { readonly code: string }
      readonly problems: readonly Problem[]
    }

/** A cell of a grid after its point: one step is all that any service takes. */
const MOST_STEPS = 2

/**
 * Asks a service for its forecast and reads it.
 * @param wish.spot degrees; the latitude within ±90, the longitude within ±180.
 * @returns the series with its source and licence, or why there is none. Never throws for what comes from outside.
 */
export async function fetchForecast(
  wish: { readonly service: ServiceName; readonly spot: Spot },
  options: FeedOptions,
): Promise<Forecast> {
  if (options.off) return refused('feeds.off', {})
  const { latitude, longitude } = wish.spot
  if (!(Math.abs(latitude) <= 90 && Math.abs(longitude) <= 180)) return refused('feeds.noSpot', {})
  const base = options.origins ?? origins
  const full: AskOptions = {
    fetch: options.fetch ?? fetch,
    clockMs: options.clockMs ?? Date.now,
    pause: options.pause ?? pause,
    timeoutMs: options.timeoutMs ?? 15_000,
    attempts: options.attempts ?? 3,
    mostBytes: mostWeatherBytes,
    cache: options.cache,
    userAgent: options.userAgent,
  }
  let url = firstUrl(wish.service, wish.spot, base)
  let asked: Asked | undefined
  for (let step = 0; step < MOST_STEPS; step++) {
    asked = await ask(url, full)
    if (!asked.ok) return { ok: false, fault: asked.fault, problems: [] }
    const next = nextUrl(wish.service, asked.bytes, base)
    if (next === 'unknown') return refused('feeds.answerOdd', { host: url.host })
    if (next === 'done') break
    url = next
  }
  return readAnswer(asked as Extract<Asked, { readonly ok: true }>, url.host)
}

const pause = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms))

const refused = (code: string, data: FeedFault['data'], problems: readonly Problem[] = []): Forecast => ({
  ok: false,
  fault: { code, data },
  problems,
})

function readAnswer(
  { bytes, fetchedAtMs, stale }: Extract<Asked, { readonly ok: true }>,
  host: string,
): Forecast {
  const read = readWeather(bytes)
  if (!read.ok) return refused('feeds.answerOdd', { host }, read.problems)
  return { ok: true, series: read.series, problems: read.problems, fetchedAtMs, stale }
}
