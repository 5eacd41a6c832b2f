/** The page's side of the worker that reads files. */
import type { TableHints } from '#intake'
import type { HasRead, ToRead } from './import-worker.ts'
import type { FileProblem, JobRead, WeatherRead } from './read-job-files.ts'

export const readJobInWorker = (files: readonly File[]): Promise<JobRead> =>
  inWorker<JobRead>({ kind: 'job', files }, (text) => ({
    ok: false,
    problems: [failed(text, files[0])],
  }))

export const readWeatherInWorker = (file: File, hints?: TableHints): Promise<WeatherRead> =>
  inWorker<WeatherRead>({ kind: 'weather', file, ...(hints ? { hints } : {}) }, (text) => ({
    problems: [failed(text, file)],
  }))

const failed = (text: string, file: File | undefined): FileProblem => ({
  code: 'import.failed',
  data: { text },
  file: file?.name ?? '',
})

function inWorker<T>(files: ToRead, otherwise: (fault: string) => T): Promise<T> {
  const worker = new Worker(new URL('./import-worker.ts', import.meta.url), { type: 'module' })
  return new Promise<T>((resolve) => {
    worker.onmessage = ({ data }: MessageEvent<HasRead>) =>
      resolve('read' in data ? (data.read as T) : otherwise(data.fault))
    worker.onerror = ({ message }) => resolve(otherwise(message))
    worker.postMessage(files)
  }).finally(() => worker.terminate())
}
