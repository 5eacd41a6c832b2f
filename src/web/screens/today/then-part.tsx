/** Every step of the day in a row, with the tick that tells the log it is done, or takes that back; and all that is past. */
import { type ReactNode, useState } from 'react'
import { describeStep } from '#plan'
import { labelOf } from '#words'
import type { JobView } from '../../job/job-view.ts'
import { tellLog, tellPast } from '../../job/tell-log.ts'
import { classes, Part } from '../../parts/index.ts'
import type { ShownPlan } from '../../worker/messages.ts'
import type { DayRow } from './day-rows.ts'
import { TellDialog } from './tell-dialog.tsx'
import { isCoat, type TodayState } from './today-state.ts'
import { entryOf, whoOf } from './who-of.ts'

export type ThenPartProps = DayRowsProps & { readonly children?: ReactNode }

type DayRowsProps = { readonly view: JobView; readonly plan: ShownPlan; readonly state: TodayState }

export const ThenPart = ({ view, plan, state, children }: ThenPartProps) => {
  const [told, setTold] = useState<DayRow>()
  const { rows, hand } = state
  return (
    <Part title={labelOf('today.then')}>
      <ul className="today-rows">
        {rows.map((row) => (
          <Row
            key={row.step}
            {...{ view, plan, state, row }}
            here={row.step === hand?.step}
            onTell={() => setTold(row)}
          />
        ))}
      </ul>
      {children}
      {told === undefined ? null : (
        <TellDialog
          view={view}
          title={nameOf(view, plan, told)}
          row={told}
          isCoat={isCoat(plan, told)}
          atMs={likelyMs(state, told) ?? Date.now()}
          onClose={() => setTold(undefined)}
        />
      )}
    </Part>
  )
}

/** On a day that is past a step was done when it was planned, not now. */
const likelyMs = ({ isToday, nowMinute }: TodayState, { endMinute }: DayRow): number | undefined =>
  isToday || endMinute >= nowMinute ? undefined : endMinute * 60_000

const nameOf = ({ words }: JobView, plan: ShownPlan, { step }: DayRow): string => {
  const { code, data } = describeStep(plan, step)
  return words.sentence(code, data)
}

type RowProps = DayRowsProps & {
  readonly row: DayRow
  readonly here: boolean
  readonly onTell: () => void
}

const Row = ({ view, plan, state, row, here, onTell }: RowProps) => {
  const { words, timeZone } = view
  const name = nameOf(view, plan, row)
  const turn = (): void => {
    const nowMs = Date.now()
    const atMs = likelyMs(state, row)
    if (row.done) tellLog(view, { cells: { kind: 'not done', step: row.step }, nowMs })
    else tellPast(view, { cells: { kind: 'done', ...entryOf(view, row) }, atMs: atMs ?? nowMs, nowMs })
  }
  return (
    <li className={classes('today-row', here && 'today-row-here')} aria-current={here ? 'step' : undefined}>
      <span className="today-row-time">{words.time(row.startMinute * 60_000, timeZone)}</span>
      <button type="button" className="today-row-text" onClick={onTell}>
        <span className="today-row-name">{name}</span>
        <span className="today-row-who">{whoOf(view, row)}</span>
        <span className="today-row-more">{labelOf('today.tell')}</span>
      </button>
      <input
        type="checkbox"
        className="today-tick"
        checked={row.done}
        disabled={view.readOnly}
        aria-label={words.sentence('todayscreen.tick', { name })}
        onChange={turn}
      />
    </li>
  )
}
