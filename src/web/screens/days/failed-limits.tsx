/** Limits that failed, each as a sentence. */
import { limitNote } from '#plan'
import type { JobView } from '../../job/job-view.ts'
import type { FailingAsked } from './failing-hours.ts'

export type FailedLimitsProps = { readonly view: JobView; readonly asked: FailingAsked }

export const FailedLimits = ({ view: { words }, asked }: FailedLimitsProps) => {
  if (asked.kind === 'asking') return null
  if (asked.kind === 'fault') return <p>{words.sentence('daysscreen.whyFault')}</p>
  return asked.failing.length === 0 ? null : (
    <ul className="days-unplaced">
      {asked.failing.map((failing) => {
        const note = limitNote(failing)
        return <li key={failing.limit}>{words.sentence(note.code, note.data)}</li>
      })}
    </ul>
  )
}
