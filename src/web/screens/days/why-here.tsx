/** Why the chosen bar stands where it stands, or an hour is as it is: each limit with what is needed and what it has. */
import { type CoatWindow, describeStep, type LadderRung } from '#plan'
import { labelOf } from '#words'
import { WayFigure } from '../../figures/way-figure.tsx'
import type { JobView } from '../../job/job-view.ts'
import { Button, Ledger } from '../../parts/index.ts'
import type { ShownHours, ShownPlan } from '../../worker/messages.ts'
import { LaidOff } from '../laid-off.tsx'
import { stepOf } from '../today/today-state.ts'
import type { Chosen } from './chosen.ts'
import { FailedLimits } from './failed-limits.tsx'
import { failedRows } from './failed-rows.ts'
import { type FailingAsked, useFailing } from './failing-hours.ts'
import { HourFigures } from './hour-figures.tsx'
import { barLikeText, hourLikeText } from './like-days.ts'
import { hourRows, type LimitRow, limitRows } from './limit-rows.ts'
import type { Bar } from './zone-days.ts'

export type WhyHereProps = {
  readonly view: JobView
  readonly plan: ShownPlan
  readonly windows: readonly CoatWindow[]
  readonly chosen: Chosen | undefined
  readonly onChoose: (chosen: Chosen | undefined) => void
}

export const WhyHere = (props: WhyHereProps) => {
  const { chosen } = props
  if (!chosen) return <p>{labelOf('daysScreen.choose')}</p>
  return chosen.kind === 'bar' ? <WhyBar {...props} bar={chosen.bar} /> : <WhyHour {...props} {...chosen} />
}

const WhyBar = ({ view, plan, windows, bar }: WhyHereProps & { readonly bar: Bar }) => {
  const { words, timeZone } = view
  const { code, data } = describeStep(plan, bar.step)
  const rows = limitRows({ view, plan, windows, bar })
  const step = bar.kind === 'key' ? undefined : stepOf(plan, bar.step)
  const hoursKey = step?.hoursKey
  const asked = useFailing(view, { hoursKey, fromMinute: bar.fromMinute, toMinute: bar.toMinute })
  const first = plan.pours.pours.find((pour) => pour.step === step?.id && pour.nr === 1)
  const rungs = step?.rungs ?? []
  return (
    <div className="days-why">
      <p className="days-why-name">
        {words.sentence('daysscreen.whyBar', {
          name: words.sentence(code, data),
          fromAtMs: bar.fromMinute * 60_000,
          untilClock: words.time(bar.toMinute * 60_000, timeZone),
          timeZone,
        })}
      </p>
      <p>{heldSentence(view, plan, bar)}</p>
      <Say text={barLikeText(view, plan, bar.step)} />
      {hoursKey !== undefined && bar.verdict === 'unknown' ? (
        <p>{words.sentence('daysscreen.barUnknown')}</p>
      ) : rows.length === 0 ? (
        <p>{words.sentence('daysscreen.anyHour')}</p>
      ) : null}
      {rows.length === 0 ? null : <Limits rows={rows} view={view} asked={asked} />}
      {hoursKey === undefined ? null : <FailedLimits view={view} asked={asked} />}
      {first ? <LaidOff view={view} pour={first} /> : null}
      {rungs.length === 0 ? null : (
        <ul className="laid-off">
          {rungs.map((rung) => (
            <li key={rung.grit}>{words.sentence('sanding.rung', rungData(rung))}</li>
          ))}
        </ul>
      )}
    </div>
  )
}

const Say = ({ text }: { readonly text: string | undefined }) => (text === undefined ? null : <p>{text}</p>)

const rungData = ({ grit, areaM2, hoursPerM2 }: LadderRung) => ({
  grit,
  areaM2,
  workHours: hoursPerM2.value * areaM2,
})

type LimitsProps = {
  readonly rows: readonly LimitRow[]
  readonly view: JobView
  readonly asked: FailingAsked
}

const Limits = ({ rows, view, asked }: LimitsProps) => (
  <Table view={view} rows={asked.kind === 'told' ? [...rows, ...failedRows(view, asked.failing)] : rows} />
)

const Table = ({ rows, view }: Omit<LimitsProps, 'asked'>) => (
  <Ledger
    caption={labelOf('daysScreen.why')}
    columns={[
      { key: 'limit', label: labelOf('daysScreen.limit'), phone: 'first' },
      { key: 'had', label: labelOf('daysScreen.had'), align: 'right', phone: 'second', named: true },
      { key: 'needed', label: labelOf('daysScreen.needed'), align: 'right', named: true },
      ...(rows.some(({ by }) => by !== undefined)
        ? [{ key: 'by', label: labelOf('daysScreen.missedBy'), align: 'right', named: true } as const]
        : []),
      { key: 'so', label: labelOf('daysScreen.verdict'), phone: 'side', width: '6rem' },
    ]}
    rows={rows.map(({ id, so, of, had, limit, needed, by }) => ({
      id,
      cells: {
        limit,
        needed,
        by: by ?? '',
        had: of ? <WayFigure view={view} of={of} text={had} certainty="worked" label={limit} /> : had,
        so: labelOf(`daysScreen.${so}`),
      },
    }))}
  />
)

function heldSentence({ words, timeZone }: JobView, plan: ShownPlan, bar: Bar): string {
  const placed = plan.days.placed.find(({ step }) => step === bar.step)
  if (bar.done) return words.sentence('daysscreen.doneAlready')
  if (bar.kind === 'key') return words.sentence('daysscreen.keyed')
  if (!placed?.heldBy) return words.sentence('daysscreen.free')
  const { code, data } = describeStep(plan, placed.heldBy.step)
  return words.sentence('daysscreen.waitsFor', {
    name: words.sentence(code, data),
    untilAtMs: placed.heldBy.untilMinute * 60_000,
    timeZone,
  })
}

type WhyHourProps = WhyHereProps & Extract<Chosen, { readonly kind: 'hour' }>

const WhyHour = ({ view, plan, zone, minute, hoursKey, onChoose }: WhyHourProps) => {
  const hours = plan.conditions.zones.find(({ key }) => key === hoursKey)
  const name = [...plan.surfaces.zones, ...plan.marks.zones].find(({ id }) => id === zone)?.name ?? zone
  const asked = useFailing(view, { hoursKey, fromMinute: minute, toMinute: minute + 60 })
  if (hours === undefined) return <p>{view.words.sentence('daysscreen.noCoat', { zone: name })}</p>
  const step = (by: number): void => onChoose({ kind: 'hour', zone, hoursKey, minute: minute + by * 60 })
  return <JudgedHour {...{ view, plan, name, minute, hours, asked }} onStep={step} />
}

type JudgedHourProps = Pick<WhyHereProps, 'view' | 'plan'> & {
  /** Of the zone. */
  readonly name: string
  readonly minute: number
  readonly hours: ShownHours
  readonly asked: FailingAsked
  /** To a neighbouring hour. */
  readonly onStep: (by: number) => void
}

const JudgedHour = ({ view, plan, name, minute, hours, asked, onStep }: JudgedHourProps) => {
  const { words, timeZone } = view
  const verdict = hours.verdicts[Math.floor((minute - hours.firstMinute) / 60)] ?? 'unknown'
  const sheet = plan.buildUps.sheets.find(({ id }) => id === hours.sheet)?.name ?? hours.sheet
  const rows = hourRows({ view, plan, hours, of: { fromMinute: minute, toMinute: minute + 60 } })
  return (
    <div className="days-why">
      <p className="days-why-name">
        {words.sentence('daysscreen.whyHour', {
          zone: name,
          fromAtMs: minute * 60_000,
          timeZone,
          verdict: labelOf(`hourKind.${verdict}`),
        })}
      </p>
      <p>{words.sentence('daysscreen.forSheet', { name: sheet })}</p>
      <Say text={hourLikeText(view, hours, minute)} />
      <HourFigures {...{ view, plan, minute }} place={hours.place} />
      {rows.length === 0 ? (
        <p>{words.sentence('daysscreen.hourUnknown')}</p>
      ) : (
        <Limits rows={rows} view={view} asked={asked} />
      )}
      <FailedLimits view={view} asked={asked} />
      <div className="days-why-steps">
        <Button onClick={() => onStep(-1)}>{labelOf('daysScreen.hourBefore')}</Button>
        <Button onClick={() => onStep(1)}>{labelOf('daysScreen.hourAfter')}</Button>
      </div>
    </div>
  )
}
