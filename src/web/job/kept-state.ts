/** Where the newest edits are kept, from what the documents, the log and the connection say of themselves. */

import type { Device } from '../device/device.ts'
import type { DeviceDocument } from '../device/device-document.ts'
import type { Sync } from '../device/document-sync.ts'
import type { LogBox } from '../device/log-box.ts'
import type { WeatherOffer } from '../device/weather-offer.ts'
import type { Kept } from './job-view.ts'

export type KeptFacts = {
  readonly documents: readonly Pick<DeviceDocument, 'kept' | 'fault'>[]
  readonly log: Pick<LogBox, 'kept' | 'fault' | 'entries' | 'waiting' | 'notTaken'>
  readonly syncs: readonly Pick<Sync, 'waiting' | 'notTaken'>[]
  readonly weather: Pick<WeatherOffer, 'waiting' | 'notTaken'>
  readonly device: Pick<Device, 'connection' | 'lasting' | 'fault' | 'shop' | 'shopSync'>
}

/** `both` only when the server has said of every document, entry and weather that it has it. */
export function keptState({ log, weather, device, ...facts }: KeptFacts): Omit<Kept, 'others'> {
  const { connection, lasting } = device
  // A job that is not on the list is as good as lost.
  const documents = [...facts.documents, device.shop]
  const syncs = [...facts.syncs, device.shopSync]
  const online = connection.online()
  const unsent = log.entries().filter(({ sent }) => !sent).length
  const waits = [log, weather, ...syncs].map((one) => one.waiting())
  const waiting = unsent + syncs.reduce<number>((sum, sync) => sum + (sync.waiting() ?? 0), 0)
  const there = online && waiting === 0 && waits.every((wait) => wait !== undefined)
  const fault = [device.fault(), ...documents.map((document) => document.fault()), log.fault()].find(
    (code) => code !== undefined,
  )
  const here = fault === undefined && log.kept() && documents.every((document) => document.kept())
  const notTaken = [...syncs, log, weather].map((one) => one.notTaken()).find((why) => why !== undefined)
  const stays = lasting()
  return {
    where: here ? (there ? 'both' : 'device') : 'writing',
    online,
    waiting,
    ...(stays === undefined ? {} : { lasting: stays }),
    newer: connection.hello() !== undefined && connection.hello()?.app !== __APP_VERSION__,
    ...(fault === undefined ? {} : { fault }),
    ...(notTaken === undefined ? {} : { notTaken }),
    mustSignIn: connection.mustSignIn(),
  }
}
