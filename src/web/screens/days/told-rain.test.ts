import { describe, expect, it } from 'vitest'
import { paperPlan } from '../../../../test/support/paper-plan.ts'
import type { ShownPlan } from '../../worker/messages.ts'
import { caughtCoats, rainCells, rainJustNow, rainMinutes } from './told-rain.ts'

const timeZone = 'Europe/Stockholm'
const minute = (text: string): number => Date.parse(text) / 60_000

describe('rain as it is told', () => {
  it('was in the last hour unless somebody says otherwise, also over midnight', () => {
    const told = rainJustNow(Date.parse('2027-06-09T22:20:00Z'), timeZone)
    expect(told).toEqual({ date: '2027-06-09', from: '23:15', until: '00:15' })
    expect(rainMinutes(told, timeZone)).toEqual({
      fromMinute: minute('2027-06-09T21:15Z'),
      toMinute: minute('2027-06-09T22:15Z'),
    })
  })
  it('is not there while a box holds no time', () => {
    expect(rainMinutes({ date: '2027-06-09', from: '', until: '09:00' }, timeZone)).toBeUndefined()
  })
  it('becomes an entry with its hours in the time of the place, and an amount only where one is known', () => {
    const rain = { fromMinute: minute('2027-06-09T06:00Z'), toMinute: minute('2027-06-09T07:30Z') }
    expect(rainCells(rain, { amount: ' ', timeZone })).toEqual({
      at: '2027-06-09T08:00+02:00',
      kind: 'rain',
      until: '2027-06-09T09:30+02:00',
    })
    expect(rainCells(rain, { amount: ' 3 mm', timeZone })).toMatchObject({ rain: '3 mm' })
  })
})

describe('coats that rain may have fallen on', () => {
  const step = 'coat:port:primer:1'
  const coat = paperPlan.days.placed.find((one) => one.step === step)!
  const hours = {
    key: 'boat|primer',
    sheet: 'primer',
    place: 'boat',
    firstMinute: 0,
    hoursAfter: [4],
  } as const
  const plan = {
    ...paperPlan,
    steps: {
      ...paperPlan.steps,
      steps: paperPlan.steps.steps.map((one) => (one.id === step ? { ...one, hoursKey: hours.key } : one)),
    },
    conditions: { ...paperPlan.conditions, zones: [{ ...hours, verdicts: [] }] },
    days: {
      ...paperPlan.days,
      placed: paperPlan.days.placed.map((one) => (one.step === step ? { ...one, done: true } : one)),
    },
  } as unknown as ShownPlan
  const rainAfter = (minutes: number) => ({
    fromMinute: coat.endMinute + minutes,
    toMinute: coat.endMinute + minutes + 30,
  })

  it('are those not yet dry enough for it', () => {
    expect(caughtCoats({ plan, log: [], rain: rainAfter(239) })).toEqual([step])
    expect(caughtCoats({ plan, log: [], rain: rainAfter(240) })).toEqual([])
  })
  it('are none that nobody has put on, nor those put on later', () => {
    expect(caughtCoats({ plan: { ...plan, days: paperPlan.days }, log: [], rain: rainAfter(0) })).toEqual([])
    const before = { fromMinute: coat.startMinute - 60, toMinute: coat.startMinute }
    expect(caughtCoats({ plan, log: [], rain: before })).toEqual([])
  })
})
