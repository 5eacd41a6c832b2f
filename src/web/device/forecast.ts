/** A forecast for the place of the boat, by way of the server: a page asks no other computer. */

export const forecastServices = ['open-meteo', 'met-norway', 'us-nws'] as const
export type ForecastService = (typeof forecastServices)[number]

export type FetchedForecast =
  | { readonly ok: true; readonly file: File; readonly fetchedAtMs: number; readonly stale: boolean }
  | { readonly ok: false; readonly code: string; readonly data: Readonly<Record<string, string | number>> }

/** @param spot radians, north and east are plus. */
export async function fetchForecast(
  service: ForecastService,
  spot: { readonly latitude: number; readonly longitude: number },
): Promise<FetchedForecast> {
  const degrees = (angle: number) => ((angle * 180) / Math.PI).toFixed(4)
  const path = `/api/forecast/${service}/${degrees(spot.latitude)}/${degrees(spot.longitude)}`
  try {
    const answer = await fetch(path, { cache: 'no-store' })
    const body: unknown = await answer.json()
    return answer.ok ? taken(service, body) : refused(body)
  } catch {
    return { ok: false, code: 'web.forecastNoServer', data: {} }
  }
}

type Body = { readonly csv?: unknown; readonly fetchedAtMs?: unknown; readonly stale?: unknown }

function taken(service: ForecastService, body: unknown): FetchedForecast {
  const { csv, fetchedAtMs, stale } = (body ?? {}) as Body
  if (typeof csv !== 'string' || typeof fetchedAtMs !== 'number')
    return { ok: false, code: 'web.forecastNoServer', data: {} }
  const day = new Date(fetchedAtMs).toISOString().slice(0, 10)
  return { ok: true, file: new File([csv], `${service}-${day}.csv`), fetchedAtMs, stale: stale === true }
}

function refused(body: unknown): FetchedForecast {
  const error = (body as { readonly error?: { readonly code?: unknown; readonly data?: unknown } } | null)
    ?.error
  if (typeof error?.code !== 'string') return { ok: false, code: 'web.forecastNoServer', data: {} }
  return {
    ok: false,
    code: error.code,
    data: (error.data ?? {}) as Readonly<Record<string, string | number>>,
  }
}
