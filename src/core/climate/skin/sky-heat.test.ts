import { existsSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { fairWeather } from '../fair-weather.ts'
import { clarkAllenEmittance, skyHeat, skyHeats } from './sky-heat.ts'

describe('heat from the sky', () => {
  it('grows with the dew point and with cloud, and is never more than a roof at the air would send', () => {
    const at = (dewC: number, cloudShare: number) => clarkAllenEmittance({ dewC, cloudShare })
    expect(at(15, 0)).toBeGreaterThan(at(5, 0))
    for (let tenths = 1; tenths <= 10; tenths++)
      expect(at(10, tenths / 10)).toBeGreaterThan(at(10, (tenths - 1) / 10))
    expect(at(30, 1)).toBe(1)
  })

  it('is what the weather tells, between the hours before and after, where it tells it', () => {
    const told = skyHeats(fairWeather(3, { skyHeatWm2: [300, 340, Number.NaN] }))
    expect(Array.from(told)).toEqual([300, 320, 340])
  })

  it('is of a clear sky where cloud is not known, and unknown where the air is not', () => {
    const [first, second] = skyHeats(fairWeather(2, { airC: [20, Number.NaN] }))
    expect(first).toBeCloseTo(skyHeat({ airC: 20, dewC: 9.3, cloudShare: 0 }), 0)
    expect(second).toBeNaN()
  })
})

describe('the sky of a year at a weather station', () => {
  const file = new URL('../../../../../shared/references/data/weather/tampa-tmy3.epw', import.meta.url)
  const why = 'skipped where the weather file is not beside the checkout'

  it.skipIf(!existsSync(file))(`sends what the file has, within 0.75 W/m² in every hour (${why})`, () => {
    const rows = readFileSync(file, 'latin1')
      .split('\r\n')
      .slice(8, 8768)
      .map((row) => row.split(',').map(Number))
    expect(rows).toHaveLength(8760)
    // Column 23 is the cloud that hides the sky; the file rounds to 1 W/m².
    const gaps = rows.map((row) =>
      Math.abs(row[12]! - skyHeat({ airC: row[6]!, dewC: row[7]!, cloudShare: row[23]! / 10 })),
    )
    expect(Math.max(...gaps)).toBeLessThan(0.75)
  })
})
