/** `/api/forecast/:service/:latitude/:longitude`: the forecast of an open service, asked by the server for its pages. */
import { fetchForecast, type ServiceName, serviceNames } from '#feeds'
import { writeWeatherCsv } from '#intake'
import { refuse } from '../http/refusal.ts'
import { type Asked, answer, type Route, type RouteContext } from './route.ts'

export const forecastRoute = (context: RouteContext): Route => ({
  path: '/api/forecast/:service/:latitude/:longitude',
  open: false,
  methods: { GET: (asked) => give(asked, context) },
})

async function give({ params }: Asked, { feeds }: RouteContext): Promise<Response> {
  const service = serviceOf(params.service)
  const spot = { latitude: degreesOf(params.latitude), longitude: degreesOf(params.longitude) }
  const found = await fetchForecast({ service, spot }, feeds)
  // A fault over there, or none to be had: the page says it in words, and goes on without.
  if (!found.ok) return refuse(502, found.fault.code, found.fault.data)
  const { series, fetchedAtMs, stale } = found
  return answer({ csv: writeWeatherCsv(series), fetchedAtMs, stale })
}

const serviceOf = (text = ''): ServiceName =>
  serviceNames.find((name) => name === text) ?? refuse(404, 'server.notFound')

/** Not a number where it is none; the forecast is then refused. */
const degreesOf = (text = ''): number => (/^-?\d{1,3}(\.\d{1,9})?$/.test(text) ? Number(text) : Number.NaN)
