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

/** Whether the server has everything that this device has of it, after it was given what it had not. */
export async function weatherIsThere(db: DeviceDb, hash: string): Promise<boolean> {
  // A browser may answer from what it keeps: the server itself is meant.
  const { ok, status } = await fetch(`/api/weather/${hash}`, { method: 'HEAD', cache: 'no-store' })
  if (ok) return true
  if (status !== 404) return false
  const here = await db.get('weather', hash)
  return here === undefined || sendWeather(hash, here)
}

async function sendWeather(hash: string, bytes: Uint8Array): Promise<boolean> {
  try {
    const answer = await fetch(`/api/weather/${hash}`, {
      method: 'PUT',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify({ csv: new TextDecoder().decode(bytes) }),
    })
    return answer.ok
  } catch {
    return false
  }
}
