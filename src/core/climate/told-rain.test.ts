import { describe, expect, it } from 'vitest'
import { fairWeather, without } from './fair-weather.ts'
import { leastRainMm, withToldRain } from './told-rain.ts'

const series = fairWeather(6, {
  rainMm: [0, 5, 0, 0, Number.NaN, 0],
  rainChanceShare: [0, 1, 0.4, 0, 0.5, 0],
})
const at = (hour: number): number => series.startMs + hour * 3_600_000
const rainOf = (rains: Parameters<typeof withToldRain>[0]['rains']) =>
  Array.from(withToldRain({ series, rains }).rainMm ?? [])

describe('rain that was told', () => {
  it('is spread over its hours by the clock, in place of what was forecast', () => {
    expect(rainOf([{ fromMs: at(0.5), toMs: at(2.5), amountMm: 4 }])).toEqual([1, 2, 1, 0, Number.NaN, 0])
  })
  it('dries what was forecast when none fell', () => {
    expect(rainOf([{ fromMs: at(1), toMs: at(2), amountMm: 0 }])[1]).toBe(0)
  })
  it('wets its hours when nobody measured it, and takes nothing from what is known', () => {
    expect(rainOf([{ fromMs: at(0), toMs: at(5) }])).toEqual([
      leastRainMm,
      5,
      leastRainMm,
      leastRainMm,
      leastRainMm,
      0,
    ])
  })
  it('takes away the chance of rain where it is known now, and nowhere else', () => {
    const { rainChanceShare } = withToldRain({ series, rains: [{ fromMs: at(2), toMs: at(3), amountMm: 0 }] })
    expect(Array.from(rainChanceShare ?? [])).toEqual([0, 1, Number.NaN, 0, 0.5, 0])
  })
  it('does not make the series longer, and leaves unknown what nobody told', () => {
    const bare = without(series, 'rainMm')
    const told = withToldRain({ series: bare, rains: [{ fromMs: at(-3), toMs: at(1) }] })
    expect(Array.from(told.rainMm ?? [])).toEqual([leastRainMm, ...Array(5).fill(Number.NaN)])
    expect(rainOf([{ fromMs: at(9), toMs: at(12), amountMm: 3 }])).toEqual([0, 5, 0, 0, Number.NaN, 0])
  })
})
