/** Hourly weather from a file, refused with every problem in it when it has any. */
import { dirname, resolve } from 'node:path'
import { type Problem, readWeatherCsv, seriesHash, type WeatherRead } from '#intake'
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

export async function loadWeather(path: string): Promise<LoadedWeather> {
  const result = readWeatherCsv(await readBytes(path))
  if (!result.ok) throw new CliFault(weatherProblemLines(path, result.problems))
  return { path, series: result.series, hash: seriesHash(result.series), problems: result.problems }
}

/** The file named on the command line, else the one the job names, beside the job. */
export async function weatherFor(
  job: LoadedJob,
  path: string | undefined,
): Promise<LoadedWeather | undefined> {
  const named = job.projected.work.weather.file
  const file =
    path ?? (named === undefined || job.path === '-' ? undefined : resolve(dirname(job.path), named))
  if (file === undefined) return undefined
  const loaded = await loadWeather(file)
  const wanted = path === undefined ? job.projected.work.weather.hash : undefined
  if (wanted !== undefined && wanted !== loaded.hash) {
    throw new CliFault([plainWords.sentence('cli.weatherChanged', { file, wanted, found: loaded.hash })])
  }
  return loaded
}

export function weatherProblemLines(path: string, problems: readonly Problem[]): readonly string[] {
  return problems.map((problem) => {
    const place =
      problem.line === undefined
        ? ''
        : `:${problem.line}${problem.column === undefined ? '' : `:${problem.column}`}`
    return `${path}${place}: ${plainWords.sentence(problem.code, problem.data)}`
  })
}
