/** A pine tape of time with ticks at 1, 3 and 6 hours and the days; now in the colour of what is in hand. */
import { labelOf } from '#words'
import './time-tape.css'
import { classes } from './classes.ts'
import { dayWriter } from './day-writer.ts'
import { percent, shareOf, type TapeTick, type TimeSpan, tapeTicks } from './time-axis.ts'

export type TimeTapeProps = TimeSpan & {
  readonly timeZone: string
  readonly locale: string
  readonly nowMs?: number | undefined
  /** Worded, beside the mark: "now 09:08". */
  readonly nowLabel?: string | undefined
  /** Which hours are numbered: every sixth (a week), every second or third (a day). */
  readonly every?: 2 | 3 | 6 | undefined
  /** Days are named over the hours. */
  readonly days?: boolean | undefined
  /** As many times as high as usual, where its letters are set larger. */
  readonly letters?: number | undefined
  /** What it measures, for screen readers. */
  readonly label: string
}

export const TimeTape = (props: TimeTapeProps) => {
  const { nowMs, nowLabel = labelOf('screenPart.now'), every = 6, days = false, letters = 1, label } = props
  const ticks = tapeTicks(props)
  const height = (days ? 48 : 36) * letters
  return (
    <div className={classes('time-tape', days && 'time-tape-days')}>
      <svg className="time-tape-strip" width="100%" height={rem(height)} role="img" aria-label={label}>
        <rect width="100%" height="100%" fill="var(--stick)" />
        {ticks.map((tick) => (
          <Tick key={tick.atMs} {...{ tick, days, every, height, letters }} span={props} />
        ))}
        {days ? <DayNames ticks={ticks} {...props} /> : null}
        <line className="time-tape-edge" x1="0" x2="100%" y1="1" y2="1" />
        <line className="time-tape-edge time-tape-foot" x1="0" x2="100%" y1="100%" y2="100%" />
      </svg>
      {nowMs === undefined ? null : <Now share={shareOf(nowMs, props)} label={nowLabel} />}
    </div>
  )
}

type TickProps = {
  readonly tick: TapeTick
  readonly span: TimeSpan
  readonly days: boolean
  readonly every: number
  readonly height: number
  readonly letters: number
}

/** Grows with the letters on it. */
const rem = (px: number): string => `${px / 16}rem`

const lengths = { hour: 6, third: 9, sixth: 13, day: 13 } as const

const Tick = ({ tick, span, days, every, height, letters }: TickProps) => {
  const x = percent(shareOf(tick.atMs, span))
  const day = days && tick.size === 'day'
  // On a day's tape ticks hang from the top edge and figures stand under them; on a week's it is the other way round.
  const reach = lengths[tick.size] * letters
  const [y1, y2] = day ? [0, height] : days ? [height - reach, height] : [0, reach]
  const share = shareOf(tick.atMs, span)
  // A number at either end would be cut in half.
  const numbered = tick.hour % every === 0 && !day && share > 0.01 && share < 0.99
  return (
    <>
      <line x1={x} x2={x} y1={rem(y1)} y2={rem(y2)} className={day ? 'time-tape-day' : 'time-tape-tick'} />
      {numbered ? (
        <text
          x={x}
          y={rem((days ? 32 : 29) * letters)}
          textAnchor="middle"
          className={classes('time-tape-hour', tick.hour !== 12 && 'time-tape-hour-spare')}
        >
          {String(tick.hour).padStart(2, '0')}
        </text>
      ) : null}
    </>
  )
}

type DayNamesProps = Pick<TimeTapeProps, 'fromMs' | 'toMs' | 'timeZone' | 'locale' | 'letters'> & {
  readonly ticks: readonly TapeTick[]
}

const DayNames = ({ ticks, letters = 1, ...span }: DayNamesProps) => {
  const write = dayWriter(span)
  const starts = ticks.filter((tick) => tick.size === 'day').map((tick) => tick.atMs)
  const first = starts[0]
  const named = first === undefined || first > span.fromMs ? [span.fromMs, ...starts] : starts
  return named
    .filter((atMs) => atMs < span.toMs)
    .map((atMs) => (
      <svg key={atMs} x={percent(shareOf(atMs, span))} overflow="visible" aria-hidden="true">
        <text x="7" y={rem(16 * letters)} className="time-tape-name">
          {write(atMs)}
        </text>
      </svg>
    ))
}

type NowProps = { readonly share: number; readonly label: string }

const Now = ({ share, label }: NowProps) => (
  <p
    className={classes('time-tape-now', share > 0.7 && 'time-tape-now-late')}
    style={{ left: percent(share) }}
  >
    <svg width="18" height="14" viewBox="0 0 18 14" aria-hidden="true">
      <path d="M9 0 18 14H0Z" fill="var(--act)" />
    </svg>
    {label}
  </p>
)

export type NowLineProps = TimeSpan & {
  readonly nowMs: number
  /** Ends above the words of the tape that is the last thing in its parent. */
  readonly overTape?: boolean | undefined
}

/** Now through everything that stands with a tape; its parent is placed (`position: relative`). */
export const NowLine = ({ nowMs, overTape = false, ...span }: NowLineProps) => (
  <div
    className={classes('time-tape-line', overTape && 'time-tape-line-over')}
    aria-hidden="true"
    style={{ left: percent(shareOf(nowMs, span)) }}
  />
)
