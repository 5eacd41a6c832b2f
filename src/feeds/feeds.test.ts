/** Weather services as they answer, late, wrong or not at all, on a server of our own on loopback. */
import { readFileSync } from 'node:fs'
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http'
import type { AddressInfo } from 'node:net'
import { afterEach, describe, expect, it } from 'vitest'
import { type AnswerCache, memoryCache } from './answer-cache.ts'
import { type FeedOptions, fetchForecast } from './fetch-forecast.ts'
import type { Origins, ServiceName } from './service.ts'

const recorded = (name: string): Uint8Array =>
  new Uint8Array(readFileSync(new URL(`../../test/files/weather/${name}`, import.meta.url)))

type Handler = (request: IncomingMessage, response: ServerResponse) => void
const closing: (() => Promise<void>)[] = []
afterEach(async () => {
  for (const close of closing.splice(0)) await close()
})

/** A server that answers as told and keeps what it was asked. */
async function serviceThat(handler: Handler) {
  const asked: IncomingMessage[] = []
  const server = createServer((request, response) => {
    asked.push(request)
    handler(request, response)
  })
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
  closing.push(
    () =>
      new Promise((resolve) => {
        server.closeAllConnections()
        server.close(() => resolve())
      }),
  )
  const origin = `http://127.0.0.1:${(server.address() as AddressInfo).port}`
  const origins: Origins = { 'open-meteo': origin, 'met-norway': origin, 'us-nws': origin }
  return { origin, origins, asked }
}

const spot = { latitude: 59.329_444_4, longitude: -18.068_611_1 }

function optionsFor(
  origins: Origins,
  over: Partial<FeedOptions> = {},
): FeedOptions & { readonly paused: number[] } {
  const paused: number[] = []
  return {
    origins,
    cache: memoryCache(),
    userAgent: 'hardstand test',
    timeoutMs: 400,
    pause: async (ms) => void paused.push(ms),
    clockMs: () => 1_000_000,
    paused,
    ...over,
  }
}

const get = (service: ServiceName, options: FeedOptions) => fetchForecast({ service, spot }, options)

const answerWith =
  (name: string, headers: Readonly<Record<string, string>> = {}): Handler =>
  (_, response) =>
    void response.writeHead(200, { 'content-type': 'application/json', ...headers }).end(recorded(name))

describe('a forecast', () => {
  it.each([
    ['open-meteo', 'open-meteo.json', /^\/v1\/forecast\?latitude=59\.3294&longitude=-18\.0686&/],
    [
      'met-norway',
      'met.json',
      /^\/weatherapi\/locationforecast\/2\.0\/complete\?lat=59\.3294&lon=-18\.0686$/,
    ],
  ] as const)('of %s is one series with its source, asked politely', async (service, name, path) => {
    const { origins, asked } = await serviceThat(answerWith(name))
    const found = await get(service, optionsFor(origins))
    expect(found).toMatchObject({ ok: true, stale: false, fetchedAtMs: 1_000_000 })
    if (found.ok) expect(found.series.licence).not.toBe('')
    expect(asked).toHaveLength(1)
    expect(asked[0]!.url).toMatch(path)
    expect(asked[0]!.headers['user-agent']).toBe('hardstand test')
  })

  it('of the US service goes by way of its point, and stays with it', async () => {
    const { origins, asked } = await serviceThat((request, response) => {
      if (request.url?.startsWith('/points/'))
        response.end(
          JSON.stringify({
            properties: { forecastGridData: 'https://elsewhere.example/gridpoints/TAE/58,65' },
          }),
        )
      else response.end(recorded('nws-grid.json'))
    })
    expect((await get('us-nws', optionsFor(origins))).ok).toBe(true)
    expect(asked.map(({ url }) => url)).toEqual(['/points/59.3294,-18.0686', '/gridpoints/TAE/58,65'])
  })

  it('of a point that leads nowhere known is refused', async () => {
    const { origins, asked } = await serviceThat((_, response) =>
      response.end(JSON.stringify({ properties: { forecastGridData: 'http://127.0.0.1/secrets' } })),
    )
    expect(await get('us-nws', optionsFor(origins))).toMatchObject({
      ok: false,
      fault: { code: 'feeds.answerOdd' },
    })
    expect(asked).toHaveLength(1)
  })
})

describe('an answer that is kept', () => {
  it('is not asked for again while it is new, and with its date when it is old', async () => {
    let now = 1_000_000
    const state = 'Mon, 26 Apr 2027 08:00:00 GMT'
    const { origins, asked } = await serviceThat((request, response) => {
      if (request.headers['if-modified-since'] === state) response.writeHead(304).end()
      else
        answerWith('met.json', { 'last-modified': state, 'cache-control': 'max-age=600' })(request, response)
    })
    const options = optionsFor(origins, { clockMs: () => now })
    await get('met-norway', options)
    now += 599_000
    await get('met-norway', options)
    expect(asked).toHaveLength(1)
    now += 2000
    expect(await get('met-norway', options)).toMatchObject({ ok: true, stale: false, fetchedAtMs: now })
    expect(asked[1]!.headers['if-modified-since']).toBe(state)
    await get('met-norway', options)
    expect(asked).toHaveLength(2)
  })

  it('stands in, and says how old it is, where the service cannot be reached', async () => {
    let now = 1_000_000
    let broken = false
    const { origins } = await serviceThat((request, response) =>
      broken ? request.socket.destroy() : answerWith('met.json')(request, response),
    )
    const options = optionsFor(origins, { clockMs: () => now })
    await get('met-norway', options)
    broken = true
    now += 3_600_000
    expect(await get('met-norway', options)).toMatchObject({ ok: true, stale: true, fetchedAtMs: 1_000_000 })
  })

  it('is one of fifty at most', async () => {
    const cache: AnswerCache = memoryCache()
    const answer = { bytes: new Uint8Array(1), freshUntilMs: 1, fetchedAtMs: 0 }
    for (let nr = 0; nr < 60; nr++) await cache.put(`u${nr}`, answer)
    expect(await cache.get('u9')).toBeUndefined()
    expect(await cache.get('u10')).toBeDefined()
  })
})

describe('a service that does not answer', () => {
  it('is asked three times with longer pauses, then said to be out of reach', async () => {
    const { origins, asked } = await serviceThat((request) => request.socket.destroy())
    const options = optionsFor(origins)
    const found = await get('open-meteo', options)
    expect(found).toMatchObject({ ok: false, fault: { code: 'feeds.unreachable' } })
    expect(asked).toHaveLength(3)
    expect(options.paused).toEqual([500, 1000])
  })

  it('is not waited for longer than the time set', async () => {
    const { origins } = await serviceThat(() => undefined)
    const found = await get('open-meteo', optionsFor(origins, { timeoutMs: 60, attempts: 1 }))
    expect(found).toMatchObject({ ok: false, fault: { code: 'feeds.late' } })
  })

  it('is asked later where it is busy and says when, not at all where that is long, and not again where it refuses', async () => {
    const busy = (seconds: string) =>
      serviceThat((_, response) => void response.writeHead(429, { 'retry-after': seconds }).end())
    const soon = await busy('2')
    const patient = optionsFor(soon.origins)
    expect(await get('open-meteo', patient)).toMatchObject({ ok: false, fault: { code: 'feeds.busy' } })
    expect(patient.paused).toEqual([2000, 2000])
    const late = await busy('3600')
    await get('open-meteo', optionsFor(late.origins))
    expect(late.asked).toHaveLength(1)
    const refusing = await serviceThat((_, response) => void response.writeHead(404).end())
    expect(await get('open-meteo', optionsFor(refusing.origins))).toMatchObject({
      ok: false,
      fault: { code: 'feeds.refused', data: { status: 404 } },
    })
    expect(refusing.asked).toHaveLength(1)
  })
})

describe('an answer that cannot be meant', () => {
  it.each([
    ['garbage', '<html>nothing</html>'],
    ['another JSON', '{"weather":"fine"}'],
    ['half an answer', new TextDecoder().decode(recorded('met.json')).slice(0, 200)],
  ])('is told: %s', async (_, body) => {
    const { origins } = await serviceThat((__, response) => void response.end(body))
    const found = await get('open-meteo', optionsFor(origins))
    expect(found).toMatchObject({ ok: false, fault: { code: 'feeds.answerOdd' } })
    expect(found.problems.length).toBeGreaterThan(0)
  })

  it('is not read further than the most that is taken', async () => {
    let sent = 0
    const { origins } = await serviceThat((_, response) => {
      const more = () => {
        while (sent < 200e6 && response.write(Buffer.alloc(1 << 20, 32))) sent += 1 << 20
      }
      response.on('drain', more)
      more()
    })
    const found = await get('open-meteo', optionsFor(origins, { timeoutMs: 20_000, attempts: 1 }))
    expect(found).toMatchObject({ ok: false, fault: { code: 'feeds.tooLarge' } })
    expect(sent).toBeLessThan(100e6)
  })

  it('leads to no other place', async () => {
    const other = await serviceThat(answerWith('met.json'))
    const { origins } = await serviceThat(
      (_, response) => void response.writeHead(302, { location: other.origin }).end(),
    )
    expect((await get('met-norway', optionsFor(origins))).ok).toBe(false)
    expect(other.asked).toEqual([])
  })
})

describe('asking at all', () => {
  it('is switched off by a word, and needs a place on earth', async () => {
    const { origins, asked } = await serviceThat(answerWith('met.json'))
    const options = optionsFor(origins)
    expect(await get('met-norway', { ...options, off: true })).toMatchObject({
      ok: false,
      fault: { code: 'feeds.off' },
    })
    for (const latitude of [Number.NaN, 91, Number.POSITIVE_INFINITY])
      expect(
        await fetchForecast({ service: 'met-norway', spot: { latitude, longitude: 0 } }, options),
      ).toMatchObject({ ok: false, fault: { code: 'feeds.noSpot' } })
    expect(asked).toEqual([])
  })
})
