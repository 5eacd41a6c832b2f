/** Weather by its hash: on this device, else from the server; what is only here goes to the server when it can. */
import type { DeviceDb } from './device-db.ts'

/** Undefined while neither this device nor the server has it. */
export async function weatherBytes(db: DeviceDb, hash: string): Promise<Uint8Array | undefined> {
  const here = await db.get('weather', hash)
  if (here) return here
  const there = await fetchWeather(hash)
  if (there) await db.put('weather', there, hash)
  return there
}

async function fetchWeather(hash: string): Promise<Uint8Array | undefined> {
  try {
    const answer = await fetch(`/api/weather/${hash}`)
    return answer.ok ? new Uint8Array(await answer.arrayBuffer()) : undefined
  } catch {
    return undefined
  }
}

/** The server answers and does not take it: as a code of the words. */
export class WeatherRefused extends Error {
  readonly code: string

  constructor(code: string) {
    super(`weather: refused, got ${code}, expected it to be taken`)
    this.name = 'WeatherRefused'
    this.code = code
  }
}

/**
 * Whether the server has everything that this device has of it, after it was given what it had not. Fails with a
 * `WeatherRefused`, or as `fetch` does when there is no server.
 */
export async function weatherIsThere(db: Pick<DeviceDb, 'get'>, hash: string): Promise<boolean> {
  // A browser may answer from what it keeps: the server itself is meant.
  const { ok, status } = await fetch(`/api/weather/${hash}`, { method: 'HEAD', cache: 'no-store' })
  if (ok) return true
  if (status !== 404) return false
  const here = await db.get('weather', hash)
  if (here !== undefined) await sendWeather(hash, here)
  return true
}

/** What an answer means that will be the same the next time; a session that ended is asked for elsewhere. */
const refusals: Readonly<Record<number, string>> = {
  400: 'web.weatherRefused',
  413: 'web.weatherTooLarge',
  422: 'web.weatherRefused',
  507: 'web.weatherFull',
}

async function sendWeather(hash: string, bytes: Uint8Array): Promise<void> {
  const { ok, status } = await fetch(`/api/weather/${hash}`, {
    method: 'PUT',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({ csv: new TextDecoder().decode(bytes) }),
  })
  const code = refusals[status]
  if (code !== undefined) throw new WeatherRefused(code)
  if (!ok) throw new Error(`weather: not taken, got ${status}, expected 200`)
}
