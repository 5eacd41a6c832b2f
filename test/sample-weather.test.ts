// The committed weather of the sample jobs is what the generator gives, reads without a problem, and could be true.
// `UPDATE=1` writes the files again.
import { readFileSync, rmSync, writeFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import type { HourlySeries, HourVerdict } from '#core/climate'
import {
  airUnder,
  commonLimits,
  coredSkin,
  dewPoints,
  inventWeather,
  paintableHours,
  skinLimits,
  skinTemperature,
  skyHeats,
  skyLight,
  usualFilm,
} from '#core/climate'
import { readWeatherCsv, seriesHash } from '#intake'
import type { SampleWeather } from './sample-weather.ts'
import { sampleWeather, sampleWeatherFile, sampleWeatherText } from './sample-weather.ts'

const rows = sampleWeather.map((sample) => [sample.name, sample] as const)

if (process.env.UPDATE === '1')
  for (const sample of sampleWeather) writeFileSync(sampleWeatherFile(sample), sampleWeatherText(sample))

function readSample(sample: SampleWeather): HourlySeries {
  const result = readWeatherCsv(readFileSync(sampleWeatherFile(sample)))
  if (!result.ok) throw new Error(JSON.stringify(result.problems))
  return result.series
}

describe.each(rows)('the weather of %s', (_, sample) => {
  const file = sampleWeatherFile(sample)
  const changed = file.replace('.csv', '-changed.csv')

  it('is exactly what the generator gives', () => {
    const made = sampleWeatherText(sample)
    const same = readFileSync(file, 'utf8') === made
    if (same) rmSync(changed, { force: true })
    else writeFileSync(changed, made)
    expect(same, `differs: compare ${changed}, or set UPDATE=1`).toBe(true)
  })

  it('reads without a problem, as the series it was made from', () => {
    expect(readWeatherCsv(readFileSync(file)).problems).toEqual([])
    expect(readSample(sample)).toEqual(inventWeather(sample.of))
    expect(seriesHash(readSample(sample))).toBe(seriesHash(inventWeather(sample.of)))
  })
})

const mean = (figures: readonly number[]) => figures.reduce((sum, figure) => sum + figure, 0) / figures.length
const share = (figures: readonly boolean[]) => figures.filter(Boolean).length / figures.length
const list = (column: ArrayLike<number> | undefined) => Array.from(column ?? [])
const split = <T>(figures: readonly T[], size: number) =>
  Array.from({ length: Math.floor(figures.length / size) }, (_, at) =>
    figures.slice(at * size, (at + 1) * size),
  )

/** Skin of a level deck in the open, a sandwich in a light colour. */
function deckSkin(series: HourlySeries, of: SampleWeather['of']): Float64Array {
  return skinTemperature({
    series,
    lightWm2: skyLight({ series, place: of }).globalWm2,
    skyHeatWm2: skyHeats(series),
    skyShare: 1,
    absorptance: 0.3,
    emittance: 0.9,
    film: usualFilm,
    build: coredSkin({ outerM: 0.004, coreM: 0.012, core: 'balsa', innerM: 0.003, behind: 'bare' }),
    backC: series.airC,
  })
}

/** Verdicts of an open hull for 10 to 32 °C and the common limits, no hours after. */
function openHours(series: HourlySeries, of: SampleWeather['of']): readonly HourVerdict[] {
  const air = { airLeastC: 10, airMostC: 32 }
  const limits = { ...commonLimits, ...air, ...skinLimits(air), hoursAfter: 0, openToSky: true }
  const surfaceC = deckSkin(series, of)
  return paintableHours({ series: airUnder({ series, shelter: 'open' }), surfaceC, limits })
}

/** Paintable hours between 7 and 20 local time, day by day; windy ones between the two limits count. */
function dayHours(series: HourlySeries, of: SampleWeather['of']): readonly number[] {
  const days = split(openHours(series, of), 24)
  return days.map(
    (day) => day.slice(7, 20).filter(({ verdict }) => verdict === 'go' || verdict === 'risky').length,
  )
}

function figuresOf(sample: SampleWeather) {
  const series = readSample(sample)
  const skin = deckSkin(series, sample.of)
  const dew = dewPoints(series)
  const wet = list(skin).map((skinC, hour) => skinC <= dew[hour]!)
  // From 20 in the evening to 6 in the morning.
  const nights = split(wet.slice(20), 24).map((night) => night.slice(0, 10).some(Boolean))
  const ranges = split(list(series.airC), 24).map((day) => Math.max(...day) - Math.min(...day))
  return {
    firstMonthC: mean(list(series.airC).slice(0, 720)),
    lastMonthC: mean(list(series.airC).slice(-720)),
    daySwingK: mean(ranges),
    humidityShare: mean(list(series.humidityShare)),
    rainHours: share(list(series.rainMm).map((mm) => mm > 0)),
    rainMmMonth: mean(list(series.rainMm)) * 720,
    windMps: mean(list(series.windMps)),
    dewNights: share(nights),
    days: dayHours(series, sample.of),
    weeks: split(dayHours(series, sample.of), 7).map((week) => week.reduce((sum, hours) => sum + hours, 0)),
  }
}

/** Least and most that are believed of each kind of place and season; wide, and from memory. */
const believed = {
  'open-powerboat': {
    firstMonthC: [3, 8],
    lastMonthC: [12, 19],
    daySwingK: [6, 11],
    humidityShare: [0.6, 0.8],
    rainHours: [0.04, 0.1],
    rainMmMonth: [25, 80],
    windMps: [2, 4],
    dewNights: [0.5, 0.95],
  },
  'deck-only': {
    firstMonthC: [17, 23],
    lastMonthC: [20, 26],
    daySwingK: [8, 12],
    humidityShare: [0.6, 0.8],
    rainHours: [0.04, 0.1],
    rainMmMonth: [60, 150],
    windMps: [1.5, 3.5],
    dewNights: [0.5, 0.95],
  },
  'cruiser-topsides': {
    firstMonthC: [12, 17],
    lastMonthC: [7, 12],
    daySwingK: [3, 7],
    humidityShare: [0.72, 0.88],
    rainHours: [0.08, 0.16],
    rainMmMonth: [60, 180],
    windMps: [3, 6],
    dewNights: [0.5, 0.95],
  },
} as const

describe.each(rows)('the weather of %s', (name, sample) => {
  const figures = figuresOf(sample)

  it.each(Object.entries(believed[name as keyof typeof believed]))(
    'has a believable %s',
    (key, [least, most]) => {
      const found = figures[key as keyof typeof figures]
      expect(found).toBeGreaterThanOrEqual(least)
      expect(found).toBeLessThanOrEqual(most)
    },
  )

  it('gives each week another number of paintable hours', () => {
    expect(new Set(figures.weeks).size).toBeGreaterThan(figures.weeks.length / 2)
  })
})

describe('April at the lake', () => {
  const april = figuresOf(sampleWeather[0]!).days.slice(0, 30)

  it('has days that are shut and days with some hours', () => {
    expect(april.filter((hours) => hours === 0).length).toBeGreaterThanOrEqual(8)
    expect(april.filter((hours) => hours >= 5).length).toBeGreaterThanOrEqual(5)
    expect(april.filter((hours) => hours >= 1 && hours <= 8).length).toBeGreaterThanOrEqual(3)
  })
})
