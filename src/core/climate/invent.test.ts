import { describe, expect, it } from 'vitest'
import { dewPoints } from './dew-points.ts'
import type { InventedWeather } from './invent.ts'
import { inventWeather } from './invent.ts'
import type { InventedKind } from './invented-places.ts'
import { clearSkySun, throughCloud } from './sun/clear-sky.ts'
import { sunPosition } from './sun/sun-position.ts'

const degree = Math.PI / 180
const lake: InventedWeather = {
  kind: 'lake spring',
  latitude: 59.4 * degree,
  longitude: 17 * degree,
  startMs: Date.UTC(2027, 3, 1),
  days: 60,
  seed: 7,
}
const kinds: readonly InventedKind[] = ['lake spring', 'town summer', 'coast autumn']
const mean = (column: ArrayLike<number>) => Array.from(column).reduce((a, b) => a + b, 0) / column.length
const pairs = (a: ArrayLike<number>, b: ArrayLike<number>) =>
  Array.from(a).map((value, at) => [value, b[at]!] as const)

describe.each(kinds)('weather of %s', (kind) => {
  const series = inventWeather({ ...lake, kind })

  it('is the same for the same seed and other for another', () => {
    expect(inventWeather({ ...lake, kind })).toEqual(series)
    expect(inventWeather({ ...lake, kind, seed: 8 }).airC).not.toEqual(series.airC)
  })

  it('has a figure in every hour, in range and rounded', () => {
    const step = (column: ArrayLike<number> | undefined, perUnit: number) =>
      Array.from(column ?? []).every((value) => Object.is(Math.round(value * perUnit) / perUnit, value))
    expect(series.hours).toBe(60 * 24)
    expect([step(series.airC, 10), step(series.humidityShare, 100), step(series.windMps, 10)]).toEqual(
      Array(3).fill(true),
    )
    expect([step(series.rainMm, 10), step(series.cloudShare, 100), step(series.sunWm2, 1)]).toEqual(
      Array(3).fill(true),
    )
    expect(Math.max(...series.humidityShare)).toBeLessThanOrEqual(0.99)
    expect(Math.min(...(series.windMps ?? []))).toBeGreaterThanOrEqual(0.2)
  })

  it('rains only from cloud, in wind and damp air more than else', () => {
    const hours = pairs(series.rainMm!, series.cloudShare!)
    expect(hours.filter(([rain, cloud]) => rain > 0 && cloud < 0.15).length).toBe(0)
    const damp = pairs(series.rainMm!, series.humidityShare)
    const wetMean = mean(damp.filter(([rain]) => rain > 0).map(([, share]) => share))
    expect(wetMean).toBeGreaterThan(mean(series.humidityShare) + 0.05)
    const wind = pairs(series.rainMm!, series.windMps!)
    expect(mean(wind.filter(([rain]) => rain > 0).map(([, mps]) => mps))).toBeGreaterThan(
      mean(series.windMps!),
    )
  })

  it('cools more in a clear night than under cloud', () => {
    const fall = (clear: boolean) =>
      Array.from({ length: 59 }, (_, day) => day * 24 + 19)
        .filter((at) => mean(series.cloudShare!.slice(at, at + 8)) < 0.35 === clear)
        .map((at) => series.airC[at]! - Math.min(...series.airC.slice(at, at + 9)))
    expect(mean(fall(true))).toBeGreaterThan(mean(fall(false)) + 0.3)
  })
})

it('sun shines by day only', () => {
  const series = inventWeather(lake)
  for (let hour = 0; hour < series.hours; hour++) {
    const { altitude } = sunPosition({ ...lake, atMs: lake.startMs + (hour + 0.5) * 3_600_000 })
    if (altitude < 0) expect(series.sunWm2?.[hour]).toBe(0)
    else if (altitude > 0.1) expect(series.sunWm2?.[hour]).toBeGreaterThan(10)
  }
})

it('the dew point stays under the air', () => {
  const series = inventWeather(lake)
  for (const [air, dew] of pairs(series.airC, dewPoints(series))) expect(dew).toBeLessThan(air)
})

it('spring warms up in the north and cools down in the south', () => {
  const change = (latitude: number) => {
    const { airC } = inventWeather({ ...lake, latitude, days: 90 })
    return mean(airC.slice(-720)) - mean(airC.slice(0, 720))
  }
  expect(change(59.4 * degree)).toBeGreaterThan(5)
  expect(change(-59.4 * degree)).toBeLessThan(-5)
})

it('a clear sky gives the known order of light, and full cloud a quarter of it', () => {
  // 1098 · exp(-0.057) = 1037 W/m² from the zenith; 1098 · 0.5 · exp(-0.114) = 489.85 W/m² at 30°.
  expect(clearSkySun(90 * degree)).toBeCloseTo(1037.2, 1)
  expect(clearSkySun(30 * degree)).toBeCloseTo(489.85, 1)
  expect(clearSkySun(-0.1)).toBe(0)
  expect(throughCloud(1)).toBe(0.25)
  expect(throughCloud(0)).toBe(1)
})
