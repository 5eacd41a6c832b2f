/** Verdicts where the sun goes other ways: past the circles, and south of the line. */
import { describe, expect, it } from 'vitest'
import { fairWeather } from './fair-weather.ts'
import { commonLimits, skinLimits } from './paint-limits.ts'
import { paintableHours } from './paintable.ts'
import { usualFilm } from './skin/film.ts'
import { solidSkin } from './skin/skin-build.ts'
import { skinTemperature } from './skin/skin-temperature.ts'
import { skyHeats } from './skin/sky-heat.ts'
import { lightOn, usualAlbedo } from './sun/light-on.ts'
import { shelterLight } from './sun/shelter-light.ts'
import { skyLight } from './sun/sky-light.ts'

const degree = Math.PI / 180
const days = 6
const hours = 24 * days
const side = { tilt: 90, share: 1 }
const deck = { bearing: 0, tilt: 0, share: 1 }

type Yard = { readonly latitude: number; readonly startMs: number; readonly humidity?: number }

function yard({ latitude, startMs, humidity = 0.55 }: Yard) {
  const series = fairWeather(hours, {
    startMs,
    airC: new Float64Array(hours).fill(14),
    humidityShare: new Float64Array(hours).fill(humidity),
    cloudShare: new Float64Array(hours),
  })
  const light = skyLight({ series, place: { latitude: latitude * degree, longitude: 0 } })
  const skinOf = (face: { readonly bearing: number; readonly tilt: number; readonly share: number }) =>
    skinTemperature({
      series,
      lightWm2: lightOn(light, {
        faces: [{ bearing: face.bearing * degree, tilt: face.tilt * degree, share: 1 }],
        albedo: usualAlbedo,
        under: shelterLight.open,
      }),
      skyHeatWm2: skyHeats(series),
      skyShare: face.tilt === 0 ? 1 : 0.5,
      absorptance: 0.3,
      emittance: 0.9,
      film: usualFilm,
      build: solidSkin({ thicknessM: 0.007, behind: 'bare' }),
      backC: series.airC,
    })
  const air = { airLeastC: 10, airMostC: 30 }
  const verdicts = (surfaceC: Float64Array) =>
    paintableHours({
      series,
      surfaceC,
      limits: { ...commonLimits, ...air, ...skinLimits(air), hoursAfter: 0, openToSky: true },
    }).map(({ verdict }) => verdict)
  return { light, skinOf, verdicts }
}

const mean = (column: ArrayLike<number>) =>
  Array.from(column).reduce((sum, value) => sum + value, 0) / column.length
/** Of the last day, when the start of the series is forgotten. */
const goes = (verdicts: readonly string[]) => verdicts.slice(-24).filter((one) => one === 'go').length

describe('hours past the polar circle', () => {
  it('have no sun in the polar night, and a deck under the air in every one of them', () => {
    const night = yard({ latitude: 78, startMs: Date.UTC(2027, 11, 18), humidity: 0.75 })
    expect(Math.max(...night.light.globalWm2)).toBe(0)
    const skinC = night.skinOf(deck)
    for (const value of skinC) expect(value).toBeLessThan(14)
    // Every hour is as the one before: what holds in one holds in all.
    expect(Math.max(...skinC.slice(-24)) - Math.min(...skinC.slice(-24))).toBeLessThan(0.1)
    expect(goes(night.verdicts(skinC))).toBe(0)
  })

  it('have sun at midnight in the polar day, and may all be paintable', () => {
    const day = yard({ latitude: 78, startMs: Date.UTC(2027, 5, 18) })
    expect(Math.min(...day.light.beamWm2)).toBeGreaterThan(0)
    expect(goes(day.verdicts(day.skinOf(deck)))).toBe(24)
    // At midnight the sun stands in the north.
    const [north, south] = [0, 180].map((bearing) => day.skinOf({ ...side, bearing }))
    expect(north![120]).toBeGreaterThan(south![120]!)
    expect(north![132]).toBeLessThan(south![132]!)
  })
})

describe('hours of the southern half of the world', () => {
  const north = yard({ latitude: 35, startMs: Date.UTC(2027, 5, 19), humidity: 0.8 })
  const south = yard({ latitude: -35, startMs: Date.UTC(2027, 11, 19), humidity: 0.8 })

  it('have the noon sun on the side that looks north', () => {
    const noon = (of: typeof north, bearing: number) => of.skinOf({ ...side, bearing })[132]!
    expect(noon(south, 0)).toBeGreaterThan(noon(south, 180))
    expect(noon(north, 0)).toBeLessThan(noon(north, 180))
  })

  it('are those of the northern half at midsummer, seen in a mirror', () => {
    for (const [here, there] of [
      [0, 180],
      [90, 90],
      [270, 270],
    ] as const) {
      const [a, b] = [north.skinOf({ ...side, bearing: here }), south.skinOf({ ...side, bearing: there })]
      // The earth is 3 % nearer to the sun in January, and noon is a few minutes off: under a degree of skin.
      expect(Math.abs(mean(a) - mean(b))).toBeLessThan(0.5)
      expect(Math.abs(goes(north.verdicts(a)) - goes(south.verdicts(b)))).toBeLessThanOrEqual(1)
      expect(goes(north.verdicts(a))).toBeGreaterThan(0)
      expect(goes(north.verdicts(a))).toBeLessThan(24)
    }
  })
})
