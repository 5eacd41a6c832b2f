/** Sees to it that the server has the weather that a job names, if this device has it. */
import type { DeviceDb } from './device-db.ts'
import { createListeners, type Listeners } from './listeners.ts'
import { weatherIsThere } from './weather-box.ts'

export type WeatherOffer = Pick<Listeners, 'listen'> & {
  /** Looks once for each hash and connection, and gives what the server has not got. */
  readonly offer: (hash: string | undefined) => Promise<void>
  /** The server is out of reach: what it has is not known any more. */
  readonly away: () => void
  /** 0 once the server has it; undefined while that is not known. */
  readonly waiting: () => number | undefined
}

export function openWeatherOffer(db: DeviceDb): WeatherOffer {
  const listeners = createListeners()
  let wanted: string | undefined
  let there: string | undefined
  let asking: string | undefined
  return {
    listen: listeners.listen,
    offer: async (hash) => {
      wanted = hash
      if (hash === undefined || hash === there || hash === asking) return
      asking = hash
      const found = await weatherIsThere(db, hash).catch(() => false)
      if (asking === hash) asking = undefined
      if (found) there = hash
      listeners.tell()
    },
    away: () => {
      there = undefined
    },
    waiting: () => (wanted === undefined || wanted === there ? 0 : undefined),
  }
}
