import { describe, expect, it } from 'vitest'
import { coatWindows } from '#plan'
import { paperPlan } from '../../../../test/support/paper-plan.ts'
import { dayLoads, daysFor, shownDays, startDate } from './shown-days.ts'
import { zoneDays } from './zone-days.ts'

const within = { fromMinute: 0, toMinute: Number.MAX_SAFE_INTEGER }

describe('zoneDays', () => {
  const windows = coatWindows(paperPlan)
  it('gives every piece of work to exactly one row', () => {
    const rows = zoneDays({ plan: paperPlan, windows, within })
    const pieces = paperPlan.days.placed.flatMap((placed) => placed.pieces)
    expect(rows.flatMap(({ bars }) => bars).length).toBe(pieces.length)
    expect(pieces.length).toBeGreaterThan(0)
  })
  it('draws a coat in one go and sanding as work that may be split', () => {
    const bars = zoneDays({ plan: paperPlan, windows, within }).flatMap((row) => row.bars)
    expect(bars.find(({ step }) => step === 'coat:port:primer:1')?.kind).toBe('coat')
    expect(bars.find(({ step }) => step === 'sand:port')?.kind).toBe('split')
  })
  it('shows nothing of other days', () => {
    const rows = zoneDays({ plan: paperPlan, windows, within: { fromMinute: 0, toMinute: 1 } })
    expect(rows.every(({ bars, lines }) => bars.length + lines.length === 0)).toBe(true)
  })
})

describe('the days shown', () => {
  it('are as many as there is room for', () => {
    expect([daysFor(1400), daysFor(800), daysFor(330)]).toEqual([5, 3, 3])
  })
  it('follow each other, also over the change of the clock', () => {
    const days = shownDays('2027-03-27', 3, 'Europe/Stockholm')
    expect(days.map(({ fromMinute, toMinute }) => (toMinute - fromMinute) / 60)).toEqual([24, 23, 24])
    expect(days[1]?.fromMinute).toBe(days[0]?.toMinute)
  })
  it('begin today while the job runs, else with its first or its last work', () => {
    const at = (date: string) => startDate(paperPlan, Date.parse(`${date}T10:00:00Z`), 'Europe/Stockholm')
    const first = paperPlan.days.days[0]?.date
    expect(at('2020-01-01')).toBe(first)
    expect(at(String(first))).toBe(first)
    expect(at('2040-01-01')).toBe(paperPlan.days.days.at(-1)?.date)
  })
  it('make a bar a day of the whole job', () => {
    const hours = dayLoads(paperPlan).reduce((sum, day) => sum + day.hours, 0)
    const people = paperPlan.days.days.flatMap((day) => day.people)
    expect(hours).toBeCloseTo(people.reduce((sum, { minutes }) => sum + minutes / 60, 0))
  })
})
