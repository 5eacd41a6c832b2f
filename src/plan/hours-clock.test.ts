import fc from 'fast-check'
import { Temporal } from 'temporal-polyfill'
import { describe, expect, it } from 'vitest'
import { type HourlySeries, hourMs } from '#core/climate'
import { minuteOf, minutesOfDay, shareBefore } from './hours-clock.ts'

const from = (at: string, hours: number): HourlySeries => ({
  kind: 'hourlySeries',
  startMs: Date.parse(at),
  hours,
  airC: new Float64Array(hours),
  humidityShare: new Float64Array(hours),
  gaps: [],
  source: '',
  licence: '',
})

describe('the clock of the place over hours of weather', () => {
  it.each([
    ['Europe/London', '2027-03-26T00:00Z'],
    ['Europe/London', '2027-10-29T00:00Z'],
    ['Asia/Kolkata', '2027-10-29T00:00Z'],
    ['Australia/Lord_Howe', '2027-04-02T00:30Z'],
    ['Pacific/Apia', '2027-01-01T00:00Z'],
  ])('is that of %s hour by hour, over a change of it too', (zone, at) => {
    const series = from(at, 120)
    minutesOfDay(series, zone).forEach((minute, hour) => {
      const clock = Temporal.Instant.fromEpochMilliseconds(series.startMs + hour * hourMs).toZonedDateTimeISO(
        zone,
      )
      expect(minute).toBe(60 * clock.hour + clock.minute)
    })
  })

  it('is universal time where the zone is none', () => {
    expect(minutesOfDay(from('2027-03-26T05:00Z', 2), 'Nowhere/At_All')[1]).toBe(360)
  })
})

describe('the share of the hour before', () => {
  const span = { from: minuteOf('07:30'), until: minuteOf('09:00') }

  it('is what of it lies in the span', () => {
    const at = (clock: string) => shareBefore(minuteOf(clock), span)
    expect(['07:00', '08:00', '09:00', '09:30', '10:00'].map(at)).toEqual([0, 0.5, 1, 0.5, 0])
  })

  it('runs over midnight where the end is not behind the begin', () => {
    const night = { from: minuteOf('22:00'), until: minuteOf('06:00') }
    expect([0, 23 * 60, 6 * 60, 7 * 60, 22 * 60].map((minute) => shareBefore(minute, night))).toEqual([
      1, 1, 1, 0, 0,
    ])
  })

  it('over the hours of a day comes to the length of the span', () => {
    const minute = fc.integer({ min: 0, max: 1439 })
    fc.assert(
      fc.property(minute, minute, (begin, end) => {
        const hours = Array.from({ length: 24 }, (_, hour) =>
          shareBefore(60 * hour, { from: begin, until: end }),
        )
        const length = end <= begin ? end + 1440 - begin : end - begin
        expect(hours.reduce((sum, share) => sum + share, 0)).toBeCloseTo(length / 60, 9)
      }),
    )
  })
})
