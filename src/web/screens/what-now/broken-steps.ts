/** Which coats may have gone wrong: those under way or done, the latest first. */
import type { WorkStep } from '#plan'
import type { LogLine } from '../../job/job-view.ts'
import { linesInForce } from '../../job/tell-log.ts'
import type { ShownPlan } from '../../worker/messages.ts'

const films: readonly string[] = ['coat', 'fill', 'fill-repair']
const most = 12

/** Started by the log comes before begun by the plan; coats still to come are not there. */
export function brokenSteps(given: {
  readonly plan: ShownPlan
  readonly log: readonly LogLine[]
  readonly nowMs: number
}): readonly string[] {
  const { plan, log, nowMs } = given
  const isFilm = new Set(
    plan.steps.steps.filter(({ kind }) => films.includes(kind)).map(({ id }: WorkStep) => id),
  )
  const begun = plan.days.placed
    .filter(({ step, startMinute }) => isFilm.has(step) && startMinute * 60_000 <= nowMs)
    .map(({ step, startMinute }) => ({ step, atMs: startMinute * 60_000, told: false }))
  const told = linesInForce(log).flatMap(({ cells }) => {
    const { step, at, kind } = cells
    const atMs = Date.parse(String(at))
    const counts = (kind === 'started' || kind === 'done') && atMs <= nowMs
    return typeof step === 'string' && isFilm.has(step) && counts ? [{ step, atMs, told: true }] : []
  })
  const ordered = [...told, ...begun].sort((a, b) => b.atMs - a.atMs || Number(b.told) - Number(a.told))
  return [...new Set(ordered.map(({ step }) => step))].slice(0, most)
}
