import { describe, expect, it } from 'vitest'
import { MIDNIGHT, paperPlan } from '../../../../test/support/paper-plan.ts'
import type { LogLine } from '../../job/job-view.ts'
import { behindOf, openSince, upTo } from './behind.ts'

const line = (at: string, kind: string, step: string): LogLine => ({
  id: `${at} ${kind} ${step}`,
  sent: true,
  cells: { at, kind, step },
})
const view = (log: readonly LogLine[], nowMinute = MIDNIGHT + 480) => ({
  raw: { hardstand: 1, work: { job: { start: '2027-05-03' } } } as never,
  log,
  timeZone: 'UTC',
  nowMs: nowMinute * 60_000,
})
const minuteOf = (iso: string): number => Date.parse(iso) / 60_000

describe('since when nothing is told', () => {
  it('is the first day of work, or the last turn before today', () => {
    expect(openSince(view([]))).toEqual({
      minute: minuteOf('2027-05-03T00:00Z'),
      date: '2027-05-03',
      long: true,
    })
    const friday = line('2027-05-07T16:30+00:00', 'done', 'mask:transom')
    expect(openSince(view([friday]))).toEqual({
      minute: minuteOf('2027-05-07T16:30Z'),
      date: '2027-05-07',
      long: false,
    })
  })
  it('does not begin anew with a tick of today, which quiets the sentence all the same', () => {
    const today = line('2027-05-10T07:00+00:00', 'done', 'mask:transom')
    expect(openSince(view([today]))).toMatchObject({ date: '2027-05-03', long: false })
  })
  it('is nothing before the first day of work', () => {
    expect(openSince(view([], minuteOf('2027-05-02T08:00Z')))).toBeUndefined()
  })
})

describe('done up to here', () => {
  const night = MIDNIGHT + 1439
  it('finds what was to be over by now and is not ticked, in the order of its planned end', () => {
    const all = behindOf(paperPlan, view([], night))
    expect(all.map(({ step }) => step)).toEqual(
      paperPlan.days.placed.toSorted((a, b) => a.endMinute - b.endMinute).map(({ step }) => step),
    )
    expect(behindOf(paperPlan, view([], MIDNIGHT))).toEqual([])
    const ticked = line('2027-05-10T12:00+00:00', 'done', all[0]!.step)
    expect(behindOf(paperPlan, view([ticked], night))).toEqual(all.slice(1))
  })
  it('takes all that were planned to end no later than the last one', () => {
    const all = behindOf(paperPlan, view([], night))
    expect(upTo(all, all[1]!.step)).toEqual(all.slice(0, 2))
    expect(upTo(all, 'unheard of')).toEqual([])
  })
})
