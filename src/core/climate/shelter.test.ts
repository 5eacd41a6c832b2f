import { describe, expect, it } from 'vitest'
import { dewPoint } from './dew-point.ts'
import { fairWeather, without } from './fair-weather.ts'
import { lagged } from './lagged.ts'
import { airUnder, shelterNotes } from './shelter.ts'
import { surfaceTemperature } from './surface-temperature.ts'

const degree = Math.PI / 180
const place = { latitude: 59.4 * degree, longitude: 17 * degree }
const hours = 96
const swing = Float64Array.from(
  { length: hours },
  (_, hour) => 12 + 6 * Math.cos((2 * Math.PI * (hour - 15)) / 24),
)
const series = fairWeather(hours, { airC: swing, humidityShare: new Float64Array(hours).fill(0.6) })
const lastDay = (column: ArrayLike<number>) => Array.from(column).slice(-24)

describe('a lag', () => {
  it('damps and delays a daily swing as a first-order lag does', () => {
    const inside = lastDay(lagged({ column: swing, lagHours: 3 }))
    // 1 / sqrt(1 + (3 · 2π/24)²) = 0.786 in continuous time; hourly backward steps damp a little more.
    const share = (Math.max(...inside) - Math.min(...inside)) / 12
    expect(share).toBeGreaterThan(0.7)
    expect(share).toBeLessThan(0.8)
    expect(inside.indexOf(Math.max(...inside))).toBeGreaterThanOrEqual(17)
  })

  it('starts again at the value after unknown hours, and a lag of 0 changes nothing', () => {
    expect(Array.from(lagged({ column: [1, 2, Number.NaN, 8, 9], lagHours: 1 }))).toEqual([
      1,
      1.5,
      Number.NaN,
      8,
      8.5,
    ])
    expect(lagged({ column: swing, lagHours: 0 })).toEqual(swing)
  })
})

describe('air under a shelter', () => {
  it('is the air outside in the open, to the last column', () => {
    expect(airUnder({ series, shelter: 'open' })).toEqual(series)
  })

  it('holds as much water in a shed as outside', () => {
    const inside = airUnder({ series, shelter: 'shed' })
    for (let hour = 0; hour < hours; hour++) {
      if (inside.humidityShare[hour] === 1) continue
      const insideDewC = dewPoint({ airC: inside.airC[hour]!, humidityShare: inside.humidityShare[hour]! })
      expect(insideDewC).toBeCloseTo(dewPoint({ airC: swing[hour]!, humidityShare: 0.6 }), 9)
    }
  })

  it('never holds more than saturated air', () => {
    const thaw = fairWeather(4, { airC: [0, 0, 18, 18], humidityShare: [0.9, 0.9, 0.95, 0.95] })
    const inside = airUnder({ series: thaw, shelter: 'shed' })
    expect(inside.humidityShare[2]).toBe(1)
  })

  it('is still behind walls even when the wind outside is not known, and half the wind under a cloth', () => {
    expect(airUnder({ series: without(series, 'windMps'), shelter: 'shed' }).windMps?.[5]).toBe(0)
    expect(airUnder({ series, shelter: 'cover' }).windMps?.[5]).toBe(0.5)
    expect(airUnder({ series: without(series, 'windMps'), shelter: 'cover' }).windMps).toBeUndefined()
  })

  it('keeps unknown hours unknown', () => {
    const holed = fairWeather(3, { airC: [20, Number.NaN, 20], humidityShare: [0.5, 0.5, Number.NaN] })
    const inside = airUnder({ series: holed, shelter: 'shed' })
    expect(inside.airC[1]).toBeNaN()
    expect(inside.humidityShare[1]).toBeNaN()
    expect(inside.humidityShare[2]).toBeNaN()
  })

  it('says what it assumes, and that heating is left out', () => {
    expect(shelterNotes('open').map((note) => note.code)).toEqual(['climate.shelterAssumed'])
    expect(shelterNotes('heated shed').map((note) => note.code)).toEqual([
      'climate.shelterAssumed',
      'climate.heatingLeftOut',
    ])
  })
})

describe('the skin', () => {
  const dropAt = (shelter: 'open' | 'cover', hour: number, cloudShare?: number) => {
    const sky = cloudShare === undefined ? {} : { cloudShare: new Float64Array(hours).fill(cloudShare) }
    const skin = surfaceTemperature({ series: { ...series, ...sky }, shelter, place })
    return swing[hour]! - skin[hour]!
  }

  it('stands below the air under a clear night sky and at the air by day', () => {
    // 59.4 N 17 E on 1 June: sunrise 01:50Z, sunset 20:00Z.
    expect(dropAt('open', 23, 0)).toBeCloseTo(6, 9)
    expect(dropAt('open', 12, 0)).toBe(0)
    expect([19, 21, 25, 27].map((hour) => dropAt('open', hour, 0) > 0)).toEqual([false, true, true, false])
  })

  it('is colder under the open sky than under a cloth, and milder under cloud', () => {
    expect(dropAt('cover', 23, 0)).toBeCloseTo(1, 9)
    // Emittance 0.815 · 1.154 under full cloud leaves 0.0595 / 0.185 of the loss.
    expect(dropAt('open', 23, 1)).toBeCloseTo(6 * 0.3216, 3)
    expect(dropAt('open', 23, 0.5)).toBeLessThan(dropAt('open', 23, 0))
  })

  it('counts a sky nobody described as clear', () => {
    expect(dropAt('open', 23)).toBe(dropAt('open', 23, 0))
  })

  it('lags behind warm moist air in a shed, so that it can sweat in the morning', () => {
    const front = fairWeather(24, {
      airC: Array.from({ length: 24 }, (_, hour) => (hour < 12 ? 4 : 14)),
      humidityShare: new Float64Array(24).fill(0.9),
    })
    const skin = surfaceTemperature({ series: front, shelter: 'shed', place })
    expect(skin[13]).toBeLessThan(dewPoint({ airC: 14, humidityShare: 0.9 }))
  })
})
