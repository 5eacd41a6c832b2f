/**
 * Files that a person picked or dropped, as a job: one document, and its weather, typical year and the readings of its logger
 * if those were given too. Says of bad ones what the command line says.
 */
import { catalogueIds } from '#catalogue'
import {
  isForecast,
  mostWeatherBytes,
  readWeather as readSeries,
  seriesHash,
  type TableHints,
  type TableLook,
  writeWeatherCsv,
} from '#intake'
import { byPlace, limits, parseJob, project, type RawDocument } from '#job'
import type { LineProblem } from '#words'
import type { GivenWeather } from '../device/keep-weather.ts'

/** As a browser gives it: nothing is read of one that is too large. */
export type GivenFile = Pick<File, 'name' | 'size' | 'arrayBuffer'>

export type FileProblem = LineProblem & { readonly file: string }

export type JobRead =
  | {
      readonly ok: true
      readonly raw: RawDocument
      readonly weathers: readonly GivenWeather[]
      /** Name of the weather file that the job goes by and that was not given. */
      readonly wantsWeather?: string
    }
  | { readonly ok: false; readonly problems: readonly FileProblem[] }

/** By its name; of JSON, which a job may be as well, by what is in it. */
async function isWeather(file: GivenFile): Promise<boolean> {
  if (/\.json$/i.test(file.name) && file.size <= mostWeatherBytes)
    return isForecast(new Uint8Array(await file.arrayBuffer()))
  return /\.(csv|txt|epw)$/i.test(file.name)
}

export async function readJobFiles(files: readonly GivenFile[]): Promise<JobRead> {
  const kinds = await Promise.all(files.map(isWeather))
  const [job, ...moreJobs] = files.filter((_, index) => !kinds[index])
  const given = files.filter((_, index) => kinds[index])
  if (!job) return refused([{ code: 'import.noJob', data: {}, file: given[0]?.name ?? '' }])
  const read = await readJob(job)
  const weathers: (WeatherRead & { readonly file: string })[] = []
  const named = read.raw?.work.weather ?? {}
  for (const file of given.slice(0, 3))
    weathers.push({ ...(await readWeather(file, hintsFor(file, read.raw))), file: file.name })
  const slots = slotsOf(weathers, named)
  const extra = [...moreJobs, ...given.slice(3)].map(({ name }) => name)
  const problems = [
    ...[...extra, ...slots.extra].map((file) => ({ code: 'import.oneAtATime', data: {}, file })),
    ...read.problems,
    ...weathers.flatMap((weather) => weather.problems),
  ]
  if (problems.length > 0 || !read.raw) return refused(problems)
  const raw = {
    ...read.raw,
    work: { ...read.raw.work, weather: { ...read.raw.work.weather, ...slots.hashes } },
  }
  const taken = weathers.flatMap((weather) => weather.given ?? [])
  const wanted = wantedOf(raw.work.weather)
  return {
    ok: true,
    raw: taken.length === 0 ? read.raw : raw,
    weathers: taken,
    ...(wanted === undefined ? {} : { wantsWeather: wanted }),
  }
}

type Cells = NonNullable<RawDocument['work']['weather']>

/** A logger goes by the clock of the place. */
function hintsFor({ name }: GivenFile, raw: RawDocument | undefined): TableHints | undefined {
  const zone = raw?.work.place?.timeZone
  return name === raw?.work.weather?.logger && typeof zone === 'string' ? { zone } : undefined
}

/** What a logger read is told by the name or the mark that the job has of it. */
const isLogger = ({ given, file }: WeatherRead & { readonly file: string }, named: Cells): boolean =>
  file === named.logger || (given !== undefined && given.hash === named.loggerHash)

/** One forecast, one typical year and one logger; a single typical year is what the job names so, else its only weather. */
function slotsOf(
  weathers: readonly (WeatherRead & { readonly file: string })[],
  named: Cells,
): { readonly hashes: Cells; readonly extra: readonly string[] } {
  const hashes: Record<string, string> = {}
  const extra: string[] = []
  const outside = weathers.filter((one) => !isLogger(one, named))
  for (const one of weathers) {
    const { given, file } = one
    if (!given) continue
    const behind = given.typicalYear && (outside.length > 1 || named.typicalFile !== undefined)
    const key = isLogger(one, named) ? 'loggerHash' : behind ? 'typicalHash' : 'hash'
    if (hashes[key] === undefined) hashes[key] = given.hash
    else extra.push(file)
  }
  return { hashes, extra }
}

/** A file that the job names and that was not given. */
function wantedOf({ file, hash, typicalFile, typicalHash }: Cells): string | undefined {
  const missing = [
    [file, hash],
    [typicalFile, typicalHash],
  ].find(([name, mark]) => typeof name === 'string' && name !== '' && mark === undefined)
  return missing?.[0] as string | undefined
}

const refused = (problems: readonly FileProblem[]): JobRead => ({ ok: false, problems })

async function readJob(
  file: GivenFile,
): Promise<{ readonly raw?: RawDocument; readonly problems: readonly FileProblem[] }> {
  const { name, size } = file
  const tooLarge = { code: 'job.tooLarge', data: { bytes: size, most: limits.bytes }, file: name }
  if (size > limits.bytes) return { problems: [tooLarge] }
  const parsed = parseJob(new Uint8Array(await file.arrayBuffer()), { name })
  if (!parsed.document) return { problems: ofFile(name, parsed.problems) }
  const { problems, readOnly } = project(parsed.document, {
    strict: true,
    locate: parsed.locate,
    catalogueIds: catalogueIds.sheets,
    consumableIds: catalogueIds.priced,
  })
  const all = [...parsed.problems, ...problems].sort(byPlace)
  const errors = all.filter(({ severity }) => severity === 'error')
  // As on the command line: one of a newer version has only notes, and is refused by them.
  return { raw: parsed.document, problems: ofFile(name, readOnly && errors.length === 0 ? all : errors) }
}

export type WeatherRead = {
  readonly given?: GivenWeather
  readonly problems: readonly FileProblem[]
  /** What was taken how, of a file that reads. */
  readonly notes?: readonly FileProblem[]
  /** The table as it looks, where a person may say what its columns are. */
  readonly table?: TableLook
}

/** @param hints what a person says of a table: without them, one whose names say nothing is shown to be asked about. */
export async function readWeather(file: GivenFile, hints?: TableHints): Promise<WeatherRead> {
  const { name, size } = file
  const tooLarge = {
    code: 'intake.fileTooLarge',
    data: { sizeBytes: size, mostBytes: mostWeatherBytes },
    file: name,
  }
  if (size > mostWeatherBytes) return { problems: [tooLarge] }
  const bytesGiven = new Uint8Array(await file.arrayBuffer())
  const first = readSeries(bytesGiven, hints)
  const asked = first.ok || first.table || hints ? first : readSeries(bytesGiven, { columns: {} })
  const read = asked.ok || asked.table ? asked : first
  if (!read.ok) return { problems: ofFile(name, read.problems), ...(read.table ? { table: read.table } : {}) }
  const bytes = new TextEncoder().encode(writeWeatherCsv(read.series))
  const given = { hash: seriesHash(read.series), bytes, typicalYear: read.series.typicalYear === true }
  return { given, problems: [], notes: ofFile(name, read.problems) }
}

const ofFile = (file: string, problems: readonly LineProblem[]): readonly FileProblem[] =>
  problems.map((problem) => ({ ...problem, file }))
