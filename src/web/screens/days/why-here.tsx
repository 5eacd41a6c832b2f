/** Why the chosen bar stands where it stands: what held it back, and each limit with what is needed and what it has. */
import { useEffect, useState } from 'react'
import { type CoatWindow, describeStep, limitNote } from '#plan'
import { labelOf } from '#words'
import type { JobView } from '../../job/job-view.ts'
import { Ledger } from '../../parts/index.ts'
import type { Failing, ShownPlan } from '../../worker/messages.ts'
import { stepOf } from '../today/today-state.ts'
import { type LimitRow, limitRows } from './limit-rows.ts'
import type { Bar } from './zone-days.ts'

export type WhyHereProps = {
  readonly view: JobView
  readonly plan: ShownPlan
  readonly windows: readonly CoatWindow[]
  readonly bar: Bar | undefined
}

export const WhyHere = ({ view, plan, windows, bar }: WhyHereProps) => {
  const { words } = view
  if (!bar) return <p>{labelOf('daysScreen.choose')}</p>
  const { code, data } = describeStep(plan, bar.step)
  const rows = limitRows({ view, plan, windows, bar })
  return (
    <div className="days-why">
      <p className="days-why-name">{words.sentence(code, data)}</p>
      <p>{heldSentence(view, plan, bar)}</p>
      {rows.length === 0 ? <p>{words.sentence('daysscreen.anyHour')}</p> : <Limits rows={rows} />}
      <Failed view={view} plan={plan} bar={bar} />
    </div>
  )
}

const Limits = ({ rows }: { readonly rows: readonly LimitRow[] }) => (
  <Ledger
    caption={labelOf('daysScreen.why')}
    columns={[
      { key: 'limit', label: labelOf('daysScreen.limit'), phone: 'first' },
      { key: 'had', label: labelOf('daysScreen.had'), align: 'right', phone: 'side' },
      { key: 'needed', label: labelOf('daysScreen.needed'), align: 'right', phone: 'second' },
      { key: 'so', label: labelOf('daysScreen.verdict'), phone: 'second', width: '6rem' },
    ]}
    rows={rows.map(({ id, ok, ...cells }) => ({
      id,
      cells: { ...cells, so: labelOf(ok ? 'daysScreen.ok' : 'daysScreen.not') },
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

type Asked =
  | { readonly kind: 'asking' }
  | { readonly kind: 'fault' }
  | { readonly kind: 'told'; readonly failing: Failing }

/** Limits that failed in an hour of the bar, each once: the worker holds them. */
const Failed = ({ view, plan, bar }: Pick<WhyHereProps, 'view' | 'plan'> & { readonly bar: Bar }) => {
  const [asked, setAsked] = useState<Asked>({ kind: 'asking' })
  const key = bar.kind === 'key' ? undefined : stepOf(plan, bar.step)?.hoursKey
  const { ask } = view
  useEffect(() => {
    if (key === undefined) return
    let here = true
    const first = Math.floor(bar.fromMinute / 60)
    const hours = Array.from(
      { length: Math.min(48, Math.ceil(bar.toMinute / 60) - first) },
      (_, k) => first + k,
    )
    Promise.all(hours.map((hour) => ask({ kind: 'why', key, minute: hour * 60 }))).then(
      (found) => here && setAsked({ kind: 'told', failing: found.flat() }),
      () => here && setAsked({ kind: 'fault' }),
    )
    return () => {
      here = false
    }
  }, [ask, key, bar.fromMinute, bar.toMinute])
  if (key === undefined || asked.kind === 'asking') return null
  if (asked.kind === 'fault') return <p>{view.words.sentence('daysscreen.whyFault')}</p>
  const known = new Set<string>()
  const once = asked.failing.filter(({ limit }) => !known.has(limit) && known.add(limit))
  return once.length === 0 ? null : (
    <ul className="days-unplaced">
      {once.map((failing) => {
        const note = limitNote(failing)
        return <li key={failing.limit}>{view.words.sentence(note.code, note.data)}</li>
      })}
    </ul>
  )
}
