import { existsSync, readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { dewPoint } from './dew-point.ts'
import { fairWeather, without } from './fair-weather.ts'
import type { FailingLimit, PaintLimits } from './paint-limits.ts'
import { commonLimits, skinLimits } from './paint-limits.ts'
import { paintableHours } from './paintable.ts'
import { runsOf } from './runs-of.ts'
import type { HourlySeries } from './series.ts'

const limits: PaintLimits = {
  ...commonLimits,
  airLeastC: 10,
  airMostC: 32,
  skinLeastC: -10,
  skinCoolC: -10,
  skinWarmC: 60,
  skinMostC: 60,
  hoursAfter: 0,
  openToSky: true,
  dryHours: 0,
}
const fairDewC = dewPoint({ airC: 20, humidityShare: 0.5 })

function judge(series: HourlySeries, change: Partial<PaintLimits> = {}, surfaceC = series.airC) {
  return paintableHours({ series, surfaceC, limits: { ...limits, ...change } })
}

function only(series: HourlySeries, change: Partial<PaintLimits> = {}, surfaceC = series.airC) {
  return judge(series, change, surfaceC)[0]
}

/** One verdict with one failing limit. */
function fails(failing: Partial<FailingLimit>) {
  return { verdict: failing.effect, failing: [{ inHours: 0, ...failing }] }
}

describe('the limits of one hour', () => {
  it('lets a coat go on in fair weather', () => {
    expect(only(fairWeather(1))).toEqual({ verdict: 'go', failing: [] })
  })

  it('says which limit fails and by how much', () => {
    expect(only(fairWeather(1, { airC: [9.9] }))).toEqual(
      fails({ limit: 'airLeast', effect: 'no', needed: 10, had: 9.9 }),
    )
    expect(only(fairWeather(1, { airC: [32.1], humidityShare: [0.4] }))).toEqual(
      fails({ limit: 'airMost', effect: 'no', needed: 32, had: 32.1 }),
    )
    expect(only(fairWeather(1, { humidityShare: [0.86] }), { dewMarginK: 0 })).toEqual(
      fails({ limit: 'humidity', effect: 'no', needed: 0.85, had: 0.86 }),
    )
    const close = fairDewC + 2.1
    expect(only(fairWeather(1), {}, [close])).toEqual(
      fails({ limit: 'dewMargin', effect: 'no', needed: 3, had: close - fairDewC }),
    )
  })

  it('lists every limit that fails', () => {
    const bad = only(fairWeather(1, { airC: [5], humidityShare: [0.95], windMps: [7], rainMm: [0.3] }))
    expect(bad?.failing.map((found) => found.limit)).toEqual([
      'airLeast',
      'humidity',
      'dewMargin',
      'wind',
      'rain',
    ])
  })

  it('takes a figure that stands on its limit as a go', () => {
    expect(only(fairWeather(1, { airC: [10], windMps: [4] }))?.verdict).toBe('go')
    expect(only(fairWeather(1, { airC: [32], humidityShare: [0.5] }))?.verdict).toBe('go')
    expect(only(fairWeather(1, { humidityShare: [0.85] }), { dewMarginK: 2 })?.verdict).toBe('go')
    expect(only(fairWeather(1), {}, [fairDewC + 3])?.verdict).toBe('go')
  })

  it('is risky between the two winds and a no over the second', () => {
    const wind = (mps: number) => only(fairWeather(1, { windMps: [mps] }))
    expect(wind(4.1)).toEqual(fails({ limit: 'wind', effect: 'risky', needed: 4, had: 4.1 }))
    expect(wind(6)?.verdict).toBe('risky')
    expect(wind(6.1)).toEqual(fails({ limit: 'wind', effect: 'no', needed: 6, had: 6.1 }))
  })

  it('is risky while the wind is not known', () => {
    const risky = fails({ limit: 'wind', effect: 'risky', needed: 4, had: null })
    expect(only(without(fairWeather(1), 'windMps'))).toEqual(risky)
    expect(only(fairWeather(1, { windMps: [Number.NaN] }))).toEqual(risky)
  })

  it('is unknown without air, humidity or surface, whatever else fails', () => {
    const storm = { windMps: [20], rainMm: [9] }
    expect(only(fairWeather(1, { ...storm, airC: [Number.NaN] }))?.verdict).toBe('unknown')
    expect(only(fairWeather(1, { ...storm, humidityShare: [Number.NaN] }), {}, [20])).toEqual(
      fails({ limit: 'humidity', effect: 'unknown', needed: 0.85, had: null }),
    )
    expect(only(fairWeather(1), {}, [])?.failing).toEqual([
      { limit: 'dewMargin', effect: 'unknown', needed: 3, had: null, inHours: 0 },
    ])
  })
})

describe('the skin itself', () => {
  const skins = { skinLeastC: 5, skinCoolC: 10, skinWarmC: 30, skinMostC: 35 }

  it('is a risk past the first limit to the cold or the heat, and lost past the second', () => {
    const at = (surfaceC: number) => only(fairWeather(1, { humidityShare: [0.2] }), skins, [surfaceC])
    expect(at(9.5)).toEqual(fails({ limit: 'skinLeast', effect: 'risky', needed: 10, had: 9.5 }))
    expect(at(4)).toEqual(fails({ limit: 'skinLeast', effect: 'no', needed: 5, had: 4 }))
    expect(at(5)?.verdict).toBe('risky')
    expect([10, 30].map((surfaceC) => at(surfaceC)?.verdict)).toEqual(['go', 'go'])
    expect(at(32)).toEqual(fails({ limit: 'skinMost', effect: 'risky', needed: 30, had: 32 }))
    expect(at(35)?.verdict).toBe('risky')
    expect(at(45)).toEqual(fails({ limit: 'skinMost', effect: 'no', needed: 35, had: 45 }))
  })

  it('of two sides is judged cold by the colder and hot by the warmer', () => {
    const both = paintableHours({
      series: fairWeather(1, { humidityShare: [0.2] }),
      surfaceC: [9],
      warmestC: [36],
      limits: { ...limits, ...skins },
    })
    expect(both[0]?.failing.map(({ limit, had }) => [limit, had])).toEqual([['skinLeast', 9]])
    const warm = paintableHours({
      series: fairWeather(1, { humidityShare: [0.2] }),
      surfaceC: [20],
      warmestC: [36],
      limits: { ...limits, ...skins },
    })
    expect(warm[0]?.failing).toEqual([{ limit: 'skinMost', effect: 'no', needed: 35, had: 36, inHours: 0 }])
  })

  it('follows the air where the sheet does not tell it', () => {
    const air = { airLeastC: 8, airMostC: 30 }
    expect(skinLimits(air)).toEqual({ skinLeastC: 3, skinCoolC: 8, skinWarmC: 30, skinMostC: 35 })
    expect(skinLimits({ ...air, skinLeastC: 10, skinMostC: 28 })).toEqual({
      skinLeastC: 10,
      skinCoolC: 10,
      skinWarmC: 28,
      skinMostC: 28,
    })
  })
})

describe('the sun on a side', () => {
  const sunny = (beamWm2: number, surfaceC: number) =>
    paintableHours({ series: fairWeather(1), surfaceC: [surfaceC], beamWm2: [beamWm2], limits })[0]

  it('is a risk when it has warmed the skin over the air, and none while the skin is cool or the sun away', () => {
    expect(sunny(500, 26)).toEqual(fails({ limit: 'hotSun', effect: 'risky', needed: 5, had: 6 }))
    expect(sunny(500, 25)?.verdict).toBe('go')
    expect(sunny(120, 30)?.verdict).toBe('go')
    expect(sunny(0, 40)?.verdict).toBe('go')
  })
})

describe('dark and evening', () => {
  const unlit = [
    undefined,
    { verdict: 'risky', failing: [{ limit: 'evening', effect: 'risky', needed: 0, had: 1, inHours: 0 }] },
  ] as const

  it('stand behind what else fails, and alone where nothing does', () => {
    const fair = paintableHours({
      series: fairWeather(2),
      surfaceC: [20, 20],
      light: unlit,
      limits,
    })
    expect(fair.map(({ verdict }) => verdict)).toEqual(['go', 'risky'])
    const cold = paintableHours({
      series: fairWeather(2, { airC: [20, 5] }),
      surfaceC: [20, 20],
      light: unlit,
      limits,
    })
    expect(cold[1]?.verdict).toBe('no')
    expect(cold[1]?.failing.map(({ limit }) => limit)).toEqual(['airLeast', 'evening'])
  })
})

describe('rain', () => {
  it('makes an hour a no under the sky and nothing under a roof', () => {
    const wet = fairWeather(1, { rainMm: [0.1] })
    expect(only(wet)).toEqual(fails({ limit: 'rain', effect: 'no', needed: 0, had: 0.1 }))
    expect(only(wet, { openToSky: false })?.verdict).toBe('go')
  })

  it('makes every hour risky under the sky when it is not known, never a go, and leaves a roof alone', () => {
    const risky = fails({ limit: 'rain', effect: 'risky', needed: 0, had: null })
    expect(only(without(fairWeather(1), 'rainMm'))).toEqual(risky)
    expect(only(fairWeather(1, { rainMm: [Number.NaN] }))).toEqual(risky)
    expect(only(without(fairWeather(1), 'rainMm'), { openToSky: false })?.verdict).toBe('go')
  })

  it('takes a chance of 20 % as risky and of 50 % as a no', () => {
    const chance = (share: number) => only(without(fairWeather(1, { rainChanceShare: [share] }), 'rainMm'))
    expect(chance(0.19)?.verdict).toBe('go')
    expect(chance(0.2)).toEqual(fails({ limit: 'rainChance', effect: 'risky', needed: 0.2, had: 0.2 }))
    expect(chance(0.49)?.verdict).toBe('risky')
    expect(chance(0.5)).toEqual(fails({ limit: 'rainChance', effect: 'no', needed: 0.5, had: 0.5 }))
  })

  it('is told by the gravest of what comes while the film is fresh, not by the first', () => {
    const after = (rainChanceShare: readonly number[]) => {
      const series = without(fairWeather(rainChanceShare.length, { rainChanceShare }), 'rainMm')
      const failing = judge(series, { hoursAfter: 2 })[0]?.failing ?? []
      return failing.find(({ limit }) => limit.startsWith('rain'))
    }
    const unknown = Number.NaN
    expect(after([0, unknown, 0.6, 0, 0])).toMatchObject({ limit: 'rainChance', effect: 'no', inHours: 2 })
    expect(after([0.3, unknown, 0, 0, 0])).toMatchObject({
      limit: 'rain',
      effect: 'risky',
      had: null,
      inHours: 1,
    })
    expect(after([0, 0.3, 0, 0, 0])).toMatchObject({ limit: 'rainChance', effect: 'risky', inHours: 1 })
  })
})

describe('the hours after', () => {
  it('loses an hour whose film is still fresh when dew or rain comes', () => {
    const rain = fairWeather(6, { rainMm: [0, 0, 0, 0, 0.4, 0] })
    const verdicts = judge(rain, { hoursAfter: 2 }).map((hour) => hour.verdict)
    expect(verdicts).toEqual(['go', 'go', 'no', 'no', 'no', 'unknown'])
    expect(judge(rain, { hoursAfter: 2 })[2]?.failing).toEqual([
      { limit: 'rain', effect: 'no', needed: 0, had: 0.4, inHours: 2 },
    ])
    const skin = [20, 20, 20, 20, fairDewC + 1, 20]
    expect(judge(fairWeather(6), { hoursAfter: 2 }, skin)[2]?.failing[0]).toMatchObject({
      limit: 'dewMargin',
      effect: 'no',
      inHours: 2,
    })
  })

  it('asks nothing of air, humidity and wind after the coat is on', () => {
    const cold = fairWeather(3, { airC: [20, 5, 5], windMps: [1, 9, 9] })
    expect(judge(cold, { hoursAfter: 2 }, [20, 20, 20])[0]?.verdict).toBe('go')
  })

  it('does not promise what lies past the end of the series or in a gap', () => {
    const last = judge(fairWeather(3), { hoursAfter: 2 })
    expect(last.map((hour) => hour.verdict)).toEqual(['go', 'unknown', 'unknown'])
    expect(last[1]?.failing).toEqual([
      { limit: 'dewMargin', effect: 'unknown', needed: 3, had: null, inHours: 2 },
    ])
    const holed = fairWeather(4, { airC: [20, 20, Number.NaN, 20] })
    expect(judge(holed, { hoursAfter: 1 }).map((hour) => hour.verdict)).toEqual([
      'go',
      'unknown',
      'unknown',
      'unknown',
    ])
  })
})

describe('a surface that was wet', () => {
  const wetNight = [fairDewC + 5, fairDewC, fairDewC + 1, fairDewC + 3, fairDewC + 4, fairDewC + 5]

  it('takes no coat until it has stood an hour at dew point + 3 K', () => {
    const verdicts = judge(fairWeather(6), { dryHours: 1 }, wetNight)
    expect(verdicts.map((hour) => hour.verdict)).toEqual(['risky', 'no', 'no', 'no', 'go', 'go'])
    expect(verdicts[3]?.failing).toEqual([{ limit: 'wetSince', effect: 'no', needed: 1, had: 0, inHours: 0 }])
  })

  it('counts from the start again when it falls back under the margin', () => {
    const skin = [fairDewC - 1, ...[3, 2, 3, 3, 3].map((margin) => fairDewC + margin)]
    const verdicts = judge(fairWeather(6), { dryHours: 2 }, skin).map((hour) => hour.verdict)
    expect(verdicts).toEqual(['no', 'no', 'no', 'no', 'no', 'go'])
  })

  it('dries after rain too, where the sky is', () => {
    const shower = fairWeather(4, { rainMm: [0, 1, 0, 0] })
    const open = judge(shower, { dryHours: 1 }).map((hour) => hour.verdict)
    expect(open).toEqual(['risky', 'no', 'no', 'go'])
    const roof = judge(shower, { dryHours: 1, openToSky: false }).map((hour) => hour.verdict)
    expect(roof).toEqual(['risky', 'go', 'go', 'go'])
  })

  it('is risky for an hour when nobody knows the hours before', () => {
    const holed = fairWeather(5, { airC: [20, 20, Number.NaN, 20, 20] })
    const verdicts = judge(holed, { dryHours: 1 })
    expect(verdicts.map((hour) => hour.verdict)).toEqual(['risky', 'go', 'unknown', 'risky', 'go'])
    expect(verdicts[3]?.failing[0]).toMatchObject({ limit: 'wetSince', effect: 'risky' })
  })
})

describe('every series', () => {
  const figure = (from: number, to: number) =>
    fc.oneof(
      { weight: 5, arbitrary: fc.double({ min: from, max: to, noNaN: true }) },
      fc.constant(Number.NaN),
    )
  const hours = fc.array(
    fc.record({
      airC: figure(-5, 40),
      humidityShare: figure(0.05, 1),
      windMps: figure(0, 9),
      rainMm: figure(0, 1),
      surfaceC: figure(-5, 40),
    }),
    { maxLength: 30 },
  )
  const asked = fc.record({
    hoursAfter: fc.integer({ min: 0, max: 5 }),
    openToSky: fc.boolean(),
    dryHours: fc.integer({ min: 0, max: 2 }),
  })

  const judged = (rows: readonly Record<string, number>[], change: Partial<PaintLimits>) => {
    const column = (key: string) => rows.map((row) => row[key]!)
    const series = fairWeather(rows.length, {
      airC: column('airC'),
      humidityShare: column('humidityShare'),
      windMps: column('windMps'),
      rainMm: column('rainMm'),
    })
    return judge(series, change, column('surfaceC'))
  }

  it('meets a slow, obvious judge on seeded weather', () => {
    fc.assert(
      fc.property(hours, asked, (rows, change) => {
        const slow = rows.map((_, hour) => slowVerdict(rows, hour, { ...limits, ...change }))
        expect(judged(rows, change).map((hour) => hour.verdict)).toEqual(slow)
      }),
      { seed: 11, numRuns: 500 },
    )
  })

  it('never gets better when a limit gets tighter', () => {
    const rank = { go: 3, risky: 2, unknown: 1, no: 0 }
    fc.assert(
      fc.property(hours, asked, (rows, change) => {
        const wide = judged(rows, change)
        const tight = judged(rows, {
          ...change,
          dewMarginK: 5,
          humidityMost: 0.7,
          hoursAfter: 6,
          windNoMps: 5,
        })
        tight.forEach((hour, at) => {
          expect(rank[hour.verdict]).toBeLessThanOrEqual(rank[wide[at]!.verdict])
        })
      }),
      { seed: 12, numRuns: 300 },
    )
  })
})

/** The rule as one would read it out, hour by hour, with no look-ahead tables. */
function slowVerdict(rows: readonly Record<string, number>[], hour: number, asked: PaintLimits): string {
  const margin = (at: number) => {
    const { airC = Number.NaN, humidityShare = Number.NaN, surfaceC = Number.NaN } = rows[at] ?? {}
    return Number.isNaN(humidityShare) ? Number.NaN : surfaceC - dewPoint({ airC, humidityShare })
  }
  const now = rows[hour]!
  if (Number.isNaN(now.airC! + now.humidityShare! + now.surfaceC!)) return 'unknown'
  const after = Array.from({ length: Number(asked.hoursAfter) + 1 }, (_, step) => hour + step)
  const rain = (at: number) => (asked.openToSky ? (rows[at]?.rainMm ?? 0) : 0)
  const wet = slowWet(rows, hour, { asked, margin, rain })
  if (now.airC! < asked.airLeastC || now.airC! > asked.airMostC) return 'no'
  if (now.humidityShare! > asked.humidityMost || now.windMps! > asked.windNoMps) return 'no'
  if (after.some((at) => margin(at) < asked.dewMarginK || rain(at) > 0) || wet === 'yes') return 'no'
  if (after.some((at) => Number.isNaN(margin(at)))) return 'unknown'
  const riskyWind = !(now.windMps! <= asked.windGoMps)
  return riskyWind || wet === 'perhaps' || after.some((at) => Number.isNaN(rain(at))) ? 'risky' : 'go'
}

function slowWet(
  rows: readonly Record<string, number>[],
  hour: number,
  how: { asked: PaintLimits; margin: (at: number) => number; rain: (at: number) => number },
): 'yes' | 'perhaps' | 'no' {
  if (how.asked.dryHours === 0) return 'no'
  let dry = 0
  let wet: 'yes' | 'perhaps' | 'no' = 'perhaps'
  for (let at = 0; at < hour && at < rows.length; at++) {
    const margin = how.margin(at)
    if (margin <= 0 || how.rain(at) > 0) wet = 'yes'
    else if (Number.isNaN(margin) && wet === 'no') wet = 'perhaps'
    dry = margin >= how.asked.dryMarginK && !(how.rain(at) > 0) ? dry + 1 : 0
    if (dry >= how.asked.dryHours) wet = 'no'
  }
  return wet
}

describe('a year at a weather station', () => {
  const file = new URL('../../../../shared/references/data/weather/tampa-tmy3.epw', import.meta.url)
  const windows = JSON.parse(
    readFileSync(new URL('../../../test/published/weather-windows.json', import.meta.url), 'utf8'),
  )
  const why = 'skipped where the weather file is not beside the checkout'

  it.skipIf(!existsSync(file))(`has the counted paintable hours and runs (${why})`, () => {
    const rows = readFileSync(file, 'latin1')
      .split('\r\n')
      .slice(8, 8768)
      .map((row) => row.split(',').map(Number))
    const column = (index: number, over = 1) => rows.map((row) => row[index]! / over)
    const series = fairWeather(rows.length, {
      airC: column(6),
      humidityShare: column(8, 100),
      windMps: column(21),
    })
    // The count took the dew point that the file gives; a surface this far over ours has the file's margin.
    const surfaceC = rows.map(
      (row) => row[6]! - row[7]! + dewPoint({ airC: row[6]!, humidityShare: row[8]! / 100 }),
    )
    const change = { openToSky: false, windGoMps: 6 }
    expectCount(judge(series, change, surfaceC), rows, windows.counted)
    const { hours, hoursTolerance } = windows.dewPointFromHumidity
    const own = judge(series, change).filter((hour) => hour.verdict === 'go').length
    expect(Math.abs(own - hours)).toBeLessThanOrEqual(hoursTolerance)
  })
})

function expectCount(
  verdicts: ReturnType<typeof judge>,
  rows: readonly number[][],
  counted: Readonly<Record<string, unknown>>,
) {
  const runs = runsOf(verdicts, 1)
  const months = new Array(12).fill(0)
  verdicts.forEach((hour, at) => {
    if (hour.verdict === 'go') months[rows[at]![1]! - 1]++
  })
  expect({
    hours: verdicts.filter((hour) => hour.verdict === 'go').length,
    runs: runs.length,
    longestHours: Math.max(...runs.map((run) => run.hours)),
    runsOfAtLeastHours: Object.fromEntries([4, 6, 8, 12, 24].map((n) => [n, runsOf(verdicts, n).length])),
    startsForSixHours: runsOf(verdicts, 6).reduce((sum, run) => sum + run.hours - 5, 0),
    hoursByMonth: months,
  }).toEqual(counted)
}
