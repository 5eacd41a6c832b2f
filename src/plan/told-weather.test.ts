import { describe, expect, it } from 'vitest'
import type { Log } from '#job'
import { createPlanner, type Plan, type PlanInput, plan } from '#plan'
import { sampleInput } from '../../test/support/samples.ts'

const sample = sampleInput('open-powerboat')
const input: PlanInput = {
  ...sample,
  work: { ...sample.work, place: { ...sample.work.place, shelter: 'open' } },
}
const dry = plan(input)
const coat = dry.days.placed.find(
  ({ step, verdict }) =>
    verdict === 'go' &&
    dry.steps.steps.find(({ id }) => id === step)?.hoursKey?.startsWith('indoors|') === false,
)!
const iso = (minute: number): string => new Date(minute * 60_000).toISOString()
const rained = (from: number, until: number, amountMm?: number): Log => [
  {
    id: 'rain-1',
    kind: 'rain',
    at: iso(from),
    until: iso(until),
    ...(amountMm === undefined
      ? {}
      : { rain: { value: amountMm / 1000, text: `${amountMm} mm`, certainty: 'measured' as const } }),
  },
]
const placed = (of: Plan) => of.days.placed.find(({ step }) => step === coat.step)!
const skyAt = ({ conditions }: Plan, minute: number): number =>
  conditions.sky!.rainMm[Math.floor((minute - conditions.sky!.firstMinute) / 60)]!

describe('rain in the log', () => {
  const wet = plan({ ...input, log: rained(coat.startMinute - 120, coat.startMinute + 60, 6) })

  it('moves the coat that stood in it behind it, and stands in the sky of the plan', () => {
    expect(placed(wet).startMinute).toBeGreaterThan(coat.startMinute + 60)
    expect(skyAt(wet, coat.startMinute)).toBeGreaterThan(0)
    expect(skyAt(dry, coat.startMinute)).toBe(0)
  })

  it('that nobody measured moves it too, and none under a roof', () => {
    const unmeasured = rained(coat.startMinute - 120, coat.startMinute + 60)
    expect(placed(plan({ ...input, log: unmeasured })).startMinute).toBe(placed(wet).startMinute)
    const roofed = { ...input, work: { ...input.work, place: { ...input.work.place, shelter: 'shed' } } }
    expect(plan({ ...roofed, log: unmeasured } as PlanInput).days).toEqual(plan(roofed as PlanInput).days)
  })

  it('judges the hours again only when there is new rain in it', () => {
    const planner = createPlanner()
    const log = rained(coat.startMinute, coat.startMinute + 60)
    planner.plan({ ...input, log })
    const { trace } = planner.plan({
      ...input,
      log: [...log, { id: 'note-1', kind: 'note', at: iso(coat.startMinute), text: 'wet' }],
    })
    expect(trace.filter(({ stage, ran }) => ran && /^(conditions|told weather)/.test(stage))).toEqual([])
  })
})
