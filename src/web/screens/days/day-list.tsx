/** The days with their steps, a table a day: what a phone shows, and the twin of the drawing elsewhere. */
import { describeStep } from '#plan'
import { labelOf } from '#words'
import type { JobView } from '../../job/job-view.ts'
import { Ledger } from '../../parts/index.ts'
import type { ShownPlan } from '../../worker/messages.ts'
import { type DayRow, dayRows } from '../today/day-rows.ts'
import { stepOf } from '../today/today-state.ts'
import { personName } from '../today/who-of.ts'
import { likeDaysOfStep } from './like-days.ts'
import type { ShownDay } from './shown-days.ts'

export type DayListProps = {
  readonly view: JobView
  readonly plan: ShownPlan
  readonly days: readonly ShownDay[]
  readonly href: (room: string) => string
  readonly go: (href: string) => void
}

export const DayList = ({ view, plan, days, href, go }: DayListProps) => {
  const { words } = view
  const listed = days.map((day) => ({ ...day, rows: dayRows({ plan, ...day }) }))
  if (listed.every(({ rows }) => rows.length === 0)) return <p>{words.sentence('daysscreen.none')}</p>
  return listed.map(({ date, rows }) =>
    rows.length === 0 ? null : (
      <section key={date} className="days-day">
        <h3 className="days-day-name">
          <a
            className="link days-day-link"
            href={href(`today/${date}`)}
            onClick={(event) => {
              event.preventDefault()
              go(href(`today/${date}`))
            }}
          >
            {words.date(date)}
          </a>
        </h3>
        <Ledger
          caption={words.date(date)}
          bare
          columns={[
            { key: 'time', label: labelOf('daysScreen.time'), phone: 'side', width: '9rem' },
            { key: 'what', label: labelOf('daysScreen.what'), phone: 'first' },
            { key: 'who', label: labelOf('daysScreen.who'), phone: 'second', width: '24%' },
            { key: 'hours', label: labelOf('daysScreen.verdict'), phone: 'second', width: '12%' },
          ]}
          rows={rows.map((row) => ({ id: row.step, cells: cellsOf(view, plan, row) }))}
        />
      </section>
    ),
  )
}

/** Behind the forecast, with the count of like days. */
function verdictText(
  { words }: JobView,
  plan: ShownPlan,
  placed: ShownPlan['days']['placed'][number],
): string {
  const verdict = labelOf(`paperVerdict.${placed.verdict}`)
  const like = likeDaysOfStep(plan, placed.step)
  return like
    ? words.sentence('daysscreen.verdictLike', { verdict, least: like.least, of: like.of })
    : verdict
}

function cellsOf(view: JobView, plan: ShownPlan, row: DayRow) {
  const { words, timeZone } = view
  const { code, data } = describeStep(plan, row.step)
  const clock = (minute: number): string => words.time(minute * 60_000, timeZone)
  const placed = plan.days.placed.find(({ step }) => step === row.step)
  const coat = stepOf(plan, row.step)?.hoursKey !== undefined
  return {
    time: words.sentence('todayscreen.fromTo', {
      fromClock: clock(row.startMinute),
      untilClock: clock(row.endMinute),
    }),
    what: words.sentence(code, data),
    who: row.people.map((id) => personName(view, id)).join(', '),
    hours: row.done ? labelOf('daysScreen.done') : coat && placed ? verdictText(view, plan, placed) : '',
  }
}
