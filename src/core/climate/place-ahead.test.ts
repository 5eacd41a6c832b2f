import { describe, expect, it } from 'vitest'
import { airAhead } from './air-ahead.ts'
import { inventWeather } from './invent.ts'
import { commonLimits, skinLimits } from './paint-limits.ts'
import { hoursForSheet, paintableHours } from './paintable.ts'
import { placeAhead } from './place-ahead.ts'

const degree = Math.PI / 180
const series = inventWeather({
  kind: 'lake spring',
  latitude: 59 * degree,
  longitude: 17 * degree,
  startMs: Date.parse('2027-04-01T00:00Z'),
  days: 40,
  seed: 11,
})
const common = { ...commonLimits, openToSky: true }
const surfaceC = series.airC.map((airC, hour) => airC + 4 * Math.sin(hour / 4) - 1)
const skin = { surfaceC, warmestC: surfaceC.map((skinC) => skinC + 6) }

const sheets = [0, 1, 2, 3].map((product) => {
  const air = { airLeastC: 4 + 2 * product, airMostC: 16 + 3 * product }
  return {
    ...air,
    ...skinLimits(air),
    humidityMost: 0.9 - product / 20,
    hoursAfter: Array.from({ length: series.hours }, (_, hour) => (hour * (product + 3)) % 17),
  }
})

describe('products that share what the weather does at a place', () => {
  const ahead = placeAhead(airAhead({ series, limits: common }), skin)
  const asked = (index: number) => hoursForSheet(ahead, sheets[index]!)
  const alone = sheets.map((sheet) => paintableHours({ series, ...skin, limits: { ...common, ...sheet } }))

  it('have the verdicts of each asked alone, in whatever order and as often as they are asked', () => {
    for (const index of [2, 0, 3, 1, 0, 2]) expect(asked(index)).toEqual(alone[index])
  })

  it('are told apart by their own limits', () => {
    const limits = new Set(alone.flat().flatMap(({ failing }) => failing.map(({ limit }) => limit)))
    for (const limit of ['airLeast', 'skinMost', 'humidity', 'dewMargin', 'wetSince', 'wind', 'rain'])
      expect(limits).toContain(limit)
    expect(alone[0]).not.toEqual(alone[3])
  })
})
