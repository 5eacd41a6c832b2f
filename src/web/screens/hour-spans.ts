/** Hours of a kind of place as spans on an axis: neighbours of one kind are joined. */
import type { HourSpan } from '../parts/index.ts'
import type { ShownHours, ShownPlan } from '../worker/messages.ts'

export type Minutes = { readonly fromMinute: number; readonly toMinute: number }

export function hourSpans(
  { firstMinute, verdicts }: Pick<ShownHours, 'firstMinute' | 'verdicts'>,
  { fromMinute, toMinute }: Minutes,
): readonly HourSpan[] {
  const spans: { kind: HourSpan['kind']; fromMs: number; toMs: number }[] = []
  const first = Math.floor((fromMinute - firstMinute) / 60)
  const last = Math.ceil((toMinute - firstMinute) / 60)
  for (let hour = first; hour < last; hour++) {
    const kind = verdicts[hour] ?? 'unknown'
    const fromMs = Math.max(fromMinute, firstMinute + hour * 60) * 60_000
    const toMs = Math.min(toMinute, firstMinute + (hour + 1) * 60) * 60_000
    const before = spans.at(-1)
    if (before?.kind === kind) before.toMs = toMs
    else spans.push({ kind, fromMs, toMs })
  }
  return spans
}

/** The hours that hold for a zone from a minute on: those of its next coat, else of its last. */
export function hoursOfZone(plan: ShownPlan, zone: string, fromMinute: number): ShownHours | undefined {
  const keys = new Map(plan.steps.steps.map((step) => [step.id, step]))
  const coats = plan.days.placed
    .filter(({ step }) => keys.get(step)?.zone === zone && keys.get(step)?.hoursKey !== undefined)
    .sort((a, b) => a.startMinute - b.startMinute)
  const next = coats.find(({ endMinute }) => endMinute > fromMinute) ?? coats.at(-1)
  const key = next && keys.get(next.step)?.hoursKey
  return plan.conditions.zones.find((one) => one.key === key)
}

/** The stretch of hours that takes paint at a minute, or the next one that begins before `toMinute`. */
export function openStretch(spans: readonly HourSpan[], fromMinute: number): HourSpan | undefined {
  return spans.find(({ kind, toMs }) => kind === 'go' && toMs > fromMinute * 60_000)
}
