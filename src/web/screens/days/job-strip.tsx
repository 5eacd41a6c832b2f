/** The whole job in one strip: a bar a day as tall as its hours, filled where coats go on, and the days that are shown. */
import { labelOf } from '#words'
import type { JobView } from '../../job/job-view.ts'
import { daysBetween } from '../../job/local-days.ts'
import { percent } from '../../parts/index.ts'
import type { ShownPlan } from '../../worker/messages.ts'
import { type DayLoad, dayLoads } from './shown-days.ts'

export type JobStripProps = {
  readonly view: JobView
  readonly plan: ShownPlan
  readonly from: string
  readonly count: number
  readonly onFrom: (date: string) => void
}

const high = 56

export const JobStrip = ({ view: { words }, plan, from, count, onFrom }: JobStripProps) => {
  const loads = dayLoads(plan)
  const [first, last] = [loads[0], loads.at(-1)]
  if (!first || !last) return null
  const most = Math.max(1, ...loads.map(({ hours }) => hours))
  const at = daysBetween(first.date, from)
  const label = words.sentence('daysscreen.weeks', { fromDate: first.date, toDate: last.date })
  return (
    <div className="days-job">
      <svg width="100%" height={high} role="img" aria-label={label}>
        <rect width="100%" height={high} fill="var(--stick)" />
        {loads.map((load, index) => (
          <Load key={load.date} load={load} at={index} of={loads.length} most={most} />
        ))}
        <rect
          x={percent(Math.max(0, at) / loads.length)}
          width={percent(Math.max(0, Math.min(count, at + count, loads.length - at)) / loads.length)}
          y="1.5"
          height={high - 3}
          fill="none"
          stroke="var(--act)"
          strokeWidth="3"
        />
      </svg>
      <input
        type="range"
        className="days-range"
        min={0}
        max={loads.length - 1}
        value={Math.min(Math.max(0, at), loads.length - 1)}
        aria-label={labelOf('daysScreen.from')}
        aria-valuetext={words.date(from)}
        onChange={(event) => {
          const load = loads[Number(event.currentTarget.value)]
          if (load) onFrom(load.date)
        }}
      />
      <p className="days-job-ends">
        <span>{words.date(first.date)}</span>
        <span>{words.date(last.date)}</span>
      </p>
    </div>
  )
}

type LoadProps = {
  readonly load: DayLoad
  readonly at: number
  readonly of: number
  readonly most: number
}

const Load = ({ load, at, of, most }: LoadProps) => {
  const tall = (load.hours / most) * (high - 16)
  const monday = new Date(`${load.date}T12:00:00Z`).getUTCDay() === 1
  return (
    <>
      {monday ? (
        <line
          x1={percent(at / of)}
          x2={percent(at / of)}
          y1="0"
          y2="8"
          stroke="var(--ink)"
          strokeWidth="1.5"
        />
      ) : null}
      {load.hours === 0 ? null : (
        <rect
          x={percent((at + 0.12) / of)}
          width={percent(0.76 / of)}
          y={high - 2 - tall}
          height={tall}
          fill={load.coats > 0 ? 'var(--ink)' : 'var(--raised)'}
          stroke="var(--ink)"
        />
      )}
    </>
  )
}
