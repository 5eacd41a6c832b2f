/** Every step of the day in a row, with the tick that tells the log it is done, or takes that back. */
import { describeStep } from '#plan'
import { labelOf } from '#words'
import type { JobView } from '../../job/job-view.ts'
import { tellStep } from '../../job/tell-log.ts'
import { classes, Part } from '../../parts/index.ts'
import type { ShownPlan } from '../../worker/messages.ts'
import type { DayRow } from './day-rows.ts'
import type { TodayState } from './today-state.ts'
import { whoOf } from './who-of.ts'

export type ThenPartProps = { readonly view: JobView; readonly plan: ShownPlan; readonly state: TodayState }

export const ThenPart = ({ view, plan, state: { rows, hand } }: ThenPartProps) => (
  <Part title={labelOf('today.then')}>
    <ul className="today-rows">
      {rows.map((row) => (
        <Row key={row.step} view={view} plan={plan} row={row} here={row.step === hand?.step} />
      ))}
    </ul>
  </Part>
)

type RowProps = {
  readonly view: JobView
  readonly plan: ShownPlan
  readonly row: DayRow
  readonly here: boolean
}

const Row = ({ view, plan, row, here }: RowProps) => {
  const { words, timeZone } = view
  const { code, data } = describeStep(plan, row.step)
  const name = words.sentence(code, data)
  const turn = (): void => {
    const kind = row.done ? 'not done' : 'done'
    tellStep(view, { kind, step: row.step, nowMs: Date.now() })
  }
  return (
    <li className={classes('today-row', here && 'today-row-here')} aria-current={here ? 'step' : undefined}>
      <span className="today-row-time">{words.time(row.startMinute * 60_000, timeZone)}</span>
      <span className="today-row-text">
        <span className="today-row-name">{name}</span>
        <span className="today-row-who">{whoOf(view, row)}</span>
      </span>
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
