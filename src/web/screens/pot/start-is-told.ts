/** Whether the log says already that a step is under way: its second pot must not set its beginning anew. */
import type { LogLine } from '../../job/job-view.ts'
import { linesInForce } from '../../job/tell-log.ts'

const turns: readonly string[] = ['started', 'done', 'not done', 'mishap']

export function startIsTold(log: readonly LogLine[], step: string): boolean {
  const own = linesInForce(log)
    .filter(({ cells }) => cells.step === step && turns.includes(String(cells.kind)))
    .map(({ id, cells }) => ({ id, kind: cells.kind, film: cells.film, atMs: Date.parse(String(cells.at)) }))
    .filter(({ atMs }) => !Number.isNaN(atMs))
    // A coat that went wrong and stands is still under way.
    .filter(({ kind, film }) => kind !== 'mishap' || (film !== undefined && film !== 'stands'))
    .sort((a, b) => a.atMs - b.atMs || (a.id < b.id ? -1 : 1))
  return own.at(-1)?.kind === 'started'
}
