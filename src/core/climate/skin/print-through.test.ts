import { describe, expect, it } from 'vitest'
import { fairWeather } from '../fair-weather.ts'
import { usualFilm } from './film.ts'
import { absorptanceOf, paintEmittance } from './paint-colours.ts'
import { darkestUnder, printThrough, softening } from './print-through.ts'
import { solidSkin } from './skin-build.ts'
import { type SkinQuestion, skinTemperature } from './skin-temperature.ts'

const ortho = softening['orthophthalic polyester']
const judge = (...skinC: number[]) => printThrough({ skinC: Float64Array.from(skinC), softens: ortho })

/** A still noon of 32 °C in full sun on a deck, for two hours. */
const noon = fairWeather(2, { airC: [32, 32], windMps: [1, 1] })
const deck: Omit<SkinQuestion, 'absorptance'> = {
  series: noon,
  lightWm2: [950, 950],
  skyHeatWm2: [410, 410],
  skyShare: 1,
  emittance: paintEmittance,
  film: usualFilm,
  build: solidSkin({ thicknessM: 0.008, behind: 'closed' }),
  backC: noon.airC,
}
const hottest = (absorptance: number) => Math.max(...skinTemperature({ ...deck, absorptance }))

describe('print-through', () => {
  it('is judged by the hottest hour against the range in which the resin softens', () => {
    expect(judge(20, 44.9, 30)).toEqual({
      verdict: 'cool',
      hottestC: 44.9,
      hottestHour: 1,
      softHours: 0,
      leftK: expect.closeTo(5.1, 9),
    })
    expect(judge(45)?.verdict).toBe('near')
    expect(judge(49.9)?.verdict).toBe('near')
    expect(judge(50, 51)).toMatchObject({ verdict: 'soft', softHours: 2, leftK: -1 })
    expect(judge(70)?.verdict).toBe('over')
  })

  it('passes unknown hours over, and says nothing when none is known', () => {
    expect(judge(Number.NaN, 30, Number.NaN)).toMatchObject({ hottestHour: 1 })
    expect(judge(Number.NaN)).toBeUndefined()
  })

  // An infrared gun read 43 °C on a white deck in air of 31 °C (one owner, weak evidence).
  it('comes to a dark deck in a still noon and not to a white one', () => {
    const [white, black] = ['white', 'black'].map((colour) => absorptanceOf({ colour, shade: undefined })!)
    expect(judge(hottest(white!))?.verdict).toBe('near')
    expect(Math.abs(hottest(white!) - 44)).toBeLessThan(4)
    expect(judge(hottest(black!))?.verdict).toBe('over')
  })
})

describe('the darkest colour that stays under a temperature', () => {
  it('does, and the next darker does not', () => {
    const darkest = darkestUnder(deck, ortho.fromC)!
    expect(darkest).toBeGreaterThan(0.26)
    expect(darkest).toBeLessThan(0.75)
    expect(hottest(darkest)).toBeLessThan(ortho.fromC)
    expect(hottest(darkest + 0.01)).toBeGreaterThanOrEqual(ortho.fromC)
  })

  it('is black where nothing gets hot, and none where the air alone is too warm', () => {
    expect(darkestUnder({ ...deck, lightWm2: [0, 0] }, ortho.fromC)).toBe(1)
    expect(darkestUnder(deck, 20)).toBeUndefined()
  })
})
