/** `hardstand weather`: reads a weather file and says what is in it. */
import { type Command, textFlag } from '../command.ts'
import { fetchWeather } from '../fetch-weather.ts'
import { gapLines, loadWeather, type WeatherSeries, weatherProblemLines } from '../load-weather.ts'
import { plainWords } from '../plain-words.ts'
import { hintsOf, tableFlags } from '../table-hints.ts'
import { section, table } from '../views/table.ts'
import { writeWeather } from '../write-weather.ts'

export const weather: Command = {
  name: 'weather',
  summary: 'read a weather file, or fetch a forecast, and say what is in it',
  argument: { name: '<file>', doc: 'hourly weather, or - for standard input; with --fetch a job document' },
  flags: [
    ...tableFlags,
    {
      flags: '--fetch <service>',
      doc: 'ask open-meteo, met-norway or us-nws for the place of the job',
    },
    {
      flags: '--out <file>',
      doc: 'write the hours as CSV, to stand beside a job; an older file of that form gives way',
    },
  ],
  run: async ({ argument, flags }) => {
    const service = textFlag(flags, 'fetch')
    const fetched = service === undefined ? undefined : await fetchWeather(argument, service)
    const loaded = fetched ?? (await loadWeather(argument, hintsOf(flags)))
    const staleSince = fetched?.stale === true ? fetched.fetchedAtMs : undefined
    const out = textFlag(flags, 'out')
    if (out !== undefined) await writeWeather(out, loaded.series)
    const { series, hash, problems } = loaded
    const columns = summary(series)
    const fromAtMs = series.startMs
    const toAtMs = series.startMs + series.hours * 3_600_000
    const rows = columns.map((column) => [
      plainWords.label(`weather.${column.key}`),
      plainWords.figure(column.key, column.least),
      plainWords.figure(column.key, column.mean),
      plainWords.figure(column.key, column.most),
      String(column.missing),
    ])
    const head = ['', ...['least', 'mean', 'most', 'unknown'].map((key) => plainWords.label(`column.${key}`))]
    return {
      lines: [
        ...(staleSince === undefined
          ? []
          : [plainWords.sentence('feeds.stale', { fetchedAtMs: staleSince })]),
        plainWords.sentence('cli.weatherRead', { file: loaded.path, hours: series.hours, fromAtMs, toAtMs }),
        ...section(
          plainWords.label('heading.columns'),
          table([head, ...rows], ['left', 'right', 'right', 'right', 'right']),
        ),
        ...section(
          plainWords.label('heading.source'),
          [series.source, series.licence, hash].filter((line) => line !== ''),
        ),
        ...section(plainWords.label('heading.notes'), weatherProblemLines(argument, problems)),
      ],
      json: {
        hours: series.hours,
        fromAtMs,
        toAtMs,
        hash,
        source: series.source,
        licence: series.licence,
        typicalYear: series.typicalYear === true,
        gaps: series.gaps,
        columns,
        problems,
      },
      faults: series.gaps.length > 0 ? gapLines(loaded) : [],
    }
  },
}

type ColumnSummary = {
  readonly key: string
  readonly least: number
  readonly mean: number
  readonly most: number
  readonly missing: number
}

const keys = [
  'airC',
  'humidityShare',
  'windMps',
  'rainMm',
  'rainChanceShare',
  'cloudShare',
  'sunWm2',
  'sunBeamWm2',
  'sunDiffuseWm2',
  'skyHeatWm2',
  'dewC',
] as const

function summary(series: WeatherSeries): readonly ColumnSummary[] {
  return keys.flatMap((key) => {
    const column = series[key]
    if (!column) return []
    const known = Array.from(column).filter((value) => !Number.isNaN(value))
    if (known.length === 0) return []
    return [
      {
        key: key.replace(/Wm2$/, 'WPerM2'),
        least: known.reduce((a, b) => Math.min(a, b)),
        mean: known.reduce((a, b) => a + b, 0) / known.length,
        most: known.reduce((a, b) => Math.max(a, b)),
        missing: column.length - known.length,
      },
    ]
  })
}
