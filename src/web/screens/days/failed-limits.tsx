/** Limits that failed in some hours of a kind of place, each once: the worker holds them. */
import { useEffect, useState } from 'react'
import { limitNote } from '#plan'
import type { JobView } from '../../job/job-view.ts'
import type { Failing } from '../../worker/messages.ts'
import type { Minutes } from '../hour-spans.ts'

export type FailedLimitsProps = Minutes & {
  readonly view: JobView
  /** Of the hours asked about. */
  readonly hoursKey: string
}

type Asked =
  | { readonly kind: 'asking' }
  | { readonly kind: 'fault' }
  | { readonly kind: 'told'; readonly failing: Failing }

/** Longer work is not judged hour by hour. */
const mostHours = 48

export const FailedLimits = ({ view, hoursKey, fromMinute, toMinute }: FailedLimitsProps) => {
  const [asked, setAsked] = useState<Asked>({ kind: 'asking' })
  const { ask } = view
  useEffect(() => {
    let here = true
    const first = Math.floor(fromMinute / 60)
    const count = Math.min(mostHours, Math.ceil(toMinute / 60) - first)
    const hours = Array.from({ length: count }, (_, k) => first + k)
    Promise.all(hours.map((hour) => ask({ kind: 'why', key: hoursKey, minute: hour * 60 }))).then(
      (found) => here && setAsked({ kind: 'told', failing: found.flat() }),
      () => here && setAsked({ kind: 'fault' }),
    )
    return () => {
      here = false
    }
  }, [ask, hoursKey, fromMinute, toMinute])
  if (asked.kind === 'asking') return null
  if (asked.kind === 'fault') return <p>{view.words.sentence('daysscreen.whyFault')}</p>
  const known = new Set<string>()
  const once = asked.failing.filter(({ limit }) => !known.has(limit) && known.add(limit))
  return once.length === 0 ? null : (
    <ul className="days-unplaced">
      {once.map((failing) => {
        const note = limitNote(failing)
        return <li key={failing.limit}>{view.words.sentence(note.code, note.data)}</li>
      })}
    </ul>
  )
}
