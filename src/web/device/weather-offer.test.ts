import { afterEach, describe, expect, it, vi } from 'vitest'
import { readWeatherCsv, seriesHash, writeWeatherCsv } from '#intake'
import { serverLimits } from '#server'
import { startTestServer } from '../../../test/support/test-server.ts'
import { openWeatherOffer, type WeatherOffer } from './weather-offer.ts'

const opened: { readonly close: () => unknown }[] = []

afterEach(async () => {
  for (const each of opened.splice(0)) await each.close()
  vi.unstubAllGlobals()
})

/** As many hours and digits as a file may have. */
function longest(hours: number) {
  const row = (hour: number): string =>
    [
      new Date(Date.UTC(2016, 0, 1) + hour * 3_600_000).toISOString(),
      ...['-19.123457', '99.123457', '10.123457', '359.123457', '100.123457', '99.123457', '99.123457'],
      '1499.123457',
    ].join(',')
  const head = 'time,airC,humidityPct,windMps,windFromDeg,rainMm,cloudPct,rainChancePct,sunWm2'
  const csv = [head, ...Array.from({ length: hours }, (_, hour) => row(hour))].join('\n')
  const read = readWeatherCsv(Buffer.from(csv))
  if (!read.ok) throw new Error(read.problems[0]?.code)
  return { hash: seriesHash(read.series), bytes: Buffer.from(writeWeatherCsv(read.series)) }
}

/** A device with a weather on it, beside a server with these bounds. */
async function offerOf(
  { hash, bytes }: ReturnType<typeof longest>,
  limits: Parameters<typeof startTestServer>[0] = {},
): Promise<{ readonly offer: WeatherOffer; readonly kept: () => Promise<readonly string[]> }> {
  const { server, store, origin } = await startTestServer(limits)
  opened.push(server)
  const real = globalThis.fetch
  vi.stubGlobal('fetch', (path: string, given: RequestInit = {}) =>
    real(`${origin}${path}`, { ...given, headers: { origin, ...given.headers } }),
  )
  const get = async (_store: string, key: unknown) => (key === hash ? new Uint8Array(bytes) : undefined)
  return { offer: openWeatherOffer({ get } as never), kept: () => store.weatherHashes() }
}

describe('weather that is on this device', () => {
  it('is taken by the server up to the longest file with the most digits', async () => {
    const weather = longest(100_000)
    const { offer, kept } = await offerOf(weather)
    await offer.offer(weather.hash)
    expect([offer.waiting(), offer.notTaken()]).toEqual([0, undefined])
    expect(await kept()).toEqual([weather.hash])
    // Some eight megabytes are written, read and sent.
  }, 60_000)

  it.each([
    ['is too big for the server', { weatherBytes: 1000 }, 'web.weatherTooLarge'],
    ['finds no room there', { weatherSeries: 0 }, 'web.weatherFull'],
  ])('and %s is not waited for: it is said, until it is offered again', async (_, bounds, code) => {
    const weather = longest(100)
    const { offer } = await offerOf(weather, { limits: { ...serverLimits, ...bounds } })
    await offer.offer(weather.hash)
    expect([offer.waiting(), offer.notTaken()]).toEqual([undefined, { code, data: {} }])
    const asked = vi.fn(globalThis.fetch)
    vi.stubGlobal('fetch', asked)
    await offer.offer(weather.hash)
    expect(asked).not.toHaveBeenCalled()
    offer.again()
    expect(asked).toHaveBeenCalledTimes(1)
    await offer.offer('of another file')
    expect(offer.notTaken()).toBeUndefined()
  })
})
