/** The running pots of a job: read once, written at every change, and followed when another tab changes them. */
import { useEffect, useState } from 'react'
import type { Pour } from '#plan'
import { browserShelf } from '../../device/browser-shelf.ts'
import type { JobView } from '../../job/job-view.ts'
import { tellStep } from '../../job/tell-log.ts'
import { readPots, withoutPot, withPot, writePots } from './kept-pots.ts'
import { type Pot, potOf } from './pot-clock.ts'
import { startIsTold } from './start-is-told.ts'

export type Pots = {
  readonly pots: readonly Pot[]
  /** False when the browser keeps nothing. */
  readonly lasts: boolean
  readonly mix: (pour: Pour) => void
  readonly empty: (pot: Pick<Pot, 'step' | 'nr'>) => void
}

export function usePots(view: Pick<JobView, 'id' | 'timeZone' | 'log' | 'addEntry' | 'readOnly'>): Pots {
  const [shelf] = useState(browserShelf)
  const [pots, setPots] = useState(() => readPots(shelf, view.id, Date.now()))
  const [lasts, setLasts] = useState(true)
  useEffect(() => {
    const follow = (): void => setPots(readPots(shelf, view.id, Date.now()))
    addEventListener('storage', follow)
    return () => removeEventListener('storage', follow)
  }, [shelf, view.id])
  const keep = (next: readonly Pot[]): void => {
    setPots(next)
    setLasts(writePots(shelf, view.id, next))
  }
  // Another tab may have mixed one since: its pots are read again, unless this browser keeps none.
  const newest = (): readonly Pot[] => (lasts ? readPots(shelf, view.id, Date.now()) : pots)
  return {
    pots,
    lasts,
    mix: (pour) => {
      const mixedMs = Date.now()
      keep(withPot(newest(), potOf(pour, mixedMs)))
      if (view.readOnly || startIsTold(view.log, pour.step)) return
      tellStep(view, { kind: 'started', step: pour.step, nowMs: mixedMs })
    },
    empty: (pot) => keep(withoutPot(newest(), pot)),
  }
}
