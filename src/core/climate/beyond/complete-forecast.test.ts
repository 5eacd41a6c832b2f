import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { dewPoints } from '../dew-points.ts'
import { fairWeather } from '../fair-weather.ts'
import { inventWeather } from '../invent.ts'
import { laidFrom } from '../over-dates.ts'
import { type HourlySeries, hourMs } from '../series.ts'
import { completeForecast } from './complete-forecast.ts'

const degree = Math.PI / 180

/** A year of an invented place, 01:00 local standard time on 1 January first. */
const yearAt = (latitude: number, offsetHours = 0): HourlySeries => ({
  ...inventWeather({
    kind: 'lake spring',
    latitude: latitude * degree,
    longitude: 15 * offsetHours * degree,
    startMs: Date.UTC(2001, 0, 1, 1) - offsetHours * hourMs,
    days: 365,
    seed: 3,
  }),
  typicalYear: true,
})
const north = yearAt(55)
const south = yearAt(-41, 12)
const half = yearAt(19, 5.5)

const forecastFrom = (startMs: number, days: number, seed = 8): HourlySeries =>
  inventWeather({ kind: 'town summer', latitude: 55 * degree, longitude: 0, startMs, days, seed })

const dayMs = 24 * hourMs
const done = (forecast: HourlySeries, typical = north, days = 40) =>
  completeForecast({ forecast, typical, untilMs: forecast.startMs + days * dayMs })

const cut = (series: HourlySeries, hours: number): HourlySeries => ({
  ...series,
  hours,
  airC: Array.from(series.airC).slice(0, hours),
  humidityShare: Array.from(series.humidityShare).slice(0, hours),
})

const starts = fc
  .integer({ min: Date.UTC(2026, 0, 1) / hourMs, max: Date.UTC(2029, 0, 1) / hourMs })
  .map((hour) => hour * hourMs)

describe('a forecast that goes on with a typical year', () => {
  const cases = fc.record({
    startMs: starts,
    days: fc.integer({ min: 1, max: 12 }),
    seed: fc.integer({ min: 1, max: 999 }),
    typical: fc.constantFrom(north, south, half),
  })

  it('keeps every hour of the forecast, in every column', () => {
    fc.assert(
      fc.property(cases, ({ startMs, days, seed, typical }) => {
        const forecast = forecastFrom(startMs, days, seed)
        const { series, horizonHour } = done(forecast, typical)
        expect(horizonHour).toBe(forecast.hours)
        expect(cut(series, horizonHour)).toMatchObject({
          airC: Array.from(forecast.airC),
          humidityShare: Array.from(forecast.humidityShare),
        })
        for (const key of ['windMps', 'rainMm', 'cloudShare', 'sunWm2'] as const)
          expect(Array.from(series[key]!).slice(0, horizonHour)).toEqual(Array.from(forecast[key]!))
      }),
      { numRuns: 30 },
    )
  })

  it('has no jump at the joint: each hour moves as the typical year does, and by what fades in that hour', () => {
    fc.assert(
      fc.property(cases, ({ startMs, days, seed, typical }) => {
        const forecast = forecastFrom(startMs, days, seed)
        const { series, horizonHour } = done(forecast, typical)
        const usual = laidFrom(typical, { startMs, hours: series.hours })
        const pairs = [
          [series.airC, usual.airC],
          [dewPoints(series), dewPoints(usual)],
        ] as const
        for (const [mine, theirs] of pairs) {
          const off = (hour: number) => mine[hour]! - theirs[hour]!
          const day = Array.from({ length: Math.min(24, horizonHour) }, (_, k) => off(horizonHour - 1 - k))
          const most = Math.max(...day.map(Math.abs))
          for (let hour = horizonHour; hour < horizonHour + 119; hour++) {
            // A dew point that would stand over the air is held at the air.
            const held = series.humidityShare[hour]! > 0.9999 || series.humidityShare[hour - 1]! > 0.9999
            if (!held || mine === series.airC)
              expect(Math.abs(off(hour) - off(hour - 1))).toBeLessThan(
                2 * most * (1 - Math.exp(-1 / 6)) + 1e-9,
              )
          }
        }
      }),
      { numRuns: 30 },
    )
  })

  it('is the typical year itself five days on, and reaches to the moment asked for', () => {
    fc.assert(
      fc.property(cases, ({ startMs, days, seed, typical }) => {
        const { series, plainHour, horizonHour } = done(forecastFrom(startMs, days, seed), typical)
        expect(plainHour).toBe(horizonHour + 120)
        const usual = laidFrom(typical, { startMs, hours: series.hours })
        expect(Array.from(series.airC).slice(plainHour)).toEqual(Array.from(usual.airC).slice(plainHour))
        expect(series.hours).toBe(40 * 24)
        expect(series.humidityShare.every((share) => share > 0 && share <= 1)).toBe(true)
      }),
      { numRuns: 20 },
    )
  })

  it('is the same every time', () => {
    const forecast = forecastFrom(Date.UTC(2028, 1, 25), 3)
    expect(done(forecast)).toEqual(done(forecast))
  })

  it('passes 29 February: it has what 28 February has', () => {
    const { series, plainHour } = done(forecastFrom(Date.UTC(2028, 1, 20), 2))
    const at = (day: number) => (Date.UTC(2028, 1, day) - series.startMs) / hourMs
    expect(at(28)).toBeGreaterThan(plainHour)
    expect(Array.from(series.airC).slice(at(29), at(29) + 24)).toEqual(
      Array.from(series.airC).slice(at(28), at(28) + 24),
    )
  })

  it('is summer at new year south of the equator', () => {
    const june = done(forecastFrom(Date.UTC(2027, 5, 1), 3), south, 20).series
    const january = done(forecastFrom(Date.UTC(2027, 0, 1), 3), south, 20).series
    const late = ({ airC }: HourlySeries) =>
      Array.from(airC)
        .slice(240)
        .reduce((a, b) => a + b, 0)
    expect(late(january)).toBeGreaterThan(late(june))
  })

  it('comes back itself when it reaches far enough', () => {
    const forecast = forecastFrom(Date.UTC(2027, 4, 1), 12)
    expect(done(forecast, north, 12)).toEqual({ series: forecast, horizonHour: 288, plainHour: 288 })
    expect(done(forecast, north, 5).series).toBe(forecast)
  })
})

describe('what a forecast does not tell', () => {
  const forecast = forecastFrom(Date.UTC(2027, 4, 1), 4)
  const every = (value: number) => new Float64Array(forecast.hours).fill(value)

  it('stays unknown before the horizon and is the typical year behind it', () => {
    const bare: HourlySeries = {
      kind: 'hourlySeries',
      startMs: forecast.startMs,
      hours: forecast.hours,
      airC: forecast.airC,
      humidityShare: every(Number.NaN),
      gaps: [],
      source: '',
      licence: '',
    }
    const { series, horizonHour } = done(bare)
    const usual = laidFrom(north, { startMs: forecast.startMs, hours: series.hours })
    expect(horizonHour).toBe(96)
    expect([series.humidityShare[95], series.windMps?.[95], series.rainMm?.[95]]).toEqual(
      Array(3).fill(Number.NaN),
    )
    expect(series.windMps?.[96]).toBe(usual.windMps?.[96])
    expect(series.rainMm?.[96]).toBe(usual.rainMm?.[96])
    // Air of the forecast with the water of the typical year, as far as the air holds it.
    expect(dewPoints(series)[96]).toBeCloseTo(Math.min(series.airC[96]!, dewPoints(usual)[96]!), 9)
  })

  it('ends where humidity ends, though air goes on', () => {
    const humidityShare = Array.from(forecast.humidityShare, (share, hour) =>
      hour < 60 ? share : Number.NaN,
    )
    const { series, horizonHour } = done({ ...forecast, humidityShare })
    expect(horizonHour).toBe(60)
    expect(Array.from(series.airC).slice(0, 96)).toEqual(Array.from(forecast.airC))
    expect(series.humidityShare.every((share) => !Number.isNaN(share))).toBe(true)
  })

  it('is filled between the hours of a coarse tail, which stay; the departure runs straight between them', () => {
    const coarse = (column: ArrayLike<number>) =>
      Array.from(column, (value, hour) => (hour < 48 || hour % 6 === 0 ? value : Number.NaN))
    const told = { ...forecast, airC: coarse(forecast.airC), humidityShare: coarse(forecast.humidityShare) }
    const { series, horizonHour, plainHour } = done(told)
    const usual = laidFrom(north, { startMs: forecast.startMs, hours: series.hours })
    const off = (hour: number) => series.airC[hour]! - usual.airC[hour]!
    // Hour 48 follows hour 47, so the forecast is hourly to there; the next figures stand at 54, 60 ... 90.
    expect([horizonHour, plainHour]).toEqual([49, 90 + 121])
    expect([54, 60, 90].map((hour) => series.airC[hour])).toEqual(
      [54, 60, 90].map((hour) => forecast.airC[hour]),
    )
    expect(off(57)).toBeCloseTo((off(54) + off(60)) / 2, 9)
    expect(series.airC.every((value) => !Number.isNaN(value))).toBe(true)
  })

  it('keeps the holes of the forecast as holes, and drops those behind the horizon', () => {
    const airC = Array.from(forecast.airC, (value, hour) =>
      (hour >= 10 && hour < 14) || hour >= 90 ? Number.NaN : value,
    )
    const told = { ...forecast, airC, gaps: [{ fromHour: 10, hours: 4 }] }
    const { series, horizonHour } = done(told)
    expect(horizonHour).toBe(90)
    expect(series.gaps).toEqual([{ fromHour: 10, hours: 4 }])
    expect(series.airC[12]).toBeNaN()
  })

  it('is light of one source an hour: sun and sky are never put together from two', () => {
    const year: HourlySeries = { ...north, sunBeamWm2: north.sunWm2!, sunDiffuseWm2: north.sunWm2! }
    const airC = Array.from(forecast.airC, (value, hour) =>
      hour < 48 || hour % 6 === 0 ? value : Number.NaN,
    )
    const { series } = done({ ...forecast, airC }, year)
    expect([series.sunBeamWm2?.[60], series.sunWm2?.[60]]).toEqual([Number.NaN, forecast.sunWm2?.[60]])
    expect(series.sunBeamWm2?.[100]).toBe(
      laidFrom(year, { startMs: forecast.startMs, hours: 200 }).sunWm2?.[100],
    )
  })
})

it('sky heat goes with the air: 300 W/m² at 10 °C is 318.6 W/m² under an air of 14.29 °C', () => {
  // (287.44 / 283.15)^4 = 1.06198.
  const year = {
    ...fairWeather(8760, { startMs: Date.UTC(2001, 0, 1), typicalYear: true }),
    airC: new Float64Array(8760).fill(10),
    skyHeatWm2: new Float64Array(8760).fill(300),
  }
  const { series } = done(
    fairWeather(48, { airC: new Float64Array(48).fill(10 + 4.29 * Math.exp(1 / 24)) }),
    year,
  )
  expect(series.airC[48]).toBeCloseTo(14.29, 9)
  expect(series.skyHeatWm2?.[48]).toBeCloseTo(318.6, 1)
})
