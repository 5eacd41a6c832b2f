/** Limits that failed in some hours of a kind of place, each once where it fails worst: the worker holds them. */
import { useEffect, useState } from 'react'
import type { JobView } from '../../job/job-view.ts'
import type { Failing } from '../../worker/messages.ts'
import type { Minutes } from '../hour-spans.ts'

export type FailingAsked =
  | { readonly kind: 'asking' }
  | { readonly kind: 'fault' }
  | { readonly kind: 'told'; readonly failing: Failing }

/** Longer work is not judged hour by hour. */
const mostHours = 48

/** Asked anew whenever the hours change; without a kind of hours nothing fails. */
export function useFailing(
  { ask }: Pick<JobView, 'ask'>,
  { hoursKey, fromMinute, toMinute }: Minutes & { readonly hoursKey: string | undefined },
): FailingAsked {
  const [asked, setAsked] = useState<FailingAsked>({ kind: 'asking' })
  useEffect(() => {
    let here = true
    const first = Math.floor(fromMinute / 60)
    const count = hoursKey === undefined ? 0 : Math.min(mostHours, Math.ceil(toMinute / 60) - first)
    const hours = Array.from({ length: count }, (_, k) => first + k)
    Promise.all(hours.map((hour) => ask({ kind: 'why', key: hoursKey!, minute: hour * 60 }))).then(
      (found) => here && setAsked({ kind: 'told', failing: worstOfEach(found.flat()) }),
      () => here && setAsked({ kind: 'fault' }),
    )
    return () => {
      here = false
    }
  }, [ask, hoursKey, fromMinute, toMinute])
  return asked
}

/** In the order in which the limits first fail. */
export function worstOfEach(failing: Failing): Failing {
  const worst = new Map<string, Failing[number]>()
  for (const one of failing) {
    const known = worst.get(one.limit)
    if (known === undefined || missedBy(one) > missedBy(known)) worst.set(one.limit, one)
  }
  return [...worst.values()]
}

/** A figure that nobody knows misses by most. */
export const missedBy = ({ had, needed }: Failing[number]): number =>
  had === null ? Number.POSITIVE_INFINITY : Math.abs(had - needed)
