/** The worker that reads files: the readers of YAML and of cells stay out of the page. Reads once, and is ended. */
import type { TableHints } from '#intake'
import {
  type GivenFile,
  type JobRead,
  readJobFiles,
  readWeather,
  type WeatherRead,
} from './read-job-files.ts'

/** Files of a job, or one of weather alone. */
export type ToRead =
  | { readonly kind: 'job'; readonly files: readonly GivenFile[] }
  | { readonly kind: 'weather'; readonly file: GivenFile; readonly hints?: TableHints }

export type HasRead = { readonly read: JobRead | WeatherRead } | { readonly fault: string }

const port = self as unknown as {
  onmessage: ((event: { readonly data: ToRead }) => void) | null
  postMessage: (message: HasRead) => void
}

port.onmessage = ({ data }) => {
  const reading = data.kind === 'job' ? readJobFiles(data.files) : readWeather(data.file, data.hints)
  reading.then(
    (read) => port.postMessage({ read }),
    (error: unknown) => port.postMessage({ fault: error instanceof Error ? error.message : String(error) }),
  )
}
