/** Who works when: one box a person, as long as the work, and the hours of each day in a figure. */
import { labelOf } from '#words'
import type { JobView } from '../../job/job-view.ts'
import { percent, shareOf } from '../../parts/index.ts'
import type { ShownPlan } from '../../worker/messages.ts'
import type { Minutes } from '../hour-spans.ts'
import type { ShownDay } from './shown-days.ts'

export type HandsRowProps = {
  readonly view: JobView
  readonly plan: ShownPlan
  readonly days: readonly ShownDay[]
  readonly within: Minutes
}

const rowHigh = 18

export const HandsRow = ({ view: { words }, plan, days, within }: HandsRowProps) => {
  const shown = days.map((day) => ({
    ...day,
    planned: plan.days.days.find(({ date }) => date === day.date),
  }))
  const people = [
    ...new Set(shown.flatMap(({ planned }) => planned?.people ?? []).map(({ person }) => person)),
  ].sort()
  const axis = { fromMs: within.fromMinute, toMs: within.toMinute }
  const high = Math.max(1, people.length) * rowHigh + 26
  const label = shown
    .map(({ date, planned }) =>
      planned
        ? `${words.date(date)} ${words.sentence('daysscreen.dayHours', { people: planned.people.length, hours: hoursOf(planned) })}`
        : '',
    )
    .filter((text) => text !== '')
    .join('; ')
  const said = label === '' ? words.sentence('daysscreen.none') : label
  return (
    <div className="days-row">
      <div className="days-name">
        <span>{labelOf('daysScreen.hands')}</span>
      </div>
      <svg className="days-hands" width="100%" height={high} role="img" aria-label={said}>
        {shown.map(({ date, planned }) =>
          planned?.pieces.flatMap((piece) =>
            piece.people.map((person) => (
              <rect
                key={`${date} ${piece.step} ${piece.startMinute} ${person}`}
                x={percent(shareOf(piece.startMinute, axis))}
                width={percent(shareOf(piece.endMinute, axis) - shareOf(piece.startMinute, axis))}
                y={4 + people.indexOf(person) * rowHigh}
                height={rowHigh - 4}
                fill="var(--raised)"
                stroke="var(--ink)"
              />
            )),
          ),
        )}
        {shown.map(({ date, planned, fromMinute }) =>
          planned ? (
            <text
              key={date}
              x={percent(shareOf(planned.pieces[0]?.startMinute ?? fromMinute, axis))}
              y={high - 6}
              className="days-hands-hours"
            >
              {words.sentence('daysscreen.handsDay', { hours: hoursOf(planned) })}
            </text>
          ) : null,
        )}
      </svg>
    </div>
  )
}

const hoursOf = ({ people }: ShownPlan['days']['days'][number]): number =>
  people.reduce((sum, { minutes }) => sum + minutes / 60, 0)
