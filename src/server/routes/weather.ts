/** `/api/weather/:hash`: hourly weather by the hash of what is in it. What is kept is always the canonical text. */
import { readWeatherCsv, seriesHash, writeWeatherCsv } from '#intake'
import { isMap, readJson } from '../http/body.ts'
import { refuse } from '../http/refusal.ts'
import { type Asked, answer, type Route, type RouteContext } from './route.ts'

export const weatherRoute = (context: RouteContext): Route => ({
  path: '/api/weather/:hash',
  open: false,
  methods: { GET: (asked) => give(asked, context), PUT: (asked) => take(asked, context) },
})

async function give({ params }: Asked, { store }: RouteContext): Promise<Response> {
  const bytes = await store.weather(hashOf(params))
  if (bytes === undefined) return refuse(404, 'server.weatherNotKept')
  return new Response(Buffer.from(bytes), {
    headers: {
      'Content-Type': 'text/csv; charset=utf-8',
      // The hash names the content: it never changes. Not for caches that others share.
      'Cache-Control': 'private, max-age=31536000, immutable',
    },
  })
}

async function take({ request, params }: Asked, { store, limits }: RouteContext): Promise<Response> {
  const hash = hashOf(params)
  const body = await readJson(request, limits.weatherBytes)
  const csv = isMap(body) ? body.csv : undefined
  if (typeof csv !== 'string') return refuse(400, 'server.bodyNotUnderstood', { at: 'csv' })
  const read = readWeatherCsv(Buffer.from(csv))
  if (!read.ok) {
    const count = read.problems.filter(({ severity }) => severity === 'error').length
    return refuse(422, 'server.weatherNotRead', { problem: read.problems[0]?.code ?? '', count })
  }
  const found = seriesHash(read.series)
  if (found !== hash) refuse(422, 'server.weatherDiffers', { found, wanted: hash })
  const known = await store.weatherHashes()
  if (!known.includes(hash)) {
    if (known.length >= limits.weatherSeries)
      refuse(507, 'server.weatherFull', { mostCount: limits.weatherSeries })
    await store.putWeather(hash, Buffer.from(writeWeatherCsv(read.series)))
  }
  return answer({ hash })
}

function hashOf({ hash = '' }: Asked['params']): string {
  return /^[0-9a-f]{64}$/.test(hash) ? hash : refuse(404, 'server.notFound')
}
