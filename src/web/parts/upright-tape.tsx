/** A tape on which time runs down, for a phone: 24 px an hour, ticks at its right edge, days as they begin. */
import { dayWriter } from './day-writer.ts'
import './upright-tape.css'
import { hourMs, percent, shareOf, type TapeTick, type TimeSpan, tapeTicks } from './time-axis.ts'

export type UprightTapeProps = TimeSpan & {
  readonly timeZone: string
  readonly locale: string
  readonly nowMs?: number | undefined
  /** What it measures, for screen readers. */
  readonly label: string
}

const pxPerHour = 24

/** Height of anything that stands beside the tape, as CSS takes it. */
export const uprightHeight = ({ fromMs, toMs }: TimeSpan): string =>
  `${toMs > fromMs ? Math.round(((toMs - fromMs) / hourMs) * pxPerHour) : 0}px`

export const UprightTape = ({ nowMs, label, ...span }: UprightTapeProps) => {
  const write = dayWriter(span)
  return (
    <svg className="upright-tape" width="64" height={uprightHeight(span)} role="img" aria-label={label}>
      <rect width="64" height="100%" fill="var(--stick)" />
      {tapeTicks(span).map((tick) => (
        <Tick key={tick.atMs} tick={tick} span={span} day={write} />
      ))}
      <path className="upright-tape-edge" d="M63 0V99999M1 0V99999" />
      {nowMs === undefined ? null : (
        <svg y={percent(shareOf(nowMs, span))} overflow="visible" aria-hidden="true">
          <path d="M64 0 50-9V9Z" fill="var(--act)" />
        </svg>
      )}
    </svg>
  )
}

const lengths = { hour: 8, third: 12, sixth: 18, day: 64 } as const

type TickProps = { readonly tick: TapeTick; readonly span: TimeSpan; readonly day: (atMs: number) => string }

const Tick = ({ tick, span, day }: TickProps) => {
  const share = shareOf(tick.atMs, span)
  const named = tick.size === 'day' && share < 0.999
  return (
    <svg y={percent(share)} overflow="visible" aria-hidden="true">
      <path className="upright-tape-tick" d={`M64 0H${64 - lengths[tick.size]}`} />
      {named ? (
        <text x="7" y="17" className="upright-tape-day">
          {day(tick.atMs)}
        </text>
      ) : null}
      {tick.hour % 3 === 0 && tick.size !== 'day' && share > 0.001 && share < 0.999 ? (
        <text x="40" y="5" textAnchor="end" className="upright-tape-hour">
          {String(tick.hour).padStart(2, '0')}
        </text>
      ) : null}
    </svg>
  )
}
