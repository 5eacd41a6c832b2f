/** The sample jobs as tests use them: read, projected, with their weather, at a fixed moment. */
import { existsSync, readFileSync } from 'node:fs'
import { catalogue, catalogueIds } from '#catalogue'
import { readWeatherCsv } from '#intake'
import { type NewJobAnswers, newJob, type Projected, parseJob, project, type RawDocument } from '#job'
import type { PlanInput } from '#plan'

export type SampleName = 'open-powerboat' | 'deck-only' | 'cruiser-topsides'

/** A moment before each job begins. */
export const NOW_MS = Date.parse('2027-04-10T08:00:00Z')

const consumableIds = catalogueIds.priced

const folder = new URL('../../samples/', import.meta.url)

export function sampleRaw(name: SampleName): RawDocument {
  const parsed = parseJob(new Uint8Array(readFileSync(new URL(`${name}.yaml`, folder))), {
    name: `${name}.yaml`,
  })
  if (!parsed.ok || !parsed.document) throw new Error(`sample ${name}: does not parse`)
  return parsed.document
}

export const projectRaw = (raw: RawDocument, previous?: Projected): Projected =>
  project(raw, {
    strict: true,
    catalogueIds: catalogueIds.sheets,
    consumableIds,
    ...(previous ? { previous } : {}),
  })

export function sampleWeather(name: SampleName): PlanInput['weather'] {
  const file = new URL(`${name}.weather.csv`, folder)
  if (!existsSync(file)) return undefined
  const result = readWeatherCsv(new Uint8Array(readFileSync(file)))
  if (!result.ok) throw new Error(`weather of ${name}: does not read`)
  return result.series
}

/** What `plan` takes, from a projection of the sample. */
export function planInput(projected: Projected, weather: PlanInput['weather']): PlanInput {
  const { work, money, log } = projected
  return {
    work,
    ...(money ? { money } : {}),
    log,
    ...(weather ? { weather } : {}),
    catalogue,
    nowMs: NOW_MS,
    seed: 1,
    app: '0.1.0',
  }
}

export const sampleInput = (name: SampleName): PlanInput =>
  planInput(projectRaw(sampleRaw(name)), sampleWeather(name))

/** A copy of the raw document with one cell set; the path is section, then id and key, or key alone. */
export function withCell(
  raw: RawDocument,
  part: 'work' | 'money',
  path: readonly string[],
  text: string,
): RawDocument {
  return { ...raw, [part]: setIn(raw[part], path, text) }
}

function setIn(node: unknown, path: readonly string[], text: string): unknown {
  const [key, ...rest] = path
  if (key === undefined) return text
  const map = typeof node === 'object' && node !== null ? (node as Readonly<Record<string, unknown>>) : {}
  return { ...map, [key]: setIn(map[key], rest, text) }
}

/** A job of twelve answers: what nobody measured is a share of the deck. */
export const answeredRaw = (kind: NewJobAnswers['kind']): RawDocument =>
  newJob({
    name: 'Test',
    kind,
    length: '9 m',
    beam: '3 m',
    freeboard: '1.2 m',
    start: '2027-05-03',
    shelter: 'shed',
    timeZone: 'Europe/Paris',
    paint: 'one-part',
    deck: true,
  })
