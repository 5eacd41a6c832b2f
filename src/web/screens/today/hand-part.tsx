/** The step in hand: who and how long, cautions before it, its pour with clock and cup, and what can be told of it. */
import { type ReactNode, useState } from 'react'
import { coverOf, describeStep, mixAmounts, type Pour } from '#plan'
import { labelOf } from '#words'
import type { JobView } from '../../job/job-view.ts'
import { localDate } from '../../job/local-date.ts'
import { tellLog } from '../../job/tell-log.ts'
import { Button, Part } from '../../parts/index.ts'
import type { ShownPlan } from '../../worker/messages.ts'
import { PotClock, type Pots } from '../pot/index.ts'
import type { DayRow } from './day-rows.ts'
import { HandCautions } from './hand-cautions.tsx'
import { inCup } from './in-cup.ts'
import { PourCup } from './pour-cup.tsx'
import { TakeReading } from './take-reading.tsx'
import { stepOf, type TodayState } from './today-state.ts'
import { entryOf, whoOf } from './who-of.ts'

export type HandPartProps = {
  readonly view: JobView
  readonly plan: ShownPlan
  readonly state: TodayState
  readonly row: DayRow
  readonly pots: Pots
  /** The way to what to do when it goes wrong. */
  readonly trouble: ReactNode
}

export const HandPart = ({ view, plan, state, row, pots, trouble }: HandPartProps) => {
  const [reading, setReading] = useState(false)
  const { words, timeZone, readOnly } = view
  const { code, data } = describeStep(plan, row.step)
  const begun = state.begun.has(row.step)
  // What is planned for a day to come has not been started.
  const ahead = !state.isToday && row.startMinute > state.nowMinute
  const clock = (minute: number): string => words.time(minute * 60_000, timeZone)
  const write = (kind: 'started' | 'done'): void => {
    tellLog(view, { cells: { kind, ...entryOf(view, row) }, nowMs: Date.now() })
  }
  return (
    <Part
      raised
      title={words.sentence(code, data)}
      aside={words.sentence('todayscreen.fromTo', {
        fromClock: clock(row.startMinute),
        untilClock: clock(row.endMinute),
      })}
    >
      <div className="today-hand">
        <p>{whoOf(view, row)}</p>
        <HandCautions
          view={view}
          plan={plan}
          step={row.step}
          today={localDate(state.nowMinute, view.timeZone)}
        />
        {row.pours.length === 0 ? null : <PourInHand key={row.step} {...{ view, state, row, pots }} />}
        <div className="today-buttons">
          {begun || row.pours.length > 0 ? null : (
            <Button big next disabled={readOnly || row.done || ahead} onClick={() => write('started')}>
              {labelOf('today.start')}
            </Button>
          )}
          {begun ? (
            <Button big next={row.pours.length === 0} disabled={readOnly} onClick={() => write('done')}>
              {labelOf('today.doneNow')}
            </Button>
          ) : null}
          <Button big disabled={readOnly} onClick={() => setReading(true)}>
            {labelOf('today.reading')}
          </Button>
          {trouble}
        </div>
      </div>
      {reading ? (
        <TakeReading
          view={view}
          of={entryOf(view, row)}
          leastK={
            plan.buildUps.sheets.find(({ id }) => id === stepOf(plan, row.step)?.sheet)?.dewMarginK.value
          }
          sides={plan.conditions.air.find(({ key }) => key === 'boat')?.shelter === 'open'}
          onClose={() => setReading(false)}
        />
      ) : null}
    </Part>
  )
}

type PourInHandProps = Pick<HandPartProps, 'view' | 'state' | 'row' | 'pots'>

const PourInHand = ({ view, state, row, pots }: PourInHandProps) => {
  const { pours } = row
  const running = pours.findIndex((pour) =>
    pots.pots.some((pot) => pot.step === pour.step && pot.nr === pour.nr),
  )
  const late = state.isToday ? pours.findIndex((pour) => lastMinute(pour) > state.nowMinute) : 0
  const [chosen, setChosen] = useState<number>()
  const at = chosen ?? (running >= 0 ? running : Math.max(0, late))
  const pour = pours[at]
  if (pour === undefined) return null
  const { words } = view
  return (
    <>
      <div className="today-pours">
        <div>
          <PotClock
            view={view}
            pots={pots}
            pour={pour}
            notNow={
              state.isToday ? undefined : words.sentence('todayscreen.otherDay', { planDate: state.date })
            }
            title={`${words.sentence('todayscreen.pourOf', { nr: pour.nr, of: pour.of })}: ${words.sentence('todayscreen.pourFor', { times: pour.times, cover: coverOf(pour), ready: readyOf(pour, view), areaM2: pour.areaM2 })}`}
          />
        </div>
        <PourCup pour={pour} view={view} />
      </div>
      {pours.length < 2 ? null : (
        <div className="today-buttons">
          <Button disabled={at === 0} onClick={() => setChosen(at - 1)}>
            {labelOf('today.earlierPour')}
          </Button>
          <Button disabled={at === pours.length - 1} onClick={() => setChosen(at + 1)}>
            {labelOf('today.nextPour')}
          </Button>
        </div>
      )}
    </>
  )
}

const readyOf = (pour: Pour, view: JobView): string => {
  const { readyMl, decimals } = mixAmounts(pour)
  return inCup(readyMl, decimals, view)
}

const lastMinute = (pour: DayRow['pours'][number]): number => pour.useUntilMinute ?? pour.mixAtMinute + 60
