/** Hourly weather from a file, refused with every problem in it when it has any. */
import { dirname, resolve } from 'node:path'
import { type Problem, readWeather, seriesHash, type TableHints, type WeatherRead } from '#intake'
import { problemLine } from '#words'
import { CliFault } from './fault.ts'
import type { LoadedJob } from './load-job.ts'
import { plainWords } from './plain-words.ts'
import { readBytes } from './read-bytes.ts'

export type WeatherSeries = Extract<WeatherRead, { readonly ok: true }>['series']

export type LoadedWeather = {
  readonly path: string
  readonly series: WeatherSeries
  readonly hash: string
  readonly problems: readonly Problem[]
}

/** @param hints what is said of a table that is not in our own form. */
export async function loadWeather(path: string, hints: TableHints = {}): Promise<LoadedWeather> {
  const result = readWeather(await readBytes(path), hints)
  if (!result.ok) throw new CliFault(weatherProblemLines(path, result.problems))
  return { path, series: result.series, hash: seriesHash(result.series), problems: result.problems }
}

export type WeatherWish = {
  /** The file named on the command line. */
  readonly path: string | undefined
  /** Gaps were seen and are accepted. */
  readonly gaps: boolean
  /** The typical year named on the command line. */
  readonly typical: string | undefined
  /** The readings of a logger named on the command line. */
  readonly logger: string | undefined
}

export type WeatherOfJob = {
  readonly weather?: LoadedWeather
  readonly typical?: LoadedWeather
  /** Holes in it are hours that nothing is fitted to. */
  readonly logger?: LoadedWeather
}

/** The files named on the command line, else those the job names, beside the job. */
export async function weatherFor(job: LoadedJob, wish: WeatherWish): Promise<WeatherOfJob> {
  const { file, hash, typicalFile, typicalHash, logger: loggerFile, loggerHash } = job.projected.work.weather
  const weather = await loadNamed(job, { flag: '--weather', wished: wish.path, file, hash })
  const typical = await loadNamed(job, {
    flag: '--typical',
    wished: wish.typical,
    file: typicalFile,
    hash: typicalHash,
  })
  if (typical && typical.series.typicalYear !== true)
    throw new CliFault([plainWords.sentence('cli.typicalDated', { file: typical.path })])
  if (typical && weather?.series.typicalYear === true)
    throw new CliFault([plainWords.sentence('cli.typicalTwice', { file: weather.path })])
  for (const loaded of [weather, typical])
    if (loaded && !wish.gaps && loaded.series.gaps.length > 0) throw new CliFault(gapLines(loaded))
  const logger = await loadNamed(job, {
    flag: '--logger',
    wished: wish.logger,
    file: loggerFile,
    hash: loggerHash,
  })
  return { ...(weather ? { weather } : {}), ...(typical ? { typical } : {}), ...(logger ? { logger } : {}) }
}

type Named = {
  readonly flag: string
  readonly wished: string | undefined
  readonly file: string | undefined
  readonly hash: string | undefined
}

async function loadNamed(
  { path, projected }: LoadedJob,
  { flag, wished, file, hash }: Named,
): Promise<LoadedWeather | undefined> {
  const found = wished ?? (file === undefined || path === '-' ? undefined : resolve(dirname(path), file))
  if (found === undefined) return undefined
  // A logger in the shed goes by the clock of the place.
  const loaded = await loadWeather(found, { zone: projected.work.place.timeZone })
  if (wished === undefined && hash !== undefined && hash !== loaded.hash) {
    throw new CliFault([
      plainWords.sentence('cli.weatherChanged', { file: found, flag, wanted: hash, found: loaded.hash }),
    ])
  }
  return loaded
}

/** Each gap, and how to plan all the same. */
export function gapLines({ path, series }: LoadedWeather): readonly string[] {
  const gaps = series.gaps.map((gap) =>
    plainWords.sentence('cli.weatherGap', {
      file: path,
      fromAtMs: series.startMs + gap.fromHour * 3_600_000,
      hours: gap.hours,
    }),
  )
  return [
    ...gaps.slice(0, MOST_GAPS),
    plainWords.sentence('cli.weatherGaps', { file: path, count: gaps.length }),
  ]
}

/** More gaps than this are counted, not listed. */
const MOST_GAPS = 10

export const weatherProblemLines = (path: string, problems: readonly Problem[]): readonly string[] =>
  problems.map((problem) => problemLine(plainWords, path, problem))
