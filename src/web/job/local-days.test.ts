import { describe, expect, it } from 'vitest'
import { addDays, daysBetween, isDate, minuteAt } from './local-days.ts'

const utc = (text: string): number => Date.parse(text) / 60_000

describe('minuteAt', () => {
  it('is the moment the clock there shows the time, in summer and in winter', () => {
    expect(minuteAt('2027-06-09', 360, 'Europe/Stockholm')).toBe(utc('2027-06-09T04:00Z'))
    expect(minuteAt('2027-01-09', 360, 'America/New_York')).toBe(utc('2027-01-09T11:00Z'))
  })
  it('makes a day of 23 hours where the clock goes forward', () => {
    const from = minuteAt('2027-03-28', 0, 'Europe/Stockholm')
    expect(minuteAt('2027-03-29', 0, 'Europe/Stockholm') - from).toBe(23 * 60)
  })
})

describe('dates', () => {
  it('are counted over the ends of months', () => {
    expect(addDays('2027-02-27', 3)).toBe('2027-03-02')
    expect(daysBetween('2027-06-14', '2027-06-11')).toBe(-3)
  })
  it('are told from other text', () => {
    expect([isDate('2027-06-14'), isDate('2027-13-40'), isDate('')]).toEqual([true, false, false])
  })
})
