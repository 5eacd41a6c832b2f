/** The hours of a zone, to ask about one of them: a tap takes the hour under it, arrows go from hour to hour. */
import type { KeyboardEvent, MouseEvent } from 'react'
import { labelOf } from '#words'
import type { JobView } from '../../job/job-view.ts'
import { classes, HoursStrip, percent, shareOf } from '../../parts/index.ts'
import type { ShownHours } from '../../worker/messages.ts'
import { hourSpans, type Minutes } from '../hour-spans.ts'

export type HoursPickProps = {
  readonly view: JobView
  readonly hours: ShownHours
  readonly within: Minutes
  readonly zoneName: string
  /** The hour asked about, of this zone. */
  readonly minute: number | undefined
  readonly onMinute: (minute: number) => void
  readonly upright?: boolean
}

export const HoursPick = (props: HoursPickProps) => {
  const { view, hours, within, zoneName, minute, onMinute, upright = false } = props
  const { words, timeZone } = view
  const axis = { fromMs: within.fromMinute * 60_000, toMs: within.toMinute * 60_000 }
  const spans = hourSpans(hours, within)
  const open = spans
    .filter(({ kind }) => kind === 'go')
    .reduce((sum, { fromMs, toMs }) => sum + (toMs - fromMs) / 3_600_000, 0)
  const label = words.sentence('daysscreen.strip', { zone: zoneName, hours: open })
  const here = minute !== undefined && minute >= within.fromMinute && minute < within.toMinute
  const at = here ? minute : within.fromMinute
  const go = (to: number): void => onMinute(Math.min(within.toMinute - 60, Math.max(within.fromMinute, to)))
  const pick = (event: MouseEvent<HTMLElement>): void => {
    const box = event.currentTarget.getBoundingClientRect()
    const share = upright ? (event.clientY - box.top) / box.height : (event.clientX - box.left) / box.width
    const count = (within.toMinute - within.fromMinute) / 60
    go(within.fromMinute + Math.floor(share * count) * 60)
  }
  const press = (event: KeyboardEvent): void => {
    const to = moves[event.key]?.(at, within)
    if (to === undefined) return
    event.preventDefault()
    go(here || event.key === 'Home' || event.key === 'End' ? to : at)
  }
  const verdict = hours.verdicts[Math.floor((at - hours.firstMinute) / 60)] ?? 'unknown'
  return (
    // Not a range input: that takes every touch that scrolls over it as a choice.
    <div
      className={classes('days-pick', upright && 'days-pick-upright')}
      role="slider"
      tabIndex={0}
      aria-label={label}
      aria-orientation={upright ? 'vertical' : 'horizontal'}
      aria-valuemin={within.fromMinute / 60}
      aria-valuemax={within.toMinute / 60 - 1}
      aria-valuenow={at / 60}
      aria-valuetext={`${words.moment(at * 60_000, timeZone)}: ${labelOf(`hourKind.${verdict}`)}`}
      onClick={pick}
      onKeyDown={press}
    >
      <HoursStrip
        {...axis}
        spans={spans}
        label={label}
        upright={upright}
        {...(upright ? { height: 27 } : {})}
      />
      {here ? <Mark {...{ minute, axis, upright }} /> : null}
    </div>
  )
}

type MarkProps = {
  readonly minute: number
  readonly axis: { readonly fromMs: number; readonly toMs: number }
  readonly upright: boolean
}

const Mark = ({ minute, axis, upright }: MarkProps) => {
  const from = shareOf(minute * 60_000, axis)
  const long = percent(shareOf((minute + 60) * 60_000, axis) - from)
  const style = upright ? { top: percent(from), height: long } : { left: percent(from), width: long }
  return <div className="days-pick-mark" style={style} />
}

/** By key, from the hour at hand. */
const moves: Readonly<Record<string, (at: number, within: Minutes) => number>> = {
  ArrowRight: (at) => at + 60,
  ArrowDown: (at) => at + 60,
  ArrowLeft: (at) => at - 60,
  ArrowUp: (at) => at - 60,
  PageDown: (at) => at + 360,
  PageUp: (at) => at - 360,
  Home: (_at, { fromMinute }) => fromMinute,
  End: (_at, { toMinute }) => toMinute - 60,
  Enter: (at) => at,
  ' ': (at) => at,
}
