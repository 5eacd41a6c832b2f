/** The page's side of the worker that reads job files. */
import type { JobRead } from './read-job-files.ts'

export function readInWorker(files: readonly File[]): Promise<JobRead> {
  const worker = new Worker(new URL('./import-worker.ts', import.meta.url), { type: 'module' })
  return new Promise<JobRead>((resolve) => {
    worker.onmessage = ({ data }: MessageEvent<JobRead>) => resolve(data)
    worker.onerror = ({ message }) =>
      resolve({
        ok: false,
        problems: [{ code: 'import.failed', data: { text: message }, file: files[0]?.name ?? '' }],
      })
    worker.postMessage(files)
  }).finally(() => worker.terminate())
}
