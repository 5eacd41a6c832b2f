import { describe, expect, it } from 'vitest'
import { MIDNIGHT, paperPlan } from '../../../../test/support/paper-plan.ts'
import { dayRows, lastTurns, personHours, rowInHand } from './day-rows.ts'

const day = { plan: paperPlan, fromMinute: MIDNIGHT, toMinute: MIDNIGHT + 1440 }
const rows = dayRows(day)
const entry = (id: string, at: string, kind: string, more = {}) => ({
  id,
  sent: true,
  cells: { at, kind, step: 'coat:port:primer:1', ...more },
})

describe('dayRows', () => {
  it('holds the steps of the day in the order of the clock, with their pours', () => {
    expect(rows.map(({ step, pours }) => [step, pours.length])).toEqual([
      ['sand:port', 0],
      ['coat:port:primer:1', 2],
      ['mask:transom', 0],
    ])
  })
  it('holds nothing of another day', () => {
    expect(dayRows({ ...day, fromMinute: MIDNIGHT - 1440, toMinute: MIDNIGHT })).toEqual([])
  })
  it('keeps a step that the log says was done without any hours, to take it back', () => {
    const [first, ...rest] = paperPlan.days.placed
    const done = { ...first!, done: true, pieces: [], startMinute: MIDNIGHT + 500, endMinute: MIDNIGHT + 500 }
    const plan = { ...paperPlan, days: { ...paperPlan.days, placed: [done, ...rest] } }
    expect(dayRows({ ...day, plan }).find(({ step }) => step === done.step)?.done).toBe(true)
  })
  it('counts the hours of every person', () => {
    expect(personHours(rows, paperPlan, day)).toBeCloseTo(8.25)
  })
})

describe('rowInHand', () => {
  it('is what was begun, else what the clock has come to, else the first', () => {
    expect(rowInHand(rows, new Set(['mask:transom']), MIDNIGHT)?.step).toBe('mask:transom')
    expect(rowInHand(rows, new Set(), MIDNIGHT)?.step).toBe('sand:port')
    expect(rowInHand(rows, new Set(), rows[0]!.endMinute)?.step).toBe('coat:port:primer:1')
    expect(rowInHand(rows, new Set(), MIDNIGHT + 1439)?.step).toBe('sand:port')
    expect(
      rowInHand(
        rows.map((row) => ({ ...row, done: true })),
        new Set(),
        0,
      ),
    ).toBeUndefined()
  })
})

describe('lastTurns', () => {
  const of = (log: Parameters<typeof lastTurns>[0]) => lastTurns(log).get('coat:port:primer:1')
  const started = entry('a', '2027-05-10T08:00+00:00', 'started')
  it('takes the newest by the clock, whatever the order of the entries', () => {
    expect(of([entry('b', '2027-05-10T09:00+00:00', 'done'), started])).toBe('done')
  })
  it('lets a coat that went wrong and stands stay begun, and one wiped off not', () => {
    expect(of([started, entry('b', '2027-05-10T09:00+00:00', 'mishap')])).toBe('started')
    expect(of([started, entry('b', '2027-05-10T09:00+00:00', 'mishap', { film: 'wiped off' })])).toBe(
      'mishap',
    )
  })
  it('leaves out entries without a time or a step', () => {
    expect(lastTurns([entry('a', 'yesterday', 'done'), { id: 'b', sent: true, cells: {} }]).size).toBe(0)
  })
})
