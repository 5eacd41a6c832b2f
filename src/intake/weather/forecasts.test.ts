import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import type { HourlySeries } from '#core/climate'
import { hoursOf } from './nws-grid.ts'
import { readWeather } from './read-weather.ts'

const file = (name: string) =>
  new Uint8Array(readFileSync(new URL(`../../../test/files/weather/${name}`, import.meta.url)))
const bytes = (value: unknown) => new TextEncoder().encode(JSON.stringify(value))
const parsed = (name: string) => JSON.parse(new TextDecoder().decode(file(name)))

function seriesIn(given: Uint8Array): HourlySeries {
  const read = readWeather(given)
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  return read.series
}
const list = (column: ArrayLike<number> | undefined, digits = 6) =>
  Array.from(column ?? [], (value) => (Number.isNaN(value) ? null : Number(value.toFixed(digits))))
const codes = (given: Uint8Array) => readWeather(given).problems.map(({ code }) => code)
const at = (text: string) => Date.parse(text)

describe('a grid point of the National Weather Service', () => {
  const series = seriesIn(file('nws-grid.json'))

  it('holds each value for its whole interval, in our units', () => {
    expect([series.startMs, series.hours]).toEqual([at('2027-04-01T04:00Z'), 29])
    expect(list(series.airC).slice(0, 6)).toEqual([10, 12, 12, null, 15, 15])
    expect(series.windMps?.[28]).toBeCloseTo(5, 12)
    expect(series.windFromRad?.[0]).toBeCloseTo(1.5 * Math.PI, 12)
    expect(series.cloudShare?.[0]).toBe(0.25)
  })

  it('begins with the air, and knows nothing where no interval reaches', () => {
    expect(list(series.humidityShare, 3).slice(0, 6)).toEqual([0.7, 0.7, 0.6, 0.6, 0.6, 0.512])
    expect(list(series.rainChanceShare)).toEqual([...new Array(6).fill(0.3), ...new Array(23).fill(null)])
  })

  it('parts the total of an interval among its hours', () => {
    expect(list(series.rainMm)).toEqual([0.5, 0.5, 0.5, 0, 0, 0, 0, 0, 0, ...new Array(20).fill(null)])
  })

  it('says where it is from, when made, and on what terms', () => {
    expect(series.source).toBe('National Weather Service, grid point XXX 1 2, 2027-04-01T03:10:00+00:00')
    expect(series.licence).toMatch(/^public domain/)
    expect(codes(file('nws-grid.json'))).toEqual([
      'intake.humidityFromDew',
      'intake.figuresUnknown',
      'intake.figuresUnknown',
      'intake.figuresUnknown',
    ])
  })

  it('is refused with an unknown unit, a broken interval or no figure, each with its place', () => {
    const spoilt = parsed('nws-grid.json')
    spoilt.properties.windSpeed.uom = 'wmoUnit:furlong'
    spoilt.properties.temperature.values[1].validTime = '2027-04-01T05:00:00+00:00/P1Y'
    spoilt.properties.relativeHumidity.values[1].value = '60'
    const { problems } = readWeather(bytes(spoilt))
    expect(
      problems
        .filter(({ severity }) => severity === 'error')
        .map(({ code, data }) => [code, data.at ?? data.name]),
    ).toEqual([
      ['intake.jsonTime', 'properties.temperature.values[1].validTime'],
      ['intake.jsonNumber', 'properties.relativeHumidity.values[1].value'],
      ['intake.unitUnknown', 'windSpeed'],
    ])
  })

  it.each([
    ['PT1H', 1],
    ['P1DT6H', 30],
    ['P6DT15H', 159],
    ['P2W', 336],
    ['PT30M', undefined],
    ['P0D', undefined],
    ['P999D', undefined],
  ])('takes %s for %s hours', (duration, hours) => {
    expect(hoursOf(duration)).toBe(hours)
  })
})

describe('the hourly forecast of the National Weather Service', () => {
  const series = seriesIn(file('nws-hourly.json'))

  it('mixes units and words, and is read all the same', () => {
    expect(series.startMs).toBe(at('2027-04-02T00:00Z'))
    expect(list(series.airC, 2)).toEqual([15, 13.89])
    expect(list(series.windMps, 4)).toEqual([4.4704, 0])
    expect(list(series.windFromRad, 4)).toEqual([3.5343, 6.2832])
    expect(list(series.dewC)).toEqual([5, null])
  })

  it('gives a chance of rain and no amount', () => {
    expect(series.rainMm).toBeUndefined()
    expect(list(series.rainChanceShare)).toEqual([0.2, null])
  })
})

describe('the location forecast of MET Norway', () => {
  const series = seriesIn(file('met.json'))

  it('knows air only at its own moments, and fills nothing in between', () => {
    expect(series.hours).toBe(15)
    expect(list(series.airC)).toEqual([
      5,
      6,
      7,
      null,
      null,
      null,
      null,
      null,
      10,
      null,
      null,
      null,
      null,
      null,
      6,
    ])
    expect(series.gaps).toEqual([])
  })

  it('takes rain by the hour where it is there, else a sixth of six hours, and after the last span as unknown', () => {
    expect(list(series.rainMm)).toEqual([0.2, 0.4, ...new Array(6).fill(0.2), 0, 0, 0, 0, 0, 0, null])
  })

  it('says from when on it thins out', () => {
    const note = readWeather(file('met.json')).problems.find(({ code }) => code === 'intake.forecastThins')
    expect(note?.data).toEqual({ fromAtMs: at('2027-04-01T06:00Z'), stepHours: 6 })
    expect(series.licence).toContain('CC BY 4.0')
  })

  it('leaves a gap where it jumps a day', () => {
    const jumped = parsed('met.json')
    jumped.properties.timeseries[4].time = '2027-04-03T12:00:00Z'
    expect(seriesIn(bytes(jumped)).gaps).toEqual([{ fromHour: 9, hours: 47 }])
  })
})

describe('the forecast of Open-Meteo', () => {
  const series = seriesIn(file('open-meteo.json'))

  it('is local time with one offset, in whatever units it says', () => {
    expect(series.startMs).toBe(at('2027-04-01T08:00Z'))
    expect(list(series.airC)).toEqual([10, 11, 12, null])
    expect(list(series.windMps, 4)).toEqual([4.4704, 4.4704, 8.9408, 0])
  })

  it('stamps sun and rain at the end of their hour, so they go to the hour before', () => {
    expect(list(series.rainMm)).toEqual([0, 2.54, 0, null])
    expect(list(series.sunWm2)).toEqual([200, 300, 400, null])
    expect(list(series.sunBeamWm2)).toEqual([20, 30, 40, null])
    expect(list(series.sunDiffuseWm2)).toEqual([180, 270, 360, null])
    expect(list(series.rainChanceShare)).toEqual([0.1, 0.3, 0, null])
  })

  it('may give its times as seconds', () => {
    const seconds = parsed('open-meteo.json')
    seconds.hourly_units.time = 'unixtime'
    seconds.hourly.time = [0, 1, 2, 3].map((hour) => at('2027-04-01T08:00Z') / 1000 + hour * 3600)
    expect(list(seriesIn(bytes(seconds)).airC)).toEqual(list(series.airC))
    expect(seriesIn(bytes(seconds)).startMs).toBe(series.startMs)
  })

  it('is refused with lists of different length, times off the hour or no offset', () => {
    const short = parsed('open-meteo.json')
    short.hourly.precipitation.pop()
    short.hourly.time[2] = '2027-04-01T12:30'
    expect(codes(bytes(short)).slice(0, 2)).toEqual(['intake.jsonTime', 'intake.jsonLengths'])
    const nowhere = { ...parsed('open-meteo.json'), utc_offset_seconds: undefined }
    expect(codes(bytes(nowhere))[0]).toBe('intake.jsonOffset')
  })
})

describe('JSON that is no forecast', () => {
  it.each([
    ['{"properties":{"temperature":', 'intake.jsonBroken'],
    ['{}', 'intake.jsonUnknown'],
    ['[1,2,3]', 'intake.jsonUnknown'],
    ['{"hourly":{"time":[]},"hourly_units":{},"utc_offset_seconds":0}', 'intake.noRows'],
    ['{"properties":{"timeseries":[]}}', 'intake.noRows'],
    ['{"properties":{"temperature":{"values":[]}}}', 'intake.noRows'],
    ['{"properties":{"timeseries":[null,5,{"time":1e300}]}}', 'intake.jsonTime'],
  ])('%s is refused by name', (text, code) => {
    expect(codes(new TextEncoder().encode(text))[0]).toBe(code)
  })

  it('nested millions deep is refused and breaks nothing, and what is far too long is not parsed', () => {
    expect(codes(new Uint8Array(3_000_000).fill(0x5b))).toEqual(['intake.jsonBroken'])
    expect(codes(new Uint8Array(10_000_000).fill(0x5b))).toEqual(['intake.fileTooLarge'])
  })

  it('a few figures centuries apart are not spread over centuries of hours', () => {
    const wide = parsed('met.json')
    wide.properties.timeseries[4].time = '2199-04-01T12:00:00Z'
    expect(codes(bytes(wide))).toEqual(['intake.spanTooLong'])
  })
})
