import { afterEach, describe, expect, it } from 'vitest'
import { memoryCache } from '#feeds'
import { readWeatherCsv } from '#intake'
import { startTestServer, type TestServer } from '../../../test/support/test-server.ts'
import { startWeatherService, type WeatherService } from '../../../test/support/weather-service.ts'

const open: (TestServer['server'] | WeatherService)[] = []
afterEach(async () => {
  for (const one of open.splice(0)) await one.close()
})

async function start() {
  const service = await startWeatherService('open-meteo.json')
  const { origin } = service
  const origins = { 'open-meteo': origin, 'met-norway': origin, 'us-nws': origin }
  const server = await startTestServer({ feeds: { cache: memoryCache(), userAgent: 'test', origins } })
  open.push(service, server.server)
  return { service, get: (path: string) => fetch(`${server.origin}/api/forecast/${path}`) }
}

describe('/api/forecast', () => {
  it('gives the pages the hours of a service in the program’s own form', async () => {
    const { service, get } = await start()
    const answer = await get('open-meteo/59.3/18.1')
    expect(answer.status).toBe(200)
    const { csv, stale } = (await answer.json()) as { readonly csv: string; readonly stale: boolean }
    expect(stale).toBe(false)
    expect(readWeatherCsv(new TextEncoder().encode(csv)).ok).toBe(true)
    expect(service.asked).toHaveLength(1)
  })

  it('asks nobody for what is no service or no place', async () => {
    const { service, get } = await start()
    expect((await get('elsewhere/59.3/18.1')).status).toBe(404)
    for (const spot of ['1e9/0', '59.3/x', '100/0', '0/181', 'NaN/NaN']) {
      const answer = await get(`open-meteo/${spot}`)
      expect(answer.status).toBe(502)
      expect(await answer.json()).toMatchObject({ error: { code: 'feeds.noSpot' } })
    }
    expect(service.asked).toEqual([])
  })

  it('says so where asking is switched off', async () => {
    const server = await startTestServer()
    open.push(server.server)
    const answer = await fetch(`${server.origin}/api/forecast/open-meteo/59.3/18.1`)
    expect(answer.status).toBe(502)
    expect(await answer.json()).toMatchObject({ error: { code: 'feeds.off' } })
  })
})
