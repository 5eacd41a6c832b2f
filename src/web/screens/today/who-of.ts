/** Who does a row of the day, how long it takes them, and what is poured for it. */
import { cellOf, type JobView } from '../../job/job-view.ts'
import type { DayRow } from './day-rows.ts'

/** A person's name as written; the id of one that is gone. */
export const personName = (view: Pick<JobView, 'raw'>, id: string): string =>
  cellOf(view, { part: 'work', section: 'people', item: id, key: 'name' }) || id

/** What an entry of the log says besides what happened: the step, and who is planned on it. */
export function entryOf(view: Pick<JobView, 'raw'>, { step, people }: Pick<DayRow, 'step' | 'people'>) {
  const by = people.map((id) => personName(view, id)).join(', ')
  return by === '' ? { step } : { step, by }
}

export function whoOf(view: JobView, row: DayRow): string {
  const { words } = view
  const names = row.people.map((id) => personName(view, id)).join(', ')
  const minutes = row.endMinute - row.startMinute
  const who =
    names === ''
      ? words.figure('minutes', minutes)
      : words.sentence('todayscreen.who', { names, minutes: words.figure('minutes', minutes) })
  const part =
    row.parts > 1 ? words.sentence('todayscreen.part', { part: row.part, parts: row.parts }) : undefined
  const volumeM3 = row.pours.reduce((sum, { readyM3 }) => sum + readyM3, 0)
  const pours =
    row.pours.length === 0
      ? undefined
      : words.sentence('todayscreen.pours', { count: row.pours.length, volumeM3 })
  return [who, part, pours].filter((text) => text !== undefined).join('; ')
}
