/** A new job on this device: its documents are filled and kept before it is on the list. */
import type { RawDocument } from '#job'
import { fillPart, moneyDocument, putShopJob, workDocument } from '#replica'
import type { Device } from './device.ts'
import { openDeviceDocument } from './device-document.ts'
import { newId } from './new-id.ts'

/** Resolves with the id once everything is on the disk; rejects with the code of the words when it cannot be. */
export async function createJob(device: Device, { hardstand, work, money }: RawDocument): Promise<string> {
  const id = newId()
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
  device.askToLast()
  return id
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
