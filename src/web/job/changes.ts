/** The number of the last change that was made to a job on this device, which stands on its sheets. */
import type { DeviceDb } from '../device/device-db.ts'
import type { JobView } from './job-view.ts'

export type Changes = {
  readonly loaded: Promise<void>
  readonly last: () => JobView['change']
  readonly count: () => void
}

export function openChanges(db: DeviceDb, job: string): Changes {
  const fact = `changes ${job}`
  let last: JobView['change'] = { number: 0 }
  return {
    loaded: db.get('facts', fact).then((number) => {
      last = { number: Number(number ?? 0) }
    }),
    last: () => last,
    count: () => {
      last = { number: last.number + 1, atMs: Date.now() }
      // Only a number on the sheet: where it cannot be kept, the documents say so themselves.
      void db.put('facts', last.number, fact).catch(() => undefined)
    },
  }
}
