import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { dewPoint } from './dew-point.ts'
import { dewPoints } from './dew-points.ts'
import { fairWeather } from './fair-weather.ts'
import { hourMs } from './series.ts'
import {
  type ReadShift,
  readingShifts,
  withAirShifts,
  withSkinShifts,
  type YardReading,
} from './yard-reading.ts'

// 20 °C and 50 % in every hour.
const series = fairWeather(48)
const at = (hour: number): number => series.startMs + hour * hourMs
const read = (reading: Partial<YardReading>, surfaceC = series.airC) =>
  readingShifts({ series, surfaceC, readings: [{ atMs: at(8), here: true, ...reading }] })
/** By how much the air of each hour is shifted. */
const columnOf = (shifts: readonly ReadShift[], of = series) =>
  Array.from(withAirShifts(of, shifts).airC, (airC, hour) => airC - of.airC[hour]!)

describe('a reading at the boat', () => {
  it('that is as forecast changes nothing', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 46, noNaN: true }),
        fc.double({ min: -5, max: 30, noNaN: true }),
        fc.double({ min: 0.2, max: 1, noNaN: true }),
        (hour, airC, humidityShare) => {
          const even = fairWeather(48, {
            airC: new Array(48).fill(airC),
            humidityShare: new Array(48).fill(humidityShare),
          })
          const { shifts, faults } = readingShifts({
            series: even,
            surfaceC: even.airC,
            readings: [{ atMs: even.startMs + hour * hourMs, airC, humidityShare, skinC: airC, here: true }],
          })
          expect(faults).toEqual([])
          const moved = withAirShifts(even, shifts)
          for (let at = 0; at < 48; at++) {
            expect(moved.airC[at]).toBeCloseTo(airC, 9)
            expect(moved.humidityShare[at]).toBeCloseTo(humidityShare, 9)
          }
        },
      ),
    )
  })

  it('shifts its own hour in full and fades to nothing in twelve, worked by hand', () => {
    const { shifts } = read({ airC: 23 })
    expect(shifts).toEqual([{ atMs: at(8), here: true, airK: 3 }])
    const column = columnOf(shifts)
    expect(column.slice(6, 12)).toEqual([0, 0, 3, 2.75, 2.5, 2.25])
    expect(column[14]).toBeCloseTo(1.5, 9)
    expect(column.slice(20)).toEqual(new Array(28).fill(0))
  })

  it('between two hours is held against the line between them, and shifts the hour it falls in', () => {
    const rising = fairWeather(4, { airC: [10, 20, 20, 20] })
    const atMs = rising.startMs + 0.75 * hourMs
    const { shifts } = readingShifts({
      series: rising,
      surfaceC: rising.airC,
      readings: [{ atMs, airC: 19, here: true }],
    })
    expect(shifts[0]?.airK).toBeCloseTo(1.5, 9)
    const shiftK = columnOf(shifts, rising)
    expect(shiftK[0]).toBeCloseTo(1.5, 9)
    expect(shiftK[1]).toBeCloseTo(1.5 * (1 - 0.25 / 12), 9)
  })

  it('of humidity shifts the dew point, and the humidity follows the air', () => {
    const { shifts } = read({ airC: 23, humidityShare: 0.7 })
    const moved = withAirShifts(series, shifts)
    expect(moved.airC[8]).toBe(23)
    expect(moved.humidityShare[8]).toBeCloseTo(0.7, 9)
    expect(dewPoints(moved)[8]).toBeCloseTo(dewPoint({ airC: 23, humidityShare: 0.7 }), 9)
    // Air alone holds the water it held: warmer, it is drier.
    const warm = withAirShifts(series, read({ airC: 23 }).shifts)
    expect(dewPoints(warm)[8]).toBeCloseTo(dewPoints(series)[8]!, 9)
    expect(warm.humidityShare[8]).toBeLessThan(0.5)
  })

  it('that is later takes the place of the one before, also where it has faded', () => {
    const shifts: readonly ReadShift[] = [
      { atMs: at(8), airK: 4, here: true },
      { atMs: at(12), airK: -1, here: true },
    ]
    const column = columnOf(shifts)
    expect([column[11], column[12]]).toEqual([3, -1])
    expect(Math.max(...column.slice(12))).toBe(0)
  })

  it('before the weather, after it, or in a hole says nothing', () => {
    expect(read({ atMs: at(-1), airC: 23 }).shifts).toEqual([])
    expect(read({ atMs: at(48), airC: 23 }).shifts).toEqual([])
    const hole = fairWeather(4, { airC: [20, Number.NaN, 20, 20] })
    const asked = {
      series: hole,
      surfaceC: hole.airC,
      readings: [{ atMs: hole.startMs + hourMs, airC: 22, here: true }],
    }
    expect(readingShifts(asked)).toEqual({ shifts: [], faults: [] })
  })
})

describe('a reading that cannot be', () => {
  it('is told: Fahrenheit called Celsius, humidity as a share of per cent, a skin far off', () => {
    expect(read({ airC: 70, humidityShare: 0.5 })).toEqual({
      shifts: [],
      faults: [{ atMs: at(8), what: 'air', read: 70, expected: 20, looks: 'fahrenheit' }],
    })
    expect(read({ airC: -10 }).faults[0]?.looks).toBe('other')
    const dry = read({ airC: 21, humidityShare: 0.0065 })
    expect(dry.shifts).toEqual([])
    expect(dry.faults.map(({ what, looks }) => [what, looks])).toEqual([['humidity', 'share']])
    const skin = read({ airC: 21, skinC: 68 })
    expect(skin.shifts).toEqual([{ atMs: at(8), here: true, airK: 1 }])
    expect(skin.faults.map(({ what, looks }) => [what, looks])).toEqual([['skin', 'fahrenheit']])
  })
})

describe('the skin', () => {
  const surfaceC = new Float64Array(48).fill(18)
  const shifted = (reading: Partial<YardReading>, here: boolean) =>
    withSkinShifts(surfaceC, { series, shifts: read({ ...reading, here }, surfaceC).shifts })[8]

  it('goes with the air, and by its own reading where it was read', () => {
    expect(shifted({ airC: 22 }, true)).toBe(20)
    expect(shifted({ airC: 22, skinC: 15 }, true)).toBe(15)
    expect(shifted({ skinC: 25 }, true)).toBe(25)
  })

  it('that was read elsewhere counts only as far as it is colder', () => {
    expect(shifted({ airC: 22, skinC: 30 }, false)).toBe(20)
    expect(shifted({ airC: 22, skinC: 15 }, false)).toBe(15)
    expect(shifted({ skinC: 25 }, false)).toBe(18)
  })
})
