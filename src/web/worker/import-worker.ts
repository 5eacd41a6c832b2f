/** The worker that reads job files: the readers of YAML and of cells stay out of the page. Reads once, and is ended. */
import { type GivenFile, type JobRead, readJobFiles } from './read-job-files.ts'

const port = self as unknown as {
  onmessage: ((event: { readonly data: readonly GivenFile[] }) => void) | null
  postMessage: (message: JobRead) => void
}

port.onmessage = ({ data }) => {
  readJobFiles(data).then(
    (read) => port.postMessage(read),
    (error: unknown) => {
      const text = error instanceof Error ? error.message : String(error)
      port.postMessage({
        ok: false,
        problems: [{ code: 'import.failed', data: { text }, file: data[0]?.name ?? '' }],
      })
    },
  )
}
