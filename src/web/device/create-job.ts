/** A new job on this device: everything of it is kept before it is on the list, and the list before it is opened. */
import type { RawDocument } from '#job'
import { fillPart, moneyDocument, putShopJob, workDocument } from '#replica'
import type { Device } from './device.ts'
import { type DeviceDb, strictly, written } from './device-db.ts'
import { openDeviceDocument } from './device-document.ts'
import { type GivenWeather, keepWeather } from './keep-weather.ts'
import { newId } from './new-id.ts'

export type NewJob = {
  readonly raw: RawDocument
  /** What the job's own hashes name. */
  readonly weathers?: readonly GivenWeather[]
}

/** Resolves with the id once everything is on the disk; rejects with the code of the words when it cannot be. */
export async function createJob(device: Device, { raw, weathers = [] }: NewJob): Promise<string> {
  const { hardstand, work, money, log = {} } = raw
  const id = newId()
  for (const weather of weathers) await keepWeather(device.db, weather)
  await written(putEntries(device.db, id, log))
  const parts = [
    { name: workDocument(id), part: work, version: hardstand },
    ...(money ? [{ name: moneyDocument(id), part: money, version: undefined }] : []),
  ]
  for (const { name, part, version } of parts) {
    const document = openDeviceDocument(device.db, name)
    await document.loaded
    fillPart(document.doc, part, version)
    await settled(document)
    document.close()
  }
  const text = (cell: unknown): string => (typeof cell === 'string' ? cell : '')
  putShopJob(device.shop.doc, id, {
    name: text(work.job?.name),
    boatName: text(work.job?.boatName),
    madeMs: Date.now(),
  })
  await settled(device.shop)
  device.askToLast()
  return id
}

async function putEntries(db: DeviceDb, job: string, log: NonNullable<RawDocument['log']>): Promise<void> {
  const change = db.transaction('entries', 'readwrite', strictly)
  const rows = Object.entries(log).map(([id, cells]) => ({ job, id, cells, sent: false }))
  await Promise.all([...rows.map((row) => change.store.put(row)), change.done])
}

function settled(document: ReturnType<typeof openDeviceDocument>): Promise<void> {
  return new Promise((resolve, reject) => {
    const look = (): void => {
      const fault = document.fault()
      if (fault !== undefined) reject(new Error(fault))
      else if (document.kept()) resolve()
      else return
      stop()
    }
    const stop = document.listen(look)
    look()
  })
}
