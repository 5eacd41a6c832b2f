// Weather files of every form spoilt in seeded ways: never a throw, always a series or errors, and what is taken keeps.
import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { HourlySeries } from '#core/climate'
import { readWeather } from './read-weather.ts'
import { seriesHash } from './series-hash.ts'
import { readWeatherCsv } from './weather-csv.ts'
import type { WeatherRead } from './weather-read.ts'
import { writeWeatherCsv } from './write-weather-csv.ts'

const file = (name: string) => readFileSync(new URL(`../../../test/files/weather/${name}`, import.meta.url))
const encode = (text: string) => new TextEncoder().encode(text)
const forecasts = ['open-meteo.json', 'met.json', 'nws-grid.json', 'nws-hourly.json'] as const

/** What holds of every answer, whatever was read. */
function sound(read: WeatherRead): void {
  expect(read.problems.some(({ severity }) => severity === 'error')).toBe(!read.ok)
  expect(read.problems.length).toBeLessThanOrEqual(102)
  if (!read.ok) return
  const { series } = read
  for (const column of columnsOf(series)) expect(column.length).toBe(series.hours)
  for (const share of series.humidityShare)
    if (!Number.isNaN(share)) expect(share >= 0 && share <= 1).toBe(true)
  for (const { fromHour, hours } of series.gaps)
    expect(fromHour > 0 && hours > 0 && fromHour + hours < series.hours).toBe(true)
  keeps(series)
}

const columnsOf = (series: HourlySeries) =>
  Object.values(series).filter((value): value is Float64Array => value instanceof Float64Array)

/** Written as our own table and read again it is the same weather. */
function keeps(series: HourlySeries): void {
  const text = writeWeatherCsv(series)
  const again = readWeatherCsv(encode(text))
  if (!again.ok) throw new Error(`${JSON.stringify(again.problems[0])}\n${text.slice(0, 400)}`)
  expect(again.series.startMs).toBe(series.startMs)
  expect(again.series.hours).toBe(series.hours)
  expect(again.series.gaps).toEqual(series.gaps)
  expect(seriesHash(again.series)).toBe(seriesHash(series))
}

const odd = fc.oneof(
  fc.constantFrom<unknown>(
    ...[
      null,
      '',
      '12',
      'NaN',
      true,
      [],
      {},
      [[1]],
      -1,
      0,
      Number.POSITIVE_INFINITY,
      -1e308,
      1e-300,
      9e15,
      0.5,
      41,
      451,
    ],
    ...[
      '2027-04-01T10:00',
      '2027-02-30T00:00',
      '1850-01-01T00:00',
      '2199-12-31T23:00',
      'PT1H',
      'é'.repeat(300),
    ],
  ),
  fc.double(),
  fc.string({ maxLength: 12 }),
)

/** One thing done to a place in a tree of lists and maps. */
const deed = fc.record({
  way: fc.array(fc.nat(40), { minLength: 1, maxLength: 7 }),
  kind: fc.constantFrom('put', 'drop', 'double', 'turn', 'swap', 'scale'),
  value: odd,
  factor: fc.constantFrom(0.01, 100, 1.8, -1, 1e6),
})
type Deed = typeof deed extends fc.Arbitrary<infer T> ? T : never

type Holder = Record<string, unknown> | unknown[]
const isHolder = (value: unknown): value is Holder => typeof value === 'object' && value !== null

/** Walks down by the numbers as far as there is something, and does the deed there. */
function spoil(root: Holder, { way, kind, value, factor }: Deed): void {
  let at = root
  for (const [depth, step] of way.entries()) {
    const keys = Object.keys(at)
    if (keys.length === 0) return
    const key = keys[step % keys.length]!
    const below = (at as Record<string, unknown>)[key]
    if (isHolder(below) && depth < way.length - 1) at = below
    else {
      does(at as Record<string, unknown>, key, { kind, value, factor })
      return
    }
  }
}

function does(at: Record<string, unknown>, key: string, { kind, value, factor }: Omit<Deed, 'way'>): void {
  const keys = Object.keys(at)
  const other = keys[(keys.indexOf(key) + 1) % keys.length]!
  const there = at[key]
  if (kind === 'put') at[key] = value
  else if (kind === 'scale') at[key] = scaled(there, factor)
  else if (kind === 'swap') [at[key], at[other]] = [at[other], there]
  else if (kind === 'turn' && Array.isArray(there)) there.reverse()
  else if (Array.isArray(at))
    at.splice(Number(key), kind === 'double' ? 0 : 1, ...(kind === 'double' ? [there] : []))
  else if (kind === 'drop') delete at[key]
}

const scaled = (value: unknown, factor: number): unknown =>
  typeof value === 'number'
    ? value * factor
    : Array.isArray(value)
      ? value.map((one) => scaled(one, factor))
      : value

describe.each(forecasts)('%s', (name) => {
  const good = JSON.parse(file(name).toString())

  it('spoilt within, gives a series that keeps, or errors, and never throws', () => {
    fc.assert(
      fc.property(fc.array(deed, { minLength: 1, maxLength: 4 }), (deeds) => {
        const tree = structuredClone(good)
        for (const one of deeds) spoil(tree, one)
        sound(readWeather(encode(JSON.stringify(tree))))
      }),
      { seed: 41, numRuns: 700 },
    )
  }, 60_000)

  it('cut anywhere is refused', () => {
    const whole = file(name).toString().trimEnd()
    for (let cut = 1; cut < whole.length; cut += 37) {
      const read = readWeather(encode(whole.slice(0, cut)))
      expect(read.ok).toBe(false)
      sound(read)
    }
  })
})

describe('an EPW file', () => {
  const lines = file('two-days.epw').toString('latin1').split(/\r?\n/)
  const field = fc.constantFrom(
    '',
    '9999',
    '-',
    'x',
    '1e400',
    '0',
    '60',
    '25',
    '1850',
    '2199',
    '-5',
    '0.5',
    '13',
  )

  it('spoilt in fields and rows, gives a series that keeps, or errors, and never throws', () => {
    const change = fc.record({
      row: fc.nat(lines.length - 1),
      at: fc.nat(36),
      kind: fc.constantFrom('field', 'drop', 'double', 'cut', 'swap'),
      value: field,
    })
    fc.assert(
      fc.property(fc.array(change, { minLength: 1, maxLength: 5 }), (changes) => {
        const rows = [...lines]
        for (const { row, at, kind, value } of changes) {
          const text = rows[row] ?? ''
          if (kind === 'drop') rows.splice(row, 1)
          else if (kind === 'double') rows.splice(row, 0, text)
          else if (kind === 'cut') rows[row] = text.slice(0, at * 4)
          else if (kind === 'swap') [rows[row], rows[row + 1]] = [rows[row + 1] ?? '', text]
          else
            rows[row] = text
              .split(',')
              .map((one, index) => (index === at ? value : one))
              .join(',')
        }
        sound(readWeather(new Uint8Array(Buffer.from(rows.join('\n'), 'latin1'))))
      }),
      { seed: 43, numRuns: 1200 },
    )
  }, 60_000)

  it('of a year before any that our own table can say is refused at its line', () => {
    const rows = lines.map((line, index) => (index < 8 ? line : line.replace(/^\d{4},/, '1850,')))
    const read = readWeather(new Uint8Array(Buffer.from(rows.join('\n'), 'latin1')))
    expect(read.problems[0]).toMatchObject({ code: 'intake.timeNotRead', line: 9 })
  })

  it('whose every row stands twice, with another figure, is refused at the second', () => {
    const doubled = lines.flatMap((line, index) =>
      index < 8 || line === '' ? [line] : [line, line.replace(/,76\d\.?\d*,|,(\d+\.\d),/, ',1.5,')],
    )
    const read = readWeather(new Uint8Array(Buffer.from(doubled.join('\n'), 'latin1')))
    expect(read.problems[0]).toMatchObject({ code: 'intake.hourTwice', severity: 'error' })
  })
})

describe('hours that stand twice in a forecast', () => {
  const parsed = (name: string) => JSON.parse(file(name).toString())
  const read = (value: unknown) => readWeather(encode(JSON.stringify(value)))

  it('are an error with its place where they differ, and a note where they do not', () => {
    const om = parsed('open-meteo.json')
    om.hourly.time[2] = om.hourly.time[1]
    expect(read(om).problems).toContainEqual(
      expect.objectContaining({
        code: 'intake.jsonTwice',
        data: expect.objectContaining({ at: 'hourly.time[2]' }),
      }),
    )
    const met = parsed('met.json')
    const [first] = met.properties.timeseries
    met.properties.timeseries.push(structuredClone(first))
    expect(read(met).ok).toBe(true)
    expect(read(met).problems.map(({ code }) => code)).toContain('intake.jsonRepeated')
    met.properties.timeseries.at(-1).data.instant.details.air_temperature += 3
    const place = `properties.timeseries[${met.properties.timeseries.length - 1}]`
    expect(read(met).problems).toContainEqual(
      expect.objectContaining({ code: 'intake.jsonTwice', data: expect.objectContaining({ at: place }) }),
    )
    const hourly = parsed('nws-hourly.json')
    hourly.properties.periods.push({ ...hourly.properties.periods[0], temperature: 1 })
    expect(read(hourly).problems.map(({ code }) => code)).toContain('intake.jsonTwice')
    const grid = parsed('nws-grid.json')
    const { values } = grid.properties.temperature
    values.push({ ...values[0], value: 30 })
    expect(read(grid).problems).toContainEqual(
      expect.objectContaining({
        code: 'intake.jsonTwice',
        data: expect.objectContaining({
          at: `properties.temperature.values[${values.length - 1}].validTime`,
        }),
      }),
    )
  })

  it('by the ten thousand, each half a year long, take no longer than they are read', () => {
    const grid = parsed('nws-grid.json')
    const long = { validTime: '2027-04-01T04:00:00+00:00/P180D', value: 10 }
    for (const layer of ['temperature', 'dewpoint', 'windSpeed'])
      grid.properties[layer].values = new Array(16_000).fill(long)
    const bytes = encode(JSON.stringify(grid))
    const from = performance.now()
    const parse = JSON.parse(new TextDecoder().decode(bytes))
    const once = performance.now() - from
    expect(parse.properties.temperature.values).toHaveLength(16_000)
    const begun = performance.now()
    sound(readWeather(bytes))
    // Reading takes some times as long as parsing alone; filling every interval anew took a hundred times.
    expect(performance.now() - begun).toBeLessThan(50 * once + 300)
  })
})

describe('figures under another name than their own', () => {
  const hours = Array.from({ length: 48 }, (_, hour) => hour)
  const openMeteo = (airC: (hour: number) => number, humidityPct: (hour: number) => number) =>
    readWeather(
      encode(
        JSON.stringify({
          utc_offset_seconds: 0,
          hourly_units: { temperature_2m: '°C', relative_humidity_2m: '%' },
          hourly: {
            time: hours.map((hour) => new Date(Date.UTC(2027, 3, 1, hour)).toISOString().slice(0, 16)),
            temperature_2m: hours.map(airC),
            relative_humidity_2m: hours.map(humidityPct),
          },
        }),
      ),
    )
  const warmth = (hour: number) => 14 + 6 * Math.sin((hour / 24) * 2 * Math.PI)
  const damp = (hour: number) => 75 - 20 * Math.sin((hour / 24) * 2 * Math.PI)

  it.each([
    ['Fahrenheit called Celsius', (h: number) => warmth(h) * 1.8 + 32, damp],
    ['humidity from 0 to 1', warmth, (h: number) => damp(h) / 100],
    ['air and humidity swapped', damp, warmth],
    ['kelvins called Celsius', (h: number) => warmth(h) + 273.15, damp],
  ])('are refused: %s', (_, air, humidity) => {
    sound(openMeteo(warmth, damp))
    expect(openMeteo(warmth, damp).ok).toBe(true)
    const read = openMeteo(air, humidity)
    expect(read.ok).toBe(false)
    sound(read)
  })
})

describe('JSON that nests or swells', () => {
  it('is refused without being taken apart', () => {
    for (const text of [
      `{"properties":{"timeseries":${'['.repeat(5000)}${']'.repeat(5000)}}}`,
      `${'{"hourly":'.repeat(2000)}1${'}'.repeat(2000)}`,
      `{"hourly":{"time":[${'1,'.repeat(1_900_000)}1]},"hourly_units":{},"utc_offset_seconds":0}`,
    ]) {
      const begun = performance.now()
      const read = readWeather(encode(text))
      expect(read.ok).toBe(false)
      sound(read)
      expect(performance.now() - begun).toBeLessThan(5000)
    }
  })
})
