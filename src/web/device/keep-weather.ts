/** Weather that a person gave, onto the disk of this device. */
import { type DeviceDb, strictly, written } from './device-db.ts'

export type GivenWeather = {
  readonly hash: string
  readonly bytes: Uint8Array
  /** The hours of a year that has no dates. */
  readonly typicalYear: boolean
}

/** Resolves once it is on the disk; rejects with the code of the words when it cannot be kept. */
export async function keepWeather(db: DeviceDb, { hash, bytes }: GivenWeather): Promise<void> {
  const change = db.transaction('weather', 'readwrite', strictly)
  await written(Promise.all([change.store.put(bytes, hash), change.done]))
}
