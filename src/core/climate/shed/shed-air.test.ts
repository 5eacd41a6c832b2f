import { describe, expect, it } from 'vitest'
import { absoluteHumidity, dewPoint } from '../dew-point.ts'
import { fairWeather } from '../fair-weather.ts'
import { airInside } from '../shelter-air.ts'
import { flameWater } from './flame.ts'
import { heatToHold, type Room, volumeOf } from './room.ts'
import { type Heater, type Shed, shedAir } from './shed-air.ts'

const hours = 240
const every = (value: number, count = hours) => new Float64Array(count).fill(value)
const room: Room = { lengthM: 14, widthM: 7, heightM: 5, lossWm2K: 5.88, airChanges: 1 }
const air = { airLagHours: 3, sunKPerWm2: 0, waterKgM3: 0 }
const cold = fairWeather(hours, { airC: every(4), humidityShare: every(0.8) })
const plain: Shed = { room, airChanges: every(room.airChanges), floorKg: every(0) }
const held = (more: Partial<Heater> = {}): Shed => ({
  ...plain,
  heater: { holdsC: every(15), mostW: Number.POSITIVE_INFINITY, waterKgJ: 0, ...more },
})
const inside = (shed: Shed, series = cold, like = air) =>
  shedAir({ series, sunWm2: undefined, air: like, shed })

describe('a shed without a heater', () => {
  const swing = Float64Array.from(
    { length: hours },
    (_, hour) => 12 + 6 * Math.cos((2 * Math.PI * (hour - 15)) / 24),
  )
  const series = fairWeather(hours, { airC: swing, humidityShare: every(0.6) })

  it('has the temperature of any shelter with its lag', () => {
    const plainly = airInside({ series, sunWm2: undefined, air }).airC
    inside(plain, series).airC.forEach((airC, hour) => {
      expect(airC).toBeCloseTo(plainly[hour]!, 9)
    })
  })

  it('takes in the vapour outside with its air changes, and at a great many at once', () => {
    // A step from 4 to 12 g/m³ or so: by backward steps half of what is left each hour at one change an hour.
    const step = fairWeather(6, {
      airC: every(20, 6),
      humidityShare: [0.3, 0.7, 0.7, 0.7, 0.7, 0.7],
    })
    const shed = { ...plain, airChanges: every(1, 6), floorKg: every(0, 6) }
    inside(shed, step).humidityShare.forEach((share, hour) => {
      expect(share).toBeCloseTo(0.7 - 0.4 / 2 ** hour, 9)
    })
    const open = { ...shed, airChanges: every(1e6, 6) }
    expect(inside(open, step).humidityShare[1]).toBeCloseTo(0.7, 5)
  })

  it('follows the air outside faster with its doors open', () => {
    const warmer = fairWeather(8, { airC: [0, 10, 10, 10, 10, 10, 10, 10], humidityShare: every(0.5, 8) })
    const shut = inside({ ...plain, airChanges: every(1, 8), floorKg: every(0, 8) }, warmer).airC
    const open = inside({ ...plain, airChanges: every(6, 8), floorKg: every(0, 8) }, warmer).airC
    // Lag 3 h: after n hours 10 (1 - (3/4)^n). Open, the loss grows by 5 n V c / 3600 and the lag shrinks with it.
    expect(shut[3]).toBeCloseTo(10 * (1 - 0.75 ** 3), 9)
    const lag = (3 * heatToHold(room, 1)) / heatToHold({ ...room, airChanges: 6 }, 1)
    expect(lag).toBeLessThan(2.2)
    expect(open[3]).toBeCloseTo(10 * (1 - (lag / (1 + lag)) ** 3), 9)
  })
})

describe('a heater', () => {
  it('holds its temperature by what the room loses, and dry heat leaves the dew point alone', () => {
    const { airC, humidityShare, heatW } = inside(held())
    expect(airC.every((value) => Math.abs(value - 15) < 1e-9)).toBe(true)
    expect(heatW.at(-1)).toBeCloseTo(heatToHold(room, 11), 6)
    const dewC = dewPoint({ airC: 15, humidityShare: humidityShare.at(-1)! })
    expect(dewC).toBeCloseTo(dewPoint({ airC: 4, humidityShare: 0.8 }), 9)
  })

  it('that is too small warms it as far as it can', () => {
    const half = heatToHold(room, 5.5)
    const { airC, heatW } = inside(held({ mostW: half }))
    expect(airC.at(-1)).toBeCloseTo(9.5, 6)
    expect(heatW.every((value) => value <= half)).toBe(true)
  })

  it('is off where it holds nothing, and where the sun warms it past its temperature', () => {
    const off = inside(held({ holdsC: every(Number.NaN) }))
    expect(off.airC).toEqual(inside(plain).airC)
    const warm = inside(held(), fairWeather(hours))
    expect(warm.heatW.every((value) => value === 0)).toBe(true)
    expect(warm.airC.at(-1)).toBeCloseTo(20, 9)
  })

  it('takes more to warm the shed in the morning than to keep it warm', () => {
    const holdsC = every(15).map((value, hour) => (hour < 100 ? Number.NaN : value))
    const { heatW } = inside(held({ holdsC }))
    expect(heatW[99]).toBe(0)
    // All at once: 11 K of what is stored, 3 h times the loss, and the hour's loss besides.
    expect(heatW[100]).toBeCloseTo(4 * heatToHold(room, 11), 4)
    expect(heatW.at(-1)).toBeCloseTo(heatToHold(room, 11), 4)
  })
})

describe('water in a shed', () => {
  it('of a flame stands at what it gives over what the air carries off, in the steady state', () => {
    const shed = held({ waterKgJ: flameWater('gas') })
    const { humidityShare, heatW } = inside(shed)
    const gramsM3 = (heatW.at(-1)! * 3600 * flameWater('gas') * 1000) / volumeOf(room)
    // The balance n (w - w outside) = g / V; air that is warmed thins out, so w outside goes with 277.15 / 288.15.
    const outside = absoluteHumidity({ airC: 4, humidityShare: 0.8 }) * 1000 * (277.15 / 288.15)
    const had = absoluteHumidity({ airC: 15, humidityShare: humidityShare.at(-1)! }) * 1000
    expect(had - outside).toBeCloseTo(gramsM3, 6)
    expect(gramsM3).toBeGreaterThan(3)
  })

  it('of one litre on the floor of 490 m³ lifts the dew point as the trade has it', () => {
    // Trade rule 8: at 12 °C and 75 % from 7.7 to 11.1 °C. No air is changed while it dries off.
    const series = fairWeather(2, { airC: every(12, 2), humidityShare: every(0.75, 2) })
    const shed: Shed = { room, airChanges: every(0, 2), floorKg: Float64Array.of(0, 1) }
    expect(volumeOf(room)).toBe(490)
    const { humidityShare } = inside(shed, series)
    const dewC = Array.from(humidityShare, (share) => dewPoint({ airC: 12, humidityShare: share }))
    expect(dewC[0]).toBeCloseTo(7.7, 1)
    expect(dewC[1]).toBeCloseTo(11.1, 1)
  })

  it('is never more than the air holds: the rest runs off', () => {
    const flood = inside({ ...plain, floorKg: every(50) })
    expect(flood.humidityShare.every((share) => share === 1)).toBe(true)
  })

  it('and heat are unknown where the weather is, and begin again after it', () => {
    const holed = fairWeather(4, {
      airC: [4, Number.NaN, 4, 4],
      humidityShare: [0.8, 0.8, 0.8, Number.NaN],
    })
    const shed = held({ holdsC: every(15, 4) })
    const { airC, humidityShare } = inside(shed, holed)
    expect(airC[1]).toBeNaN()
    expect(humidityShare[1]).toBeNaN()
    expect(airC[2]).toBeCloseTo(15, 9)
    expect(humidityShare[2]).toBeGreaterThan(0.3)
    expect(humidityShare[3]).toBeNaN()
  })
})
