import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { fairWeather } from '../fair-weather.ts'
import { filmAt, usualFilm } from './film.ts'
import { skinSteady } from './heat-balance.ts'
import { kelvin, stefanBoltzmann } from './radiation.ts'
import { coredSkin, solidSkin } from './skin-build.ts'
import { type SkinQuestion, skinTemperature } from './skin-temperature.ts'
import { skyHeats } from './sky-heat.ts'

const weightless = { storesJm2K: 0, backWm2K: 0 }
const hours = 48
/** Two days of June: air 12 to 22 °C, sun to 700 W/m², a clear sky, light wind. */
const airC = Float64Array.from(
  { length: hours },
  (_, hour) => 17 - 5 * Math.cos((2 * Math.PI * (hour - 3)) / 24),
)
const lightWm2 = Float64Array.from({ length: hours }, (_, hour) =>
  Math.max(0, 700 * -Math.cos((2 * Math.PI * (hour + 0.5)) / 24)),
)
const series = fairWeather(hours, { airC, humidityShare: new Float64Array(hours).fill(0.7) })
const ask = (more: Partial<SkinQuestion> = {}): SkinQuestion => ({
  series,
  lightWm2,
  skyHeatWm2: skyHeats(series),
  skyShare: 1,
  absorptance: 0.6,
  emittance: 0.9,
  film: usualFilm,
  build: weightless,
  backC: airC,
  ...more,
})
const lightAtStart = (hour: number) =>
  hour === 0 ? lightWm2[0]! : (lightWm2[hour - 1]! + lightWm2[hour]!) / 2

/** The same skin in steps of a second, its weather running straight from hour to hour. */
function slowly(question: SkinQuestion): number[] {
  const { build, absorptance, emittance, film, skyShare } = question
  const at = (column: (hour: number) => number, time: number) => {
    const hour = Math.min(Math.floor(time), hours - 2)
    return column(hour) + (column(hour + 1) - column(hour)) * (time - hour)
  }
  const air = (time: number) => at((hour) => airC[hour]!, time)
  const flow = (skinC: number, time: number) => {
    const around = stefanBoltzmann * (air(time) + kelvin) ** 4
    const sky = skyShare * at((hour) => question.skyHeatWm2[hour]!, time) + (1 - skyShare) * around
    return (
      absorptance * at(lightAtStart, time) +
      emittance * (sky - stefanBoltzmann * (skinC + kelvin) ** 4) +
      filmAt(film, 1) * (air(time) - skinC) +
      build.backWm2K * (air(time) - skinC)
    )
  }
  let skinC = skinTemperature(question)[0]!
  const found = [skinC]
  for (let second = 1; second <= 3600 * (hours - 1); second++) {
    skinC += flow(skinC, (second - 0.5) / 3600) / build.storesJm2K
    if (second % 3600 === 0) found.push(skinC)
  }
  return found
}

describe('a skin through the hours', () => {
  it('has its steady temperature at every hour when it stores nothing', () => {
    const question = ask()
    skinTemperature(question).forEach((skinC, hour) => {
      const steady = skinSteady({
        lightWm2: lightAtStart(hour),
        heatWm2: question.skyHeatWm2[hour]!,
        airC: airC[hour]!,
        filmWm2K: filmAt(usualFilm, 1),
        backWm2K: 0,
        backC: 0,
        absorptance: 0.6,
        emittance: 0.9,
      })
      expect(skinC).toBeCloseTo(steady, 9)
    })
  })

  it('is the same worked by the second, for a thin side, a thick bottom and a cored deck', () => {
    const builds = [
      solidSkin({ thicknessM: 0.006, behind: 'bare' }),
      solidSkin({ thicknessM: 0.02, behind: 'closed' }),
      coredSkin({ outerM: 0.004, coreM: 0.012, core: 'balsa', innerM: 0.003, behind: 'bare' }),
    ]
    for (const build of builds) {
      const question = ask({ build })
      const slow = slowly(question)
      // A tenth of a degree: what the conductance taken once an hour costs on the steepest morning.
      skinTemperature(question).forEach((skinC, hour) => {
        expect(Math.abs(skinC - slow[hour]!)).toBeLessThan(0.15)
      })
    }
  })

  it('swings less and later the more it stores', () => {
    const swing = (thicknessM: number) => {
      const skinC = skinTemperature(ask({ build: { ...solidSkin({ thicknessM, behind: 'closed' }) } })).slice(
        24,
      )
      return Math.max(...skinC) - Math.min(...skinC)
    }
    expect(swing(0.005)).toBeGreaterThan(swing(0.02))
    expect(swing(0.02)).toBeGreaterThan(swing(0.06))
  })

  it('of a cored deck is warmer at noon and colder at night than a solid one of the same weight in the same light', () => {
    const solid = skinTemperature(ask({ build: solidSkin({ thicknessM: 0.007, behind: 'bare' }) })).slice(24)
    const cored = skinTemperature(
      ask({ build: coredSkin({ outerM: 0.004, coreM: 0.012, core: 'foam', innerM: 0.003, behind: 'bare' }) }),
    ).slice(24)
    expect(Math.max(...cored)).toBeGreaterThan(Math.max(...solid) + 3)
    expect(Math.min(...cored)).toBeLessThan(Math.min(...solid) - 0.5)
  })

  it('falls under the air in a clear night, less the less sky it sees, and not at all under a roof', () => {
    const drop = (skyShare: number) => {
      const night = skinTemperature(
        ask({ skyShare, build: solidSkin({ thicknessM: 0.006, behind: 'closed' }) }),
      )
      return airC[27]! - night[27]!
    }
    expect(drop(1)).toBeGreaterThan(4)
    expect(drop(1)).toBeLessThan(8)
    expect(drop(0.5)).toBeGreaterThan(2)
    expect(drop(0.5)).toBeLessThan(drop(1))
    // Only the lag is left, behind air that is at its coldest.
    expect(Math.abs(drop(0))).toBeLessThan(0.4)
  })

  it('does not know what it is where the weather is not known, and begins anew after', () => {
    const gap = Float64Array.from(airC, (value, hour) => (hour === 10 ? Number.NaN : value))
    const skinC = skinTemperature(ask({ series: { ...series, airC: gap }, backC: gap }))
    expect(Array.from(skinC).flatMap((value, hour) => (Number.isNaN(value) ? [hour] : []))).toEqual([10])
  })

  it('without wind known is as in a calm', () => {
    const { windMps: _none, ...still } = series
    const unknown = skinTemperature(ask({ series: still }))
    const calm = skinTemperature(ask({ series: { ...series, windMps: new Float64Array(hours) } }))
    expect(unknown).toEqual(calm)
  })

  it('stays between the coldest and the warmest it would be in any steady hour', () => {
    const steady = skinTemperature(ask())
    const [least, most] = [Math.min(...steady), Math.max(...steady)]
    fc.assert(
      fc.property(fc.double({ min: 1, max: 1e6, noNaN: true }), (storesJm2K) => {
        for (const skinC of skinTemperature(ask({ build: { storesJm2K, backWm2K: 0 } }))) {
          expect(skinC).toBeGreaterThanOrEqual(least - 1e-9)
          expect(skinC).toBeLessThanOrEqual(most + 1e-9)
        }
      }),
    )
  })
})

describe('what a skin is made of', () => {
  it('stores by its mass and lets less heat through the thicker it is', () => {
    const thin = solidSkin({ thicknessM: 0.005, behind: 'bare' })
    const thick = solidSkin({ thicknessM: 0.01, behind: 'bare' })
    expect(thick.storesJm2K).toBeCloseTo(2 * thin.storesJm2K, 9)
    // 1427 kg/m³ and 1100 J/(kg K) over 5 mm.
    expect(thin.storesJm2K).toBeCloseTo(7848.5, 6)
    expect(thin.backWm2K).toBeCloseTo(1 / (0.02 + 0.13), 12)
    expect(thick.backWm2K).toBeLessThan(thin.backWm2K)
    expect(solidSkin({ thicknessM: 0.005, behind: 'closed' }).backWm2K).toBe(0)
  })

  it('of a sandwich stores the outer face alone, and the core keeps heat from the inner', () => {
    const cored = coredSkin({ outerM: 0.003, coreM: 0.012, core: 'balsa', innerM: 0.003, behind: 'bare' })
    const outer = solidSkin({ thicknessM: 0.003, behind: 'bare' })
    expect(cored.storesJm2K).toBeGreaterThan(outer.storesJm2K)
    expect(cored.storesJm2K).toBeLessThan(1.25 * outer.storesJm2K)
    expect(cored.backWm2K).toBeLessThan(0.45 * outer.backWm2K)
  })
})
