/** The open job of a page, as React reads it. */
import { useEffect, useState, useSyncExternalStore } from 'react'
import type { Device } from '../device/device.ts'
import type { JobView } from './job-view.ts'
import { type OpenJob, openJob } from './open-job.ts'

const nothing = (): (() => void) => () => {}

/** Undefined until the documents of the job are read from this device. */
export function useOpenJob(device: Device, id: string): JobView | undefined {
  const [job, setJob] = useState<OpenJob>()
  useEffect(() => {
    let closed = false
    let opened: OpenJob | undefined
    const worker = new Worker(new URL('../worker/plan-worker.ts', import.meta.url), { type: 'module' })
    openJob({ device, id, worker }).then(
      (found) => {
        if (closed) return found.close()
        opened = found
        setJob(found)
      },
      // The device says itself why nothing can be read from it.
      () => worker.terminate(),
    )
    return () => {
      closed = true
      setJob(undefined)
      opened?.close()
    }
  }, [device, id])
  const view = useSyncExternalStore(job?.listen ?? nothing, () => job?.view())
  return view?.id === id ? view : undefined
}
