/** A raw document to what the plan reads: total, strict or lenient about the unknown, sharing what did not change. */
import type { Sections } from './field.ts'
import { errorAt, type FoundProblem, noteAt, placed } from './found-problem.ts'
import { limits } from './limits.ts'
import { knownSteps, type MigrateOptions, migrate } from './migrate.ts'
import { logSection, partSections, versionKey } from './parts.ts'
import { below } from './pointer.ts'
import { byPlace, type Locate, type Problem, quote } from './problem.ts'
import { entryOf, isMap, type RawDocument } from './raw.ts'
import { readCell } from './read-cell.ts'
import { unknownKey } from './read-cells.ts'
import { type ManyState, readMany } from './read-many.ts'
import { type OneState, readOne, shapeOf } from './read-one.ts'
import { type Item, type Targets, targetsFirst } from './references.ts'
import { share } from './share.ts'
import { checkStations, type StationState } from './station-rules.ts'
import type { Log, MoneyTerms, Work } from './types.ts'

export type ProjectOptions = {
  /** True for files: unknown keys are errors. False for shared documents: they are kept and noted. */
  readonly strict: boolean
  /** The last projection of the same document; what did not change keeps its identity. */
  readonly previous?: Projected
  /** Ids that `like` may name; not checked when left out. */
  readonly catalogueIds?: readonly string[]
  /** Ids that consumable prices may name; not checked when left out. */
  readonly consumableIds?: readonly string[]
  /** From `parseJob`: gives problems their line and column. */
  readonly locate?: Locate
  readonly migrations?: MigrateOptions
}

export type Projected = {
  readonly work: Work
  readonly money?: MoneyTerms
  readonly log: Log
  /** By place in the file. */
  readonly problems: readonly Problem[]
  /** A stand-in holds the place of a required cell of the job, boat, place or terms: nothing to plan with yet. */
  readonly complete: boolean
  /** Written by a newer program: show it, do not change it. */
  readonly readOnly: boolean
  /** What makes the next projection fast; not for others. */
  readonly memory: Memory
}

type PartState = {
  readonly one: ReadonlyMap<string, OneState>
  readonly many: ReadonlyMap<string, ManyState>
  readonly problems: readonly FoundProblem[]
}
type Settings = {
  readonly unknownKeys: 'error' | 'note'
  readonly catalogueIds: readonly string[] | undefined
  readonly consumableIds: readonly string[] | undefined
  /** Made once from the two lists, so that they stay the same sets from one projection to the next. */
  readonly targets: Targets
}
export type Memory = {
  readonly settings: Settings
  readonly currency: string | undefined
  readonly work: PartState
  readonly money: PartState | undefined
  readonly log: ManyState
  readonly stations: StationState
}

/**
 * Reads every cell. Never throws: what is bad is a problem at its place, and the projection goes on without that cell,
 * or without the item when the cell is required. Required cells of sections of one map have stand-ins, and `complete`
 * is then false.
 */
export const project = (raw: RawDocument, options: ProjectOptions): Projected => {
  const given = isMap(raw) ? raw : nothing
  const { document, newer, unclear } = migrate(given, options.migrations ?? knownSteps)
  const { previous } = options
  const unknownKeys = options.strict && !newer ? 'error' : 'note'
  const older =
    previous && sameSettings(previous.memory.settings, options, unknownKeys) ? previous.memory : undefined
  const settings = older?.settings ?? settingsOf(options, unknownKeys)
  const memory = readParts(document, settings, older)
  const problems = [
    ...versionProblems(given, { strict: options.strict, newer, unclear }),
    ...allProblems(memory),
  ].map((found) => placed(found, options.locate))
  const money = memory.money && (projection(partSections.money, memory.money) as unknown as MoneyTerms)
  return {
    work: share(previous?.work, workOf(memory)),
    ...(money ? { money: share(previous?.money, money) } : {}),
    log:
      older && older.log === memory.log
        ? (previous as Projected).log
        : share(previous?.log, byTime(memory.log)),
    problems: problems.sort(byPlace),
    complete: ![memory.work, memory.money].some(standsIn),
    readOnly: newer,
    memory,
  }
}

/** Stands for whatever was put in the place of a document. */
const nothing: RawDocument = { hardstand: '', work: {} }

/** Entries of one moment stay in the order of the collection. */
const byTime = ({ list }: ManyState): Log =>
  [...(list as unknown as Log)].sort((a, b) => Date.parse(a.at) - Date.parse(b.at))

const settingsOf = (
  { catalogueIds, consumableIds }: ProjectOptions,
  unknownKeys: Settings['unknownKeys'],
): Settings => ({
  unknownKeys,
  catalogueIds,
  consumableIds,
  targets: new Map([
    ...(catalogueIds ? [['catalogue', new Set(catalogueIds)] as const] : []),
    ...(consumableIds ? [['consumables', new Set(consumableIds)] as const] : []),
  ]),
})

const sameSettings = (
  settings: Settings,
  { catalogueIds, consumableIds }: ProjectOptions,
  unknownKeys: Settings['unknownKeys'],
): boolean =>
  settings.unknownKeys === unknownKeys &&
  settings.catalogueIds === catalogueIds &&
  settings.consumableIds === consumableIds

const standsIn = (part: PartState | undefined): boolean =>
  part !== undefined && [...part.one.values()].some((state) => state.standsIn)

type VersionFacts = { readonly strict: boolean; readonly newer: boolean; readonly unclear: boolean }

const versionProblems = (
  { hardstand }: RawDocument,
  { strict, newer, unclear }: VersionFacts,
): readonly FoundProblem[] => {
  const found = typeof hardstand === 'string' ? quote(hardstand) : ''
  const pointer = below('', versionKey)
  const at = strict ? errorAt : noteAt
  if (newer) return [at(pointer, 'job.newerVersion', { found })]
  if (!unclear) return []
  return found === ''
    ? [at('', 'job.noVersion', { accepted: '1' })]
    : [at(pointer, 'job.version', { found, accepted: '1' })]
}

const allProblems = ({ work, money, log, stations }: Memory): readonly FoundProblem[] => [
  ...[work, money].flatMap((part) =>
    part
      ? [
          ...part.problems,
          ...[...part.one.values(), ...part.many.values()].flatMap((state) => state.problems),
        ]
      : [],
  ),
  ...log.problems,
  ...stations.problems,
]

const readParts = (raw: RawDocument, settings: Settings, older: Memory | undefined): Memory => {
  const work = readPart(
    { name: 'work', raw: raw.work, settings, currency: undefined, packs: undefined },
    older?.work,
  )
  const packs = work.many.get('packs')?.ids
  const currency = currencyIn(raw.money)
  const olderMoney = older?.currency === currency ? older?.money : undefined
  const money =
    raw.money === undefined
      ? undefined
      : readPart({ name: 'money', raw: raw.money, settings, currency, packs }, olderMoney)
  const given = { stations: listOf(work, 'stations'), points: listOf(work, 'points') }
  return {
    settings,
    currency,
    work,
    money,
    log: readLog(raw, settings, older?.log),
    stations: checkStations(given, older?.stations),
  }
}

const listOf = (part: PartState, section: string): readonly Item[] => part.many.get(section)?.list ?? []

/** Prices without a currency are in that of the terms, so it has to be known before they are read. */
const currencyIn = (money: unknown): string | undefined => {
  const terms = isMap(money) ? entryOf(money, 'terms') : undefined
  const currency = isMap(terms) ? entryOf(terms, 'currency') : undefined
  if (typeof currency !== 'string') return undefined
  const reading = readCell({ kind: 'currency', doc: '' }, currency, { currency: undefined })
  return reading.ok ? (reading.value as string) : undefined
}

const readLog = (raw: RawDocument, settings: Settings, older: ManyState | undefined): ManyState =>
  readMany(
    {
      name: 'log',
      section: logSection,
      raw: raw.log,
      pointer: '/log',
      context: { currency: undefined },
      unknownKeys: settings.unknownKeys,
      targets: new Map(),
      most: limits.logEntries,
    },
    older,
  )

type PartTask = {
  readonly name: 'work' | 'money'
  readonly raw: unknown
  readonly settings: Settings
  readonly currency: string | undefined
  readonly packs: ReadonlySet<string> | undefined
}

const readPart = (
  { name, raw, settings, currency, packs }: PartTask,
  older: PartState | undefined,
): PartState => {
  const sections = partSections[name]
  const part = isMap(raw) ? raw : {}
  const one = new Map<string, OneState>()
  const many = new Map<string, ManyState>()
  const targets = new Map([...settings.targets, ...(packs ? [['packs', packs] as const] : [])])
  for (const section of targetsFirst(sections)) {
    const table = sections[section] as Sections[string]
    const pointer = below(`/${name}`, section)
    const { unknownKeys } = settings
    const task = {
      name: section,
      section: table,
      raw: entryOf(part, section),
      pointer,
      context: { currency },
      unknownKeys,
    }
    if (table.shape === 'one') one.set(section, readOne(task, older?.one.get(section)))
    else {
      const state = readMany({ ...task, targets, most: limits.itemsPerSection }, older?.many.get(section))
      many.set(section, state)
      targets.set(section, state.ids)
    }
  }
  return { one, many, problems: partProblems(name, raw, settings) }
}

const partProblems = (name: 'work' | 'money', raw: unknown, settings: Settings): readonly FoundProblem[] => {
  const pointer = `/${name}`
  if (raw === undefined || raw === null) return []
  if (!isMap(raw)) return [errorAt(pointer, 'job.shape', { found: shapeOf(raw), accepted: 'map' }, 'key')]
  const known = Object.keys(partSections[name])
  return Object.keys(raw)
    .filter((key) => !known.includes(key))
    .map((found) => unknownKey({ found, known, pointer, severity: settings.unknownKeys }))
}

const projection = (sections: Sections, { one, many }: PartState): Readonly<Record<string, unknown>> =>
  Object.fromEntries(
    Object.keys(sections).map((name) => [name, one.get(name)?.cells ?? many.get(name)?.list ?? []]),
  )

/** The stations as their own rules leave them. */
const workOf = ({ work, stations }: Memory): Work => ({
  ...(projection(partSections.work, work) as unknown as Work),
  stations: stations.stations as unknown as Work['stations'],
  points: stations.points as unknown as Work['points'],
})
