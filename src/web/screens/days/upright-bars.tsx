/** Work of a zone beside an upright tape: bars at their hours, and a name to each that a thumb hits. */
import { labelOf } from '#words'
import type { JobView } from '../../job/job-view.ts'
import { classes, useHatches } from '../../parts/index.ts'
import type { ShownPlan } from '../../worker/messages.ts'
import type { Minutes } from '../hour-spans.ts'
import { spacedLabels } from './spaced-labels.ts'
import type { Bar, Line } from './zone-days.ts'
import { barSentence } from './zone-row.tsx'

export type UprightBarsProps = {
  readonly view: JobView
  readonly plan: ShownPlan
  readonly within: Minutes
  readonly bars: readonly Bar[]
  readonly lines: readonly Line[]
  readonly nameOf: (bar: Bar) => string
  readonly isChosen: (bar: Bar) => boolean
  readonly onBar: (bar: Bar) => void
}

const pxPerMinute = 24 / 60
/** Of a name with the distance to the next, in lines of a reader whose text is as large as usual. */
const labelHigh = 52
const barWide = 28

export const UprightBars = (props: UprightBarsProps) => {
  const { view, plan, within, nameOf, isChosen, onBar } = props
  const { words, timeZone } = view
  const y = (minute: number): number =>
    (Math.min(within.toMinute, Math.max(within.fromMinute, minute)) - within.fromMinute) * pxPerMinute
  const bars = [...props.bars].sort((a, b) => a.fromMinute - b.fromMinute)
  const { tops, bottom } = spacedLabels({
    at: bars.map(({ fromMinute }) => y(fromMinute)),
    high: labelHigh * textScale(),
  })
  const high = Math.max(y(within.toMinute), bottom)
  return (
    <div className="days-upright-bars" style={{ height: high }}>
      <svg className="days-upright-drawing" width="52" height={high} aria-hidden="true">
        <Lines lines={props.lines} y={y} within={within} />
        {bars.map((bar, index) => {
          const [top, end] = [y(bar.fromMinute), y(bar.toMinute)]
          return (
            <g key={`${bar.step} ${bar.fromMinute}`}>
              <rect
                className={classes('days-upright-bar', `days-upright-bar-${bar.kind}`)}
                x="1"
                y={top + 0.75}
                width={barWide}
                height={Math.max(3, end - top - 1.5)}
              />
              {bar.people.length > 1 ? (
                <path className="days-upright-two" d={`M1 ${top + 4}H${barWide + 1}`} />
              ) : null}
              <path
                className="days-upright-leader"
                d={`M${barWide + 1} ${top + 2}L52 ${(tops[index] ?? top) + 12}`}
              />
            </g>
          )
        })}
      </svg>
      {bars.map((bar, index) => (
        <button
          key={`${bar.step} ${bar.fromMinute}`}
          type="button"
          className={classes('days-upright-name', bar.done && 'days-bar-done')}
          style={{ top: tops[index] }}
          aria-label={barSentence(view, plan, bar)}
          aria-pressed={isChosen(bar)}
          onClick={() => onBar(bar)}
        >
          <span className="days-upright-what">
            <span className="days-upright-clock">{words.time(bar.fromMinute * 60_000, timeZone)}</span>{' '}
            {nameOf(bar)}
            {bar.done ? ` (${labelOf('daysScreen.done')})` : ''}
          </span>
        </button>
      ))}
    </div>
  )
}

/** How much larger than usual a reader's own text is. */
const textScale = (): number =>
  Number.parseFloat(getComputedStyle(document.documentElement).fontSize) / 16 || 1

type LinesProps = {
  readonly lines: readonly Line[]
  readonly within: Minutes
  readonly y: (minute: number) => number
}

const Lines = ({ lines, within, y }: LinesProps) => {
  const hatches = useHatches(['wait'])
  return (
    <>
      {hatches.defs}
      {lines.map((line) => {
        const [top, end] = [y(line.fromMinute), y(line.toMinute)]
        if (line.kind === 'wait')
          return (
            <rect
              key={line.key}
              x="9"
              y={top}
              width="12"
              height={end - top}
              fill={hatches.fill('wait')}
              stroke="var(--hair)"
              strokeWidth="0.75"
            />
          )
        const shut = line.shut && line.toMinute <= within.toMinute
        return (
          <g key={line.key}>
            <path
              className="days-upright-window"
              d={`M15 ${top}V${end}${line.fromMinute >= within.fromMinute ? `M7 ${top}H23` : ''}`}
            />
            {shut ? <path className="days-upright-shut" d={`M3 ${end}l4 -5 4 9 4 -9 4 9 4 -9 4 5`} /> : null}
          </g>
        )
      })}
    </>
  )
}
