/** Weather by its hash: on this device, else from the server; a file read here goes to the server when it can. */
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

/** Keeps weather here, and gives it to the server; `sent` false when that has to be done again. */
export async function keepWeather(
  db: DeviceDb,
  hash: string,
  bytes: Uint8Array,
): Promise<{ readonly sent: boolean }> {
  await db.put('weather', bytes, hash)
  return { sent: await sendWeather(hash, bytes) }
}

/** Gives the server a weather it may not have. */
export async function sendWeather(hash: string, bytes: Uint8Array): Promise<boolean> {
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
