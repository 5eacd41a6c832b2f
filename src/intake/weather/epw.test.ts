import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import type { HourlySeries } from '#core/climate'
import { readWeather } from './read-weather.ts'
import { seriesHash } from './series-hash.ts'
import { readWeatherCsv } from './weather-csv.ts'
import { writeWeatherCsv } from './write-weather-csv.ts'

const file = readFileSync(new URL('../../../test/files/weather/two-days.epw', import.meta.url))
const lines = file.toString('latin1').split(/\r?\n/)
const bytes = (rows: readonly string[]) => new Uint8Array(Buffer.from(rows.join('\r\n'), 'latin1'))

function seriesIn(given: Uint8Array): HourlySeries {
  const read = readWeather(given)
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  return read.series
}
const codes = (rows: readonly string[]) => readWeather(bytes(rows)).problems.map(({ code }) => code)
/** One row of the file with some fields set. */
const changed = (row: number, fields: Readonly<Record<number, string>>) =>
  lines.map((line, index) =>
    index === row + 8
      ? line
          .split(',')
          .map((field, at) => fields[at] ?? field)
          .join(',')
      : line,
  )

describe('two days at an invented southern station', () => {
  const series = seriesIn(new Uint8Array(file))

  it('begin at the first stamp in UTC, for the clock is local standard time', () => {
    expect(series.startMs).toBe(Date.parse('2019-01-01T01:00-03:00'))
    expect(series.hours).toBe(48)
    expect(series.source).toBe('Bahía Inventada XX Invented 000000; Invented for tests')
  })

  it('stand where the head says, and say so in our own form too', () => {
    const degrees = (angle: number) => (angle * 180) / Math.PI
    expect(degrees(series.spot!.latitude)).toBeCloseTo(-43.1, 9)
    expect(degrees(series.spot!.longitude)).toBeCloseTo(-71.55, 9)
    const text = writeWeatherCsv(series)
    expect(text).toContain('\n# place: -43.1, -71.55\n')
    const again = readWeatherCsv(new TextEncoder().encode(text))
    expect(again.ok && seriesHash(again.series)).toBe(seriesHash(series))
    const off = text.replace('-43.1, -71.55', '-143.1, 0')
    const read = readWeatherCsv(new TextEncoder().encode(off))
    expect(read.ok && read.series.spot).toBeUndefined()
  })

  it('put what is measured at the stamp there, and totals, which end at it, an hour before', () => {
    expect(series.airC[0]).toBe(9.8)
    const noon = Number(lines[8 + 12]!.split(',')[13])
    expect(series.sunWm2?.[11]).toBe(noon)
    expect(series.skyHeatWm2?.[47]).toBeNaN()
    expect(series.windFromRad?.[0]).toBeCloseTo(2 * Math.PI, 12)
  })

  it('have their units: tenths of the sky, hundredths of humidity, metres a second, watts a square metre', () => {
    // Data dictionary of the EPW format: fields 8, 21, 22 from 0 at the stamp; 12 for the hour that ends there.
    const [first, next] = [lines[8]!.split(',').map(Number), lines[9]!.split(',').map(Number)]
    expect(first[22]).toBeGreaterThan(0)
    expect(series.cloudShare?.[0]).toBeCloseTo(first[22]! / 10, 12)
    expect(series.humidityShare[0]).toBeCloseTo(first[8]! / 100, 12)
    expect(series.windMps?.[0]).toBe(first[21])
    expect(series.skyHeatWm2?.[0]).toBe(next[12])
  })

  it('know what is missing: air, humidity, and where a calm comes from', () => {
    expect([series.airC[10], series.windFromRad?.[3]]).toEqual([Number.NaN, Number.NaN])
    expect(series.windMps?.[3]).toBe(0)
    // Missing humidity is worked out from air and dew point.
    expect(series.humidityShare[11]).toBeGreaterThan(0.4)
  })

  it('take rain that nobody measured for unknown and not for dry', () => {
    const known = Array.from(series.rainMm ?? []).flatMap((mm, hour) =>
      Number.isNaN(mm) ? [] : [[hour, mm]],
    )
    expect(known).toEqual([
      [4, 0.6],
      // A total of six hours.
      ...[17, 18, 19, 20, 21, 22].map((hour) => [hour, 1]),
      // Watched and dry; watched and raining.
      [29, 0],
      [30, 0.2],
    ])
  })

  it('come back from our own form with the same hash', () => {
    const again = readWeatherCsv(new TextEncoder().encode(writeWeatherCsv(series)))
    expect(again.ok && seriesHash(again.series)).toBe(seriesHash(series))
  })
})

describe('a whole year', () => {
  const head = lines.slice(0, 8)
  const days = Array.from({ length: 365 }, (_, day) => new Date(Date.UTC(2001, 0, 1 + day)))
  const fields = lines[8]!.split(',').slice(5)
  const year = days.flatMap((date) =>
    Array.from({ length: 24 }, (_, hour) =>
      [
        1990 + date.getUTCMonth(),
        date.getUTCMonth() + 1,
        date.getUTCDate(),
        hour + 1,
        0,
        fields[0],
        date.getUTCMonth(),
        ...fields.slice(2),
      ].join(','),
    ),
  )

  it('of months from different years is one typical year without a seam', () => {
    const read = readWeather(bytes([...head, ...year]))
    expect(read.ok && [read.series.hours, read.series.typicalYear, read.series.gaps]).toEqual([
      8760,
      true,
      [],
    ])
    expect(read.problems.find(({ code }) => code === 'intake.typicalYear')?.data).toEqual({
      count: 12,
      firstYear: 1990,
      lastYear: 2001,
    })
  })

  it('keeps that it is one in our own form', () => {
    const series = seriesIn(bytes([...head, ...year]))
    const text = writeWeatherCsv(series)
    const again = readWeatherCsv(new TextEncoder().encode(text))
    expect(text).toContain('# typical year: yes\n')
    expect(again.ok && again.series.typicalYear).toBe(true)
    expect(again.ok && seriesHash(again.series)).toBe(seriesHash(series))
  })

  it('joins its last hour to its first: the sun of the first row belongs to the last hour', () => {
    const rows = [...head, ...year]
    const first = rows[8]!.split(',')
    first[13] = '77'
    rows[8] = first.join(',')
    expect(seriesIn(bytes(rows)).sunWm2?.at(-1)).toBe(77)
  })

  it('leaves 29 February out, names a hole, and refuses an hour that is there twice', () => {
    const leap = [
      ...head,
      ...year,
      ...year.slice(58 * 24, 59 * 24).map((row) => row.replace(',2,28,', ',2,29,')),
    ]
    leap.push(leap[8 + 8759]!.replace(/^(.*)$/, '$1'))
    expect(codes(leap)).toContain('intake.hourTwice')
    const sorted = [...head, ...year.slice(0, 59 * 24), ...leap.slice(8 + 8760, -1), ...year.slice(59 * 24)]
    expect(codes(sorted)).toContain('intake.leapDayLeftOut')
    const holed = [...sorted.slice(0, 3000), ...sorted.slice(3002)]
    expect(seriesIn(bytes(holed)).gaps.map(({ hours }) => hours)).toEqual([2])
  })

  it('that is only in part there and of many years is refused', () => {
    expect(codes([...head, ...year.slice(0, 5000)])).toEqual(['intake.epwPartYear'])
  })
})

describe('a bad EPW file', () => {
  it.each([
    [
      'no offset from UTC',
      lines.map((line, i) => (i === 0 ? 'LOCATION,Somewhere' : line)),
      ['intake.epwHead'],
    ],
    [
      'an end in the middle of a row',
      [...lines.slice(0, 20), lines[20]!.slice(0, 60)],
      ['intake.endsMidRow'],
    ],
    ['half hours', changed(4, { 4: '30' }), ['intake.epwMinutes']],
    ['a 31 April', changed(4, { 1: '4', 2: '31' }), ['intake.timeNotRead']],
    ['an hour nought', changed(4, { 3: '0' }), ['intake.timeNotRead']],
    ['a head alone', lines.slice(0, 8), ['intake.noRows']],
  ])('with %s is refused', (_, rows, expected) => {
    expect(codes(rows)).toEqual(expected)
  })

  it('with a word for a figure or a figure that cannot be is refused with its place', () => {
    const { problems } = readWeather(bytes(changed(2, { 6: 'warm' })))
    expect(problems[0]).toEqual({
      code: 'intake.numberNotRead',
      severity: 'error',
      line: 11,
      column: 7,
      data: { found: 'warm', name: 'airC' },
    })
    expect(codes(changed(2, { 6: '71' }))[0]).toBe('intake.hourOutOfRange')
  })
})
