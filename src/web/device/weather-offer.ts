/** Sees to it that the server has the weather that a job names, if this device has it. */
import type { DeviceDb } from './device-db.ts'
import type { NotTaken } from './document-sync.ts'
import { createListeners, type Listeners } from './listeners.ts'
import { WeatherRefused, weatherIsThere } from './weather-box.ts'

export type WeatherOffer = Pick<Listeners, 'listen'> & {
  /** Looks once for each hash and connection, and gives what the server has not got. */
  readonly offer: (hash: string | undefined) => Promise<void>
  /** The server is out of reach: what it has is not known any more. */
  readonly away: () => void
  /** 0 once the server has it; undefined while that is not known. */
  readonly waiting: () => number | undefined
  /** Why the server does not take it. */
  readonly notTaken: () => NotTaken | undefined
  /** Offers what was refused once more. */
  readonly again: () => void
}

export function openWeatherOffer(db: Pick<DeviceDb, 'get'>): WeatherOffer {
  const listeners = createListeners()
  let wanted: string | undefined
  let there: string | undefined
  let asking: string | undefined
  let refused: { readonly hash: string; readonly code: string } | undefined

  const offer = async (hash: string | undefined): Promise<void> => {
    wanted = hash
    if (hash === undefined || hash === there || hash === asking || hash === refused?.hash) return
    asking = hash
    try {
      if (await weatherIsThere(db, hash)) there = hash
    } catch (error) {
      // Without a server it is offered the next time.
      if (error instanceof WeatherRefused) refused = { hash, code: error.code }
    }
    if (asking === hash) asking = undefined
    listeners.tell()
  }
  return {
    listen: listeners.listen,
    offer,
    away: () => {
      there = undefined
      refused = undefined
    },
    waiting: () => (wanted === undefined || wanted === there ? 0 : undefined),
    notTaken: () => (refused && refused.hash === wanted ? { code: refused.code, data: {} } : undefined),
    again: () => {
      refused = undefined
      void offer(wanted)
    },
  }
}
