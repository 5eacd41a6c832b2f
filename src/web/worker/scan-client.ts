/** The page's side of the worker that works on a scan: one for each scan, ended with it. */
import type { FromScan, ScanAnswer, ScanQuestion, ScanStep } from './scan-messages.ts'

export type ScanDesk = {
  /** Rejects with a text when the worker fails, as on a device without memory for the scan. */
  readonly ask: (question: ScanQuestion) => Promise<ScanAnswer>
  /** Ends the worker at once, whatever it does, and frees all that it holds. */
  readonly close: () => void
}

export function openScanDesk(onProgress: (step: ScanStep, share: number) => void): ScanDesk {
  const worker = new Worker(new URL('./scan-worker.ts', import.meta.url), { type: 'module' })
  const open = new Map<number, { resolve: (answer: ScanAnswer) => void; reject: (fault: Error) => void }>()
  let count = 0
  worker.onmessage = ({ data }: MessageEvent<FromScan>) => {
    if (data.kind === 'progress') return onProgress(data.step, data.share)
    const asked = open.get(data.ask)
    open.delete(data.ask)
    if (data.kind === 'answer') asked?.resolve(data.answer)
    else asked?.reject(new Error(data.text))
  }
  worker.onerror = ({ message }) => {
    for (const { reject } of open.values()) reject(new Error(message))
    open.clear()
  }
  return {
    ask: (question) =>
      new Promise((resolve, reject) => {
        count += 1
        open.set(count, { resolve, reject })
        worker.postMessage({ ...question, ask: count })
      }),
    close: () => worker.terminate(),
  }
}
