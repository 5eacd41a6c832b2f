/** `weather --fetch` as a person runs it, against a service on loopback. */
import { execFile } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { startWeatherService, type WeatherService } from '../../test/support/weather-service.ts'

const root = fileURLToPath(new URL('../../', import.meta.url))
const folder = mkdtempSync(join(tmpdir(), 'hardstand-fetch-'))
let service: WeatherService
beforeAll(async () => {
  service = await startWeatherService('met.json')
})
afterAll(async () => {
  rmSync(folder, { recursive: true, force: true })
  await service.close()
})

const job = join(root, 'samples/open-powerboat.yaml')

function run(args: readonly string[], environment: Readonly<Record<string, string>> = {}) {
  const env = {
    ...process.env,
    XDG_CACHE_HOME: join(folder, 'cache'),
    HARDSTAND_FEEDS_ORIGIN: service.origin,
    ...environment,
  }
  return new Promise<{ code: number; out: string; err: string }>((resolve) => {
    execFile(process.execPath, [join(root, 'dist/cli/main.js'), ...args], { env }, (error, out, err) =>
      resolve({ code: error ? Number(error.code) : 0, out, err }),
    )
  })
}

describe('a forecast on the command line', () => {
  it('is fetched once for the place of the job, kept, and written as a file that reads', async () => {
    const out = join(folder, 'weather.csv')
    const first = await run(['weather', job, '--fetch', 'met-norway', '--out', out])
    expect(first.err).toBe('')
    expect(first.out).toMatch(/MET Norway/)
    expect(readFileSync(out, 'utf8').length).toBeGreaterThan(100)
    expect((await run(['weather', out])).out).toMatch(/MET Norway/)
    expect((await run(['weather', job, '--fetch', 'met-norway'])).code).toBe(0)
    expect(service.asked).toEqual([expect.stringMatching(/^\/weatherapi\/.*lat=-?\d+\.\d{1,4}&lon=/)])
  })

  it('says in a sentence why there is none', async () => {
    const refused = async (args: readonly string[], saying: RegExp, environment = {}) => {
      const { code, err } = await run(['weather', ...args], environment)
      expect(code).toBe(1)
      expect(err).toMatch(saying)
      expect(err).not.toMatch(/\n\s+at /)
    }
    await refused([job, '--fetch', 'crystal-ball'], /met-norway/)
    await refused([job, '--fetch', 'met-norway'], /switched off/, { HARDSTAND_FEEDS: 'off' })
    const nowhere = { HARDSTAND_FEEDS_ORIGIN: 'http://127.0.0.1:9', XDG_CACHE_HOME: join(folder, 'empty') }
    await refused([job, '--fetch', 'open-meteo'], /cannot be reached/, nowhere)
  })
})
