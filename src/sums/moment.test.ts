import { describe, expect, it } from 'vitest'
import { readMoment, timeOfDay } from './moment.ts'
import { SumError } from './sum-error.ts'

describe('moment', () => {
  it('is read with its offset, and knows noon of its own date there', () => {
    const moment = readMoment('at', '2027-06-21T21:30-04:00')
    expect(moment.atMs).toBe(Date.UTC(2027, 5, 22, 1, 30))
    expect(moment.noonMs).toBe(Date.UTC(2027, 5, 21, 16))
    expect(moment.offsetHours).toBe(-4)
    expect(timeOfDay(moment, moment.atMs)).toBeCloseTo(21.5, 9)
  })

  it('takes half-hour offsets, Z, and a space for the T', () => {
    expect(readMoment('at', '2027-06-21 09:00+05:30').offsetHours).toBe(5.5)
    expect(readMoment('at', '2027-06-21T09:00Z').offsetHours).toBe(0)
    expect(readMoment('at', '2027-06-21T09:00-03:30').noonMs).toBe(Date.UTC(2027, 5, 21, 15, 30))
  })

  it('is refused without an offset, off the calendar, and outside the years the sun is known for', () => {
    for (const text of [
      '2027-06-21T09:00',
      '2027-02-29T09:00Z',
      '2027-06-21',
      'noon',
      '',
      '1850-01-01T00:00Z',
    ])
      expect(() => readMoment('at', text), text).toThrow(SumError)
  })
})
