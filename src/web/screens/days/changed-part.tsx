/** What changed: how the last plans moved and by what, and what came of the rain that was told. */
import { useEffect, useRef } from 'react'
import { labelOf } from '#words'
import { Fold } from '../../fields/cells.tsx'
import type { JobView } from '../../job/job-view.ts'
import { localDate } from '../../job/local-date.ts'
import type { PlanMove } from '../../job/plan-move.ts'
import { Part, Progress } from '../../parts/index.ts'
import type { ShownPlan } from '../../worker/messages.ts'
import { MovedPlan } from '../moved-plan.tsx'

export type ChangedPartProps = {
  readonly view: JobView
  /** When rain was told on this sheet, and the plan as it was then. */
  readonly told: RainWasTold | undefined
  /** Over the tape of a phone it takes little room. */
  readonly short?: boolean
}

const shortRows = 3

export type RainWasTold = { readonly over: ShownPlan; readonly atMs: number }

export const ChangedPart = ({ view, told, short = false }: ChangedPartProps) => {
  const { words, moves } = view
  const place = useRef<HTMLDivElement>(null)
  // What came of it stands further down than the button that told it.
  useEffect(() => {
    if (told) place.current?.scrollIntoView({ block: 'center' })
  }, [told])
  const [last, ...earlier] = moves
  const waiting = told !== undefined && (view.planning || view.plan === told.over)
  const still = told !== undefined && !waiting && !(last && last.atMs >= told.atMs)
  return (
    <Part
      title={labelOf('daysScreen.changed')}
      aside={last && !waiting && !still ? whatMoved(last, view) : undefined}
    >
      <div ref={place} role="status">
        {waiting ? (
          <Progress label={labelOf('frame.planning')} />
        ) : still ? (
          <p>{words.sentence('daysscreen.rainStill')}</p>
        ) : last ? (
          <MoveOf move={last} view={view} {...(short ? { most: shortRows } : {})} />
        ) : (
          <p>{words.sentence('daysscreen.noMove')}</p>
        )}
      </div>
      {earlier.length === 0 ? null : (
        <Fold title={labelOf('daysScreen.changedBefore')}>
          {earlier.map((move) => (
            <div key={`${move.atMs} ${move.number}`} className="days-changed-before">
              <p>{whatMoved(move, view)}</p>
              <MoveOf move={move} view={view} />
            </div>
          ))}
        </Fold>
      )}
    </Part>
  )
}

const whatMoved = ({ by, atMs }: PlanMove, { words, timeZone, nowMs }: JobView): string => {
  const day = (ms: number): string => localDate(Math.floor(ms / 60_000), timeZone)
  // Of today the time is enough.
  const atClock = day(atMs) === day(nowMs) ? words.time(atMs, timeZone) : words.moment(atMs, timeZone)
  return words.sentence('daysscreen.movedBy', { by, atClock })
}

type MoveOfProps = { readonly move: PlanMove; readonly view: JobView; readonly most?: number }

const MoveOf = ({ move, view, ...rows }: MoveOfProps) => (
  <MovedPlan moved={move.moved} words={view.words} timeZone={view.timeZone} change={move.number} {...rows} />
)
