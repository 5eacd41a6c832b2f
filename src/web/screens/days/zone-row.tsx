/** One zone: its hours (height is permission), under them work as bars, waits hatched, windows with end stops. */
import { describeStep } from '#plan'
import { labelOf } from '#words'
import type { JobView } from '../../job/job-view.ts'
import { classes, percent, shareOf, useHatches } from '../../parts/index.ts'
import type { ShownPlan } from '../../worker/messages.ts'
import { hoursOfZone, type Minutes } from '../hour-spans.ts'
import { personName } from '../today/who-of.ts'
import { type Chosen, isSame } from './chosen.ts'
import { HoursPick } from './hours-pick.tsx'
import type { Bar, Line, ZoneDays } from './zone-days.ts'

export type ZoneRowProps = {
  readonly view: JobView
  readonly plan: ShownPlan
  readonly row: ZoneDays
  readonly name: string
  readonly area: number | undefined
  readonly within: Minutes
  /** Of the names and the track together, px. */
  readonly width: number
  readonly chosen: Chosen | undefined
  readonly onChoose: (chosen: Chosen | undefined) => void
}

export const ZoneRow = (props: ZoneRowProps) => {
  const { view, plan, row, name, area, within, chosen, onChoose } = props
  const { zone } = row
  const hours = zone === '' ? undefined : hoursOfZone(plan, zone, within.fromMinute)
  return (
    <div className="days-row days-row-zone">
      <div className="days-name">
        <span>{name}</span>
        {area === undefined ? null : <small>{view.words.figure('areaM2', area)}</small>}
      </div>
      <div className="days-track">
        {hours ? (
          <HoursPick
            {...{ view, hours, within }}
            zoneName={name}
            minute={chosen?.kind === 'hour' && chosen.zone === zone ? chosen.minute : undefined}
            onMinute={(minute) => onChoose({ kind: 'hour', zone, minute, hoursKey: hours.key })}
          />
        ) : (
          <div className="days-no-hours" />
        )}
        <div className="days-bars">
          <Lines lines={row.lines} within={within} />
          {row.bars.map((bar) => (
            <BarButton key={`${bar.step} ${bar.fromMinute}`} {...props} bar={bar} />
          ))}
        </div>
      </div>
    </div>
  )
}

/** A narrower bar has its coat written under it, px. */
const roomForText = 30

const BarButton = ({
  view,
  plan,
  bar,
  within,
  width: px,
  chosen,
  onChoose,
}: ZoneRowProps & { readonly bar: Bar }) => {
  const { left, width, from, to } = placeOf(bar, within)
  const own: Chosen = { kind: 'bar', bar }
  const isChosen = isSame(chosen, own)
  const said = barSentence(view, plan, bar)
  return (
    <button
      type="button"
      className={classes(
        'days-bar',
        `days-bar-${bar.kind}`,
        bar.people.length > 1 && 'days-bar-two',
        bar.done && 'days-bar-done',
        (to - from) * px < roomForText && 'days-bar-small',
      )}
      style={{ left, width }}
      aria-label={said}
      aria-pressed={isChosen}
      title={said}
      onClick={() => onChoose(isChosen ? undefined : own)}
    >
      {bar.coat === undefined || bar.kind !== 'coat' ? null : (
        <span className="days-bar-text">
          {view.words.sentence('daysscreen.coatShort', { coat: bar.coat })}
        </span>
      )}
    </button>
  )
}

/** What a bar is, when, and who does it. */
export function barSentence(view: JobView, plan: ShownPlan, bar: Bar): string {
  const { words, timeZone } = view
  const { code, data } = describeStep(plan, bar.step)
  return words.sentence('daysscreen.bar', {
    name: words.sentence(code, data),
    fromAtMs: bar.fromMinute * 60_000,
    untilClock: words.time(bar.toMinute * 60_000, timeZone),
    names: bar.people.map((id) => personName(view, id)).join(', '),
    timeZone,
    ...(bar.kind === 'coat' ? { certainty: labelOf(`paperVerdict.${bar.verdict}`) } : {}),
  })
}

function placeOf({ fromMinute, toMinute }: Minutes, within: Minutes) {
  const axis = { fromMs: within.fromMinute, toMs: within.toMinute }
  const from = shareOf(fromMinute, axis)
  return {
    from,
    to: shareOf(toMinute, axis),
    left: percent(from),
    width: percent(shareOf(toMinute, axis) - from),
  }
}

type LinesProps = { readonly lines: readonly Line[]; readonly within: Minutes }

const Lines = ({ lines, within }: LinesProps) => {
  const hatches = useHatches(['wait'])
  return (
    <svg className="days-lines" width="100%" height="32" aria-hidden="true">
      {hatches.defs}
      {lines.map((line) => (
        <LineOf key={line.key} line={line} within={within} fill={hatches.fill('wait')} />
      ))}
    </svg>
  )
}

type LineOfProps = { readonly line: Line; readonly within: Minutes; readonly fill: string }

const LineOf = ({ line, within, fill }: LineOfProps) => {
  const { from, to, left, width } = placeOf(line, within)
  if (line.kind === 'wait')
    return (
      <rect x={left} y="10" width={width} height="12" fill={fill} stroke="var(--hair)" strokeWidth="0.75" />
    )
  const ends = line.toMinute <= within.toMinute
  return (
    <>
      <line x1={percent(from)} x2={percent(to)} y1="16" y2="16" stroke="var(--ink)" strokeWidth="1.5" />
      {line.fromMinute >= within.fromMinute ? (
        <line x1={percent(from)} x2={percent(from)} y1="8" y2="24" stroke="var(--ink)" strokeWidth="2" />
      ) : null}
      {ends && line.shut ? (
        <svg x={percent(to)} overflow="visible" aria-hidden="true">
          <path d="M0 4l5 4-9 4 9 4-9 4 9 4-5 4" fill="none" stroke="var(--fault)" strokeWidth="2.2" />
        </svg>
      ) : null}
    </>
  )
}
