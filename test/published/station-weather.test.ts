// The weather files that are kept beside the project and not in it, read in full and held against figures that other
// programs worked out from them; skipped, by name, where they are not there.
import { existsSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { dewPoint, type HourlyColumn, type HourlySeries, runsOf } from '#core/climate'
import { readWeather } from '#intake'

const folder = new URL('../../../shared/references/data/weather/', import.meta.url)
const { counted } = JSON.parse(readFileSync(new URL('./weather-windows.json', import.meta.url), 'utf8'))

function withFile(
  name: string,
  say: string,
  check: (series: HourlySeries, codes: readonly string[]) => void,
): void {
  const file = new URL(name, folder)
  it.skipIf(!existsSync(file))(`${say} (skipped where ${name} is not beside the checkout)`, () => {
    const read = readWeather(new Uint8Array(readFileSync(file)))
    if (!read.ok) throw new Error(JSON.stringify(read.problems))
    check(
      read.series,
      read.problems.map(({ code }) => code),
    )
  })
}

const known = (column: HourlyColumn | undefined) =>
  Array.from(column ?? []).filter((value) => !Number.isNaN(value))
const sum = (values: readonly number[]) => values.reduce((all, value) => all + value, 0)
const mean = (values: readonly number[]) => sum(values) / values.length
const most = (values: readonly number[]) => values.reduce((a, b) => Math.max(a, b), -Infinity)
const least = (values: readonly number[]) => values.reduce((a, b) => Math.min(a, b), Infinity)
const at = (column: HourlyColumn | undefined, hour: number) => column?.[hour] ?? Number.NaN
const unknowns = (column: HourlyColumn | undefined) => Array.from(column ?? []).filter(Number.isNaN).length

/** How far our dew point stands off the file's own, hour by hour. */
const offDew = (series: HourlySeries) =>
  Array.from({ length: series.hours }, (_, hour) =>
    Math.abs(
      dewPoint({ airC: at(series.airC, hour), humidityShare: at(series.humidityShare, hour) || Number.NaN }) -
        at(series.dewC, hour),
    ),
  ).filter((off) => !Number.isNaN(off))

describe('a typical year at a station (EPW)', () => {
  const tampa = 'tampa-tmy3.epw'
  /** Hour of the series whose row has this stamp: the first is 1 January, 01:00. */
  const hourOf = (month: number, day: number, hour: number) =>
    (Date.UTC(2001, month - 1, day, hour) - Date.UTC(2001, 0, 1, 1)) / 3_600_000

  withFile(tampa, 'is whole, at the clock of the place', (series, codes) => {
    expect([series.hours, series.typicalYear, series.gaps]).toEqual([8760, true, []])
    expect(series.startMs).toBe(Date.parse('2001-01-01T01:00-05:00'))
    expect(series.source).toContain('Tampa International Ap FL USA TMY3 722110')
    expect(codes).toContain('intake.typicalYear')
  })

  // Means and sums to half of the last digit printed.
  withFile(tampa, 'has the printed means, sums and extremes', (series) => {
    expect(Math.abs(mean(known(series.airC)) - 22.29)).toBeLessThan(0.005)
    expect(Math.abs(100 * mean(known(series.humidityShare)) - 75.27)).toBeLessThan(0.005)
    expect(Math.abs(sum(known(series.sunWm2)) / 1000 - 1811.2)).toBeLessThan(0.05)
    expect(Math.abs(mean(known(series.windMps)) - 3.251)).toBeLessThan(0.0005)
    expect([least(known(series.airC)), most(known(series.airC))]).toEqual([-2.2, 34.4])
  })

  withFile(tampa, 'has the row of 15 July, hour 13, where it belongs', (series) => {
    const noon = hourOf(7, 15, 13)
    expect(
      [series.airC, series.dewC, series.humidityShare, series.windMps, series.cloudShare].map((one) =>
        at(one, noon),
      ),
    ).toEqual([32.2, 22.8, 0.58, 4.1, 0.3])
    expect((at(series.windFromRad, noon) * 180) / Math.PI).toBeCloseTo(250, 9)
    // Totals of the hour that ends at 13 belong to the hour that begins at 12.
    expect(
      [series.skyHeatWm2, series.sunWm2, series.sunBeamWm2, series.sunDiffuseWm2].map((one) =>
        at(one, noon - 1),
      ),
    ).toEqual([436, 919, 653, 271])
  })

  withFile(tampa, 'leaves rain unknown where it is missing, calm without a direction', (series, codes) => {
    // The four totals over six hours tell of hours that have rows of their own.
    expect(unknowns(series.rainMm)).toBe(4400)
    expect(series.windFromRad && Array.from(series.windFromRad).filter(Number.isNaN)).toHaveLength(777)
    expect(codes).toContain('intake.figuresUnknown')
  })

  withFile(tampa, 'agrees with itself: dew point and humidity', (series) => {
    const off = [...offDew(series)].sort((a, b) => a - b)
    expect(off[off.length / 2]).toBeLessThan(0.08)
    expect(off[Math.floor(0.95 * off.length)]).toBeLessThan(0.2)
    expect(off.at(-1)).toBeCloseTo(2.3, 1)
  })

  withFile(tampa, 'has exactly the counted hours and runs', (series) => {
    const good = Array.from(
      { length: series.hours },
      (_, hour) =>
        at(series.airC, hour) >= 10 &&
        at(series.airC, hour) <= 32 &&
        at(series.humidityShare, hour) <= 0.85 &&
        // The count was made with the dew point of the file; the margin as it is printed, to a tenth.
        Math.round(10 * (at(series.airC, hour) - at(series.dewC, hour))) >= 30 &&
        at(series.windMps, hour) <= 6,
    )
    const runs = runsOf(
      good.map((one) => ({ verdict: one ? ('go' as const) : ('no' as const), failing: [] })),
      1,
    ).map(({ hours }) => hours)
    const longerThan = (hours: number) => runs.filter((run) => run >= hours)
    // A row belongs to the month in which its hour ends, and midnight still to the day before.
    const months = new Array<number>(12).fill(0)
    good.forEach((one, hour) => {
      if (one) months[new Date(Date.UTC(2001, 0, 1, hour)).getUTCMonth()]! += 1
    })
    expect({
      hours: sum(runs),
      runs: runs.length,
      longestHours: most(runs),
      runsOfAtLeastHours: Object.fromEntries(
        [4, 6, 8, 12, 24].map((hours) => [hours, longerThan(hours).length]),
      ),
      startsForSixHours: sum(longerThan(6).map((hours) => hours - 5)),
      hoursByMonth: months,
    }).toEqual(counted)
  })
})

describe('a grid point forecast (NWS)', () => {
  const file = 'nws_gridpoint_TAE_58_65.json'
  withFile(file, 'has its hours, its rain and no sun', (series) => {
    expect(series.startMs).toBe(Date.parse('2022-02-03T21:00Z'))
    expect(sum(known(series.rainMm))).toBeCloseTo(20.066, 9)
    expect(series.sunWm2).toBeUndefined()
    expect(series.source).toContain('TAE 58 65')
  })
  withFile(file, 'agrees with itself over 181 hours: 0.18 K at most, 0.05 K on average', (series) => {
    const off = offDew(series)
    expect(off).toHaveLength(181)
    expect(most(off)).toBeLessThan(0.185)
    expect(mean(off)).toBeLessThan(0.055)
  })
})

describe('a location forecast (MET Norway)', () => {
  const file = 'metno_locationforecast_complete_london_2020.json'
  withFile(file, 'agrees with itself at its 82 moments: 0.21 K at most, 0.075 K on average', (series) => {
    const off = offDew(series)
    expect(off).toHaveLength(82)
    expect(most(off)).toBeLessThan(0.215)
    expect(mean(off)).toBeLessThan(0.08)
  })
  withFile(
    file,
    'goes on in steps of six hours, unknown in between, its last moments without rain',
    (series, codes) => {
      expect(known(series.airC)).toHaveLength(82)
      expect(series.hours).toBe((Date.parse('2020-07-29T06:00Z') - series.startMs) / 3_600_000 + 1)
      expect(codes).toContain('intake.forecastThins')
      expect(at(series.rainMm, series.hours - 1)).toBeNaN()
      expect(series.gaps).toEqual([])
    },
  )
})

describe('a forecast of Open-Meteo', () => {
  const file = 'openmeteo_forecast_subset.json'
  withFile(file, 'is three hours of local time, in km/h', (series) => {
    expect(series.startMs).toBe(Date.parse('2026-10-03T00:00+02:00'))
    expect(known(series.airC)).toEqual([11.8, 11.2, 11])
    expect(known(series.windMps)[0]).toBeCloseTo(2.5, 12)
    expect(most(offDew(series))).toBeLessThan(0.06)
  })
})

describe('an hourly forecast (NWS)', () => {
  withFile('nws_forecast_hourly_us.json', 'reads degrees Fahrenheit beside degrees Celsius', (series) => {
    expect(series.startMs).toBe(Date.parse('2019-10-14T20:00-04:00'))
    expect(at(series.airC, 0)).toBeCloseTo((78 - 32) / 1.8, 12)
    expect([at(series.dewC, 0), at(series.humidityShare, 0), at(series.rainChanceShare, 0)]).toEqual([
      5, 0.63, 0.2,
    ])
  })
})
