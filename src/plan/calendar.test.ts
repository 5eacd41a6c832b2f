import fc from 'fast-check'
import { Temporal } from 'temporal-polyfill'
import { describe, expect, it } from 'vitest'
import { catalogue } from '#catalogue'
import { calendar, dateOf } from './calendar.ts'
import { readCatalogue } from './read-catalogue.ts'

const { rates } = readCatalogue.run({ catalogue })

const lay = (timeZone: string, fromDate: string, shift = { from: '08:00', until: '16:00' }) =>
  calendar.run({
    place: { shelter: 'cover', timeZone },
    people: [{ id: 'ada', name: 'Ada' }],
    shifts: [{ id: 'all', person: 'ada', days: [1, 2, 3, 4, 5, 6, 7], ...shift }],
    closures: [],
    rates,
    fromDate,
  })

const hour = (minute: number, timeZone: string): string =>
  Temporal.Instant.fromEpochMilliseconds(minute * 60_000)
    .toZonedDateTimeISO(timeZone)
    .toPlainTime()
    .toString()
    .slice(0, 5)

describe('the calendar of a place', () => {
  it('has 25 hours on the day the clocks go back and 23 when they go forward', () => {
    const { days } = lay('Europe/Stockholm', '2027-03-01')
    const length = (date: string) => {
      const day = days.find((one) => one.date === date)!
      return (day.endMinute - day.startMinute) / 60
    }
    expect(length('2027-03-28')).toBe(23)
    expect(length('2027-03-29')).toBe(24)
    expect(length('2027-10-31')).toBe(25)
  })

  it('keeps shifts at the clock of the place, before and after a change', () => {
    const { people } = lay('America/New_York', '2027-10-25')
    const starts = people[0]!.shifts.slice(0, 30).map((shift) => hour(shift.startMinute, 'America/New_York'))
    // Opening the session takes half an hour of the shift.
    expect(new Set(starts)).toEqual(new Set(['08:30']))
  })

  it('begins every day when the library says it begins, in zones of every kind', () => {
    const zones = [
      'Europe/Stockholm',
      'America/New_York',
      'Australia/Lord_Howe',
      'Asia/Kathmandu',
      'America/Sao_Paulo',
      'Africa/Casablanca',
      'UTC',
    ]
    fc.assert(
      fc.property(fc.constantFrom(...zones), fc.integer({ min: 0, max: 3000 }), (zone, day) => {
        const from = Temporal.PlainDate.from('2024-01-01').add({ days: day })
        const { days } = lay(zone, from.toString())
        for (let index = 0; index < days.length; index += 1) {
          const begins = from.add({ days: index }).toZonedDateTime(zone).epochMilliseconds / 60_000
          expect(days[index]!.startMinute).toBe(begins)
        }
      }),
      { numRuns: 15 },
    )
  })

  it('takes an unknown time zone for universal time and says so', () => {
    const laid = lay('Mars/Olympus', '2027-05-01')
    expect(laid.timeZone).toBe('UTC')
    expect(laid.notes.map((note) => note.code)).toEqual(['calendar.unknownTimeZone'])
    expect(dateOf(Date.parse('2027-05-01T23:30:00Z'), 'Mars/Olympus')).toBe('2027-05-01')
  })

  it('leaves out who is away, and a shift too short to open and close', () => {
    const short = lay('UTC', '2027-05-01', { from: '08:00', until: '08:45' })
    expect(short.people[0]!.shifts).toEqual([])
    expect(short.notes.map((note) => note.code)).toEqual(['calendar.nobodyWorks'])
  })
})
