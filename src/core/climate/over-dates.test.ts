import { describe, expect, it } from 'vitest'
import { fairWeather } from './fair-weather.ts'
import { overDates } from './over-dates.ts'

/** Every hour of the typical year holds its own number; the clock of the station is three hours behind UTC. */
const year = fairWeather(8760, {
  startMs: Date.parse('2001-01-01T01:00-03:00'),
  airC: Float64Array.from({ length: 8760 }, (_, hour) => hour),
  typicalYear: true,
  gaps: [{ fromHour: 3, hours: 2 }],
})
const hourOf = (text: string) => (Date.parse(`2001-${text}-03:00`) - year.startMs) / 3_600_000
const first = (text: string) => overDates(year, { fromMs: Date.parse(`${text}-03:00`), hours: 30 })

describe('a typical year over dates', () => {
  it('gives each hour what the same hour of any year has', () => {
    const series = first('2027-07-15T13:00')
    expect(series.startMs).toBe(Date.parse('2027-07-15T13:00-03:00'))
    expect(Array.from(series.airC).slice(0, 3)).toEqual([0, 1, 2].map((hour) => hourOf('07-15T13:00') + hour))
    expect(series.typicalYear).toBeUndefined()
  })

  it('runs over the new year without a seam', () => {
    expect(Array.from(first('2027-12-31T22:00').airC).slice(0, 5)).toEqual([8757, 8758, 8759, 0, 1])
  })

  it('takes 28 February twice in a leap year', () => {
    const leap = overDates(year, { fromMs: Date.parse('2028-02-28T00:00Z'), hours: 72 })
    const air = Array.from(leap.airC)
    expect(air.slice(24, 48)).toEqual(air.slice(0, 24))
    expect(air[48]! - air[0]!).toBe(24)
  })

  it('holds as many hours as asked for, years on, and knows its gaps on each round', () => {
    const long = overDates(year, { fromMs: Date.parse('2027-01-01T00:00-03:00'), hours: 2 * 8760 })
    expect(long.airC).toHaveLength(2 * 8760)
    expect(long.gaps).toEqual([
      { fromHour: 4, hours: 2 },
      { fromHour: 8764, hours: 2 },
    ])
  })

  it('leaves weather with dates of its own as it is', () => {
    const dated = fairWeather(24)
    expect(overDates(dated, { fromMs: 0, hours: 5 })).toBe(dated)
  })

  it('keeps the beat of a station off the UTC hour', () => {
    const half = overDates(
      { ...year, startMs: Date.parse('2001-01-01T01:00+05:30') },
      { fromMs: Date.parse('2027-03-01T00:00Z'), hours: 2 },
    )
    expect(half.startMs).toBe(Date.parse('2027-02-28T23:30Z'))
    expect(half.airC[0]).toBe(hourOf('03-01T05:00'))
  })
})
