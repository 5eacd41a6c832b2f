/** The server's side of the log of a job, as a page asks it. */
import type { ApiError, LogPage, LogTaken, WireEntry } from '#replica'

/** The server answers and does not take or give: its code, where it names one. */
export class LogRefused extends Error {
  readonly code: string
  /** What was sent is at fault, and would be refused again. */
  readonly lasting: boolean

  constructor(status: number, code: string) {
    super(`log: refused, got ${status} ${code}, expected 200`)
    this.name = 'LogRefused'
    this.code = code
    this.lasting = status === 400 || status === 413
  }
}

/** Both fail with a `LogRefused`, or as `fetch` does when there is no server. */
export type LogServer = {
  readonly give: (entries: readonly WireEntry[]) => Promise<LogTaken>
  readonly page: (after: number) => Promise<LogPage>
}

export function logServer(job: string): LogServer {
  const path = `/api/jobs/${job}/log`
  return {
    give: (entries) =>
      ask(path, {
        method: 'POST',
        headers: { 'content-type': 'application/json' },
        body: JSON.stringify({ entries }),
      }),
    page: (after) => ask(`${path}?after=${after}`, { headers: { accept: 'application/json' } }),
  }
}

async function ask<T>(path: string, request: RequestInit): Promise<T> {
  const answer = await fetch(path, request)
  if (answer.ok) return (await answer.json()) as T
  const { error } = (await answer.json().catch(() => ({}))) as Partial<ApiError>
  throw new LogRefused(answer.status, error?.code ?? '')
}
