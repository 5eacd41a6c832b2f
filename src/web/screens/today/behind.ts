/** What was planned to be over by now and nobody has ticked, by the plan as it stood when the log was last told. */
import type { Plan } from '#plan'
import { cellOf, type JobView } from '../../job/job-view.ts'
import { localDate } from '../../job/local-date.ts'
import { isDate, minuteAt } from '../../job/local-days.ts'
import { linesInForce } from '../../job/tell-log.ts'
import { lastTurns } from './day-rows.ts'

/** The plan is made again from now on, so what lies behind is asked of the plan of this moment. */
export type Since = {
  readonly minute: number
  readonly date: string
  /** Long enough for a sentence over the day. */
  readonly long: boolean
}

type Asked = Pick<JobView, 'raw' | 'log' | 'timeZone' | 'nowMs'>

/** A weekend is no silence. */
const longMinutes = 3 * 24 * 60
const turns: readonly string[] = ['started', 'done', 'not done', 'mishap']

/** The last turn of a step before today, or the first day of work; ticks of today do not hide the days before. */
export function openSince(view: Asked): Since | undefined {
  const { log, timeZone, nowMs } = view
  const nowMinute = Math.floor(nowMs / 60_000)
  const today = minuteAt(localDate(nowMinute, timeZone), 0, timeZone)
  const told = linesInForce(log).flatMap(({ cells: { at, kind, step } }) => {
    const minute = Math.floor(Date.parse(String(at)) / 60_000)
    return step !== undefined && turns.includes(String(kind)) && minute < today ? [minute] : []
  })
  const start = cellOf(view, { part: 'work', section: 'job', key: 'start' })
  const first = isDate(start) ? [minuteAt(start, 0, timeZone)] : []
  const minute = Math.max(...first, ...told)
  if (!Number.isFinite(minute) || minute >= today) return undefined
  const turnedToday = linesInForce(log).some(
    ({ cells }) => turns.includes(String(cells.kind)) && Date.parse(String(cells.at)) >= today * 60_000,
  )
  return {
    minute,
    date: localDate(minute, timeZone),
    long: !turnedToday && nowMinute - minute > longMinutes,
  }
}

export type Behind = {
  readonly step: string
  readonly people: readonly string[]
  readonly startMinute: number
  readonly endMinute: number
}

/** In the order in which they were planned to end. */
export function behindOf(
  { days }: { readonly days: Pick<Plan['days'], 'placed'> },
  { log, nowMs }: Pick<JobView, 'log' | 'nowMs'>,
): readonly Behind[] {
  const told = lastTurns(log)
  return days.placed
    .filter(({ done, step, endMinute }) => !done && told.get(step) !== 'done' && endMinute * 60_000 <= nowMs)
    .map(({ step, startMinute, endMinute, pieces }) => {
      const people = [...new Set(pieces.flatMap((piece) => piece.people))]
      return { step, people, startMinute, endMinute }
    })
    .sort((a, b) => a.endMinute - b.endMinute || a.startMinute - b.startMinute || (a.step < b.step ? -1 : 1))
}

/** All that were planned to end no later than one of them. */
export function upTo(behind: readonly Behind[], step: string | undefined): readonly Behind[] {
  const last = behind.find((one) => one.step === step)
  return last === undefined ? [] : behind.filter(({ endMinute }) => endMinute <= last.endMinute)
}
