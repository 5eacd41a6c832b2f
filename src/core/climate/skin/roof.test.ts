import { describe, expect, it } from 'vitest'
import { dewPoint } from '../dew-point.ts'
import { fairWeather } from '../fair-weather.ts'
import { lagged } from '../lagged.ts'
import type { HourlySeries } from '../series.ts'
import { airUnder, type Shelter, shelters } from '../shelter.ts'
import { usualFilm } from './film.ts'
import { skinSteady } from './heat-balance.ts'
import { heatFromAbove, roofs, roofTemperature } from './roof.ts'
import { solidSkin } from './skin-build.ts'
import { skinTemperature } from './skin-temperature.ts'
import { skyHeats } from './sky-heat.ts'

const hours = 48
const every = (value: number) => new Float64Array(hours).fill(value)
const night = (columns: Partial<HourlySeries> = {}) =>
  fairWeather(hours, { airC: every(12), humidityShare: every(0.8), cloudShare: every(0), ...columns })

function skinUnder(shelter: Exclude<Shelter, 'open'>, series: HourlySeries, lightWm2 = every(0)) {
  const inside = airUnder({ series, shelter })
  const skyHeatWm2 = skyHeats(series)
  const roofC = roofTemperature(roofs[shelter], { series, lightWm2, skyHeatWm2, airUnderC: inside.airC })
  const skinC = skinTemperature({
    series: inside,
    lightWm2: every(0),
    skyHeatWm2: heatFromAbove(roofs[shelter], { roofC, skyHeatWm2, airC: inside.airC }),
    skyShare: 1,
    absorptance: 0.3,
    emittance: 0.9,
    film: usualFilm,
    build: solidSkin({ thicknessM: 0.007, behind: 'bare' }),
    backC: lagged({ column: inside.airC, lagHours: shelters[shelter].boatLagHours }),
  })
  return { roofC, skinC }
}

describe('a roof under a clear night', () => {
  it('has the temperature at which it takes in as much as it gives off', () => {
    const series = night()
    const { roofC } = skinUnder('cover', series)
    const steady = skinSteady({
      lightWm2: 0,
      heatWm2: skyHeats(series)[0]!,
      airC: 12,
      filmWm2K: 5.8,
      backWm2K: roofs.cover.belowWm2K,
      backC: 12,
      absorptance: roofs.cover.absorptance,
      emittance: 0.9,
    })
    expect(roofC.at(-1)).toBeCloseTo(steady, 6)
    expect(12 - steady).toBeGreaterThan(2)
  })

  it('takes the skin 0 to 2 K under the air, whatever shelter it is, calm or windy', () => {
    for (const shelter of ['cover', 'open-sided shed', 'shed', 'heated shed'] as const)
      for (const windMps of [0, 1, 4]) {
        const { skinC } = skinUnder(shelter, night({ windMps: every(windMps) }))
        expect(12 - skinC.at(-1)!).toBeGreaterThan(0)
        expect(12 - skinC.at(-1)!).toBeLessThan(2)
      }
  })

  it('cools the skin less under cloud, and not at all where the sky is as warm as the air', () => {
    const drop = (cloudShare: number) =>
      12 - skinUnder('cover', night({ cloudShare: every(cloudShare) })).skinC.at(-1)!
    expect(drop(1)).toBeLessThan(drop(0.5))
    expect(drop(0.5)).toBeLessThan(drop(0))
    const same = night({ skyHeatWm2: every(5.670374419e-8 * 285.15 ** 4) })
    expect(skinUnder('cover', same).skinC.at(-1)).toBeCloseTo(12, 6)
  })
})

describe('a roof by day', () => {
  it('is warmer than the air in the sun, and warms the skin under it', () => {
    const { roofC, skinC } = skinUnder('cover', night(), every(800))
    expect(roofC.at(-1)).toBeGreaterThan(17)
    expect(skinC.at(-1)).toBeGreaterThan(12)
    expect(skinC.at(-1)).toBeLessThan(roofC.at(-1)!)
  })

  it('is cooled by the whole wind outside, and warms a level deck by no more than 5 K in full sun', () => {
    const warmer = (windMps: number) =>
      skinUnder('cover', night({ windMps: every(windMps), cloudShare: every(0) }), every(1000)).skinC.at(
        -1,
      )! - 12
    expect(warmer(0)).toBeLessThan(5)
    expect(warmer(4)).toBeLessThan(warmer(1))
    expect(warmer(1)).toBeLessThan(warmer(0))
  })

  it('lets a boat in a shed sweat when warm moist air comes', () => {
    const airC = Float64Array.from({ length: hours }, (_, hour) => (hour < 24 ? 4 : 14))
    const front = night({ airC, humidityShare: every(0.9), cloudShare: every(1) })
    expect(skinUnder('shed', front).skinC[25]).toBeLessThan(dewPoint({ airC: 14, humidityShare: 0.9 }))
  })
})

it('a steel roof and a cloth store what their mass does', () => {
  // 0.6 mm at 7850 kg/m³ and 460 J/(kg K); 0.5 kg/m² at 1500 J/(kg K).
  expect(roofs.shed.storesJm2K / (0.6e-3 * 7850 * 460)).toBeCloseTo(1, 1)
  expect(roofs.cover.storesJm2K).toBe(0.5 * 1500)
})
