/** The weathers that a job names, offered to the server as one: there only when all are. */
import type { DeviceDb } from './device-db.ts'
import type { Listeners } from './listeners.ts'
import { openWeatherOffer, type WeatherOffer } from './weather-offer.ts'

export type WeatherOffers = Pick<Listeners, 'listen'> &
  Pick<WeatherOffer, 'away' | 'waiting' | 'notTaken' | 'again'> & {
    readonly offer: (hashes: readonly (string | undefined)[]) => Promise<void>
  }

/** @param count how many a job names at most. */
export function openWeatherOffers(db: Pick<DeviceDb, 'get'>, count: number): WeatherOffers {
  const offers = Array.from({ length: count }, () => openWeatherOffer(db))
  return {
    listen: (listener) => {
      const stops = offers.map((one) => one.listen(listener))
      return () => {
        for (const stop of stops) stop()
      }
    },
    offer: async (hashes) => {
      await Promise.all(offers.map((one, at) => one.offer(hashes[at])))
    },
    away: () => {
      for (const one of offers) one.away()
    },
    waiting: () => (offers.every((one) => one.waiting() === 0) ? 0 : undefined),
    notTaken: () => offers.map((one) => one.notTaken()).find((why) => why !== undefined),
    again: () => {
      for (const one of offers) if (one.notTaken()) one.again()
    },
  }
}
