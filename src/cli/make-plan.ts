/** From the arguments of a command to a plan: the job, its weather, the moment, the seed. */
import { readFileSync } from 'node:fs'
import { catalogue } from '#catalogue'
import { noteText } from '#papers'
import { type Plan, type PlanInput, plan } from '#plan'
import type { Flag, Flags } from './command.ts'
import { textFlag } from './command.ts'
import { CliFault } from './fault.ts'
import { type LoadedJob, loadJob } from './load-job.ts'
import { type WeatherOfJob, weatherFor } from './load-weather.ts'
import { plainWords } from './plain-words.ts'

export const planFlags: readonly Flag[] = [
  { flags: '--weather <file>', doc: 'hourly weather instead of the file the job names' },
  {
    flags: '--typical <file>',
    doc: 'typical year that goes on where the weather ends, instead of the one the job names',
  },
  { flags: '--logger <file>', doc: 'readings of a logger under the shelter, to fit it by' },
  { flags: '--now <moment>', doc: 'plan as if it were this moment, for example 2027-04-10T08:00' },
  { flags: '--gaps', doc: 'plan although the weather has gaps: their hours count as unknown' },
  { flags: '--seed <number>', doc: 'seed for whatever is drawn at random; 1 when left out' },
]

export type MadePlan = WeatherOfJob & {
  readonly job: LoadedJob
  readonly input: PlanInput
  readonly plan: Plan
}

/** Version of the program, as package.json has it. */
export const appVersion = (): string =>
  JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8')).version as string

export async function makePlan(path: string, flags: Flags): Promise<MadePlan> {
  const job = await loadJob(path)
  const found = await weatherFor(job, {
    path: textFlag(flags, 'weather'),
    typical: textFlag(flags, 'typical'),
    logger: textFlag(flags, 'logger'),
    gaps: flags.gaps === true,
  })
  const { work, money, log } = job.projected
  const input: PlanInput = {
    work,
    ...(money ? { money } : {}),
    log,
    ...(found.weather ? { weather: found.weather.series } : {}),
    ...(found.typical ? { typical: found.typical.series } : {}),
    ...(found.logger ? { logger: found.logger.series } : {}),
    catalogue,
    nowMs: momentOf(textFlag(flags, 'now')),
    seed: seedOf(textFlag(flags, 'seed')),
    app: appVersion(),
  }
  return { job, ...found, input, plan: plan(input) }
}

/** Sentences for what keeps the plan from working as it stands. */
export const faultLines = ({ plan: made, job }: MadePlan): readonly string[] =>
  made.notes
    .filter((note) => note.severity === 'fault')
    .map((note) => `${job.path}: ${noteText(made, note, job.words)}`)

/** A moment without an offset is taken as universal time, so that a plan is the same wherever it is made. */
function momentOf(text: string | undefined): number {
  if (text === undefined) return Date.now()
  const shaped = /^\d{4}-\d{2}-\d{2}(T\d{2}:\d{2}(:\d{2})?(Z|[+-]\d{2}:\d{2})?)?$/.test(text)
  const zoned = /(Z|[+-]\d{2}:\d{2})$/.test(text) || text.length === 10 ? text : `${text}Z`
  const ms = shaped ? Date.parse(zoned) : Number.NaN
  if (Number.isNaN(ms)) throw new CliFault([plainWords.sentence('cli.badMoment', { text })], 2)
  return ms
}

function seedOf(text: string | undefined): number {
  if (text === undefined) return 1
  if (!/^\d{1,9}$/.test(text)) throw new CliFault([plainWords.sentence('cli.badSeed', { text })], 2)
  return Number(text)
}
