import { describe, expect, it } from 'vitest'
import { dewPoint } from './dew-point.ts'
import { fairWeather, without } from './fair-weather.ts'
import { lagged } from './lagged.ts'
import { airUnder, shelterNote } from './shelter.ts'

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

  it('says what it assumes', () => {
    const { code, data } = shelterNote('shed')
    expect(code).toBe('climate.shelterAssumed')
    expect(data).toEqual({ shelter: 'shed', windShare: 0, airLagHours: 3, boatLagHours: 3 })
  })
})
