/** A person's sheet completed from its generic one, every figure marked with where it came from. */
import { dryFilm, wetFilmFromSpread } from '#core/coating'
import { cureTable } from '#core/cure'
import type { Certainty, Note } from '#core/note'
import type { ClockPoint, Figure, Sheet, Work } from '#job'
import type { ClockName, ResolvedSheet, Seen, Sure } from '../types.ts'
import { readMixRatio } from './mix-ratio.ts'
import { readWindows, shutBeforeOpen } from './recoat.ts'
import { thinnersOf } from './thinners.ts'

/** A generic sheet as the catalogue has it, with the certainty of each of its cells. */
export type GenericSheet = {
  readonly sheet: Sheet
  readonly certainty: Readonly<Record<string, Certainty>>
  /** Smallest and largest figure of its sources, by cell, in SI. */
  readonly seen: Readonly<Record<string, readonly [number, number]>>
}

const clockNames: readonly ClockName[] = [
  'induction',
  'potLife',
  'touchDry',
  'dryToDew',
  'recoatLeast',
  'recoatMost',
  'dryToSand',
  'dryToTape',
  'dryToTread',
  'dryToFit',
  'dryToSling',
  'dryToCover',
  'fullCure',
]

type FigureKey =
  | 'volumeSolids'
  | 'dryFilm'
  | 'coverage'
  | 'thinnerShare'
  | 'thinnerMost'
  | 'densityA'
  | 'densityB'
  | 'densityThinner'
  | 'airLeast'
  | 'airMost'
  | 'skinLeast'
  | 'skinMost'
  | 'humidityMost'
  | 'dewMargin'
  | 'flashPoint'
  | 'voc'
  | 'openedLife'
  | 'shelfLife'

export type Resolution = {
  readonly sheet: ResolvedSheet
  readonly assumed: readonly string[]
  /** What on the sheet cannot be meant. */
  readonly notes: readonly Note[]
}

/** The rows of the document that belong to sheets without standing on them. */
export type SheetRows = { readonly windows: Work['windows']; readonly thinners: Work['thinners'] }

const noRows: SheetRows = { windows: [], thinners: [] }

/** Own figure first, then the generic sheet's, then the limits that hold for paint in general. */
export function resolveSheet(
  own: Sheet,
  generic: GenericSheet | undefined,
  rows: SheetRows = noRows,
): Resolution {
  const figure = (key: FigureKey): Seen | undefined => figureOf(own, generic, key)
  const name = own.name ?? generic?.sheet.name ?? own.id
  const { recoat, notes: windowNotes } = readWindows({ id: own.id, name }, rows.windows)
  const clocks = withWindows(clocksOf(own, generic), recoat)
  const ratio = readMixRatio(own, {
    base: figure('densityA')?.value,
    hardener: figure('densityB')?.value,
  })
  const sheet: ResolvedSheet = {
    id: own.id,
    name,
    family: own.family ?? generic?.sheet.family ?? 'unknown',
    role: own.role ?? generic?.sheet.role ?? 'finish',
    colour: own.colour ?? '',
    shade: own.shade ?? '',
    ...(generic === undefined ? {} : { generic: generic.sheet.id }),
    mix: ratio.mix ?? mixOf(generic),
    ...present('volumeSolids', figure('volumeSolids')),
    ...present('dryFilmM', filmOf(own, figure)),
    ...present('coverageM2PerM3', figure('coverage')),
    ...present('thinnerMost', figure('thinnerMost')),
    ...present('densityA', figure('densityA')),
    ...present('densityB', figure('densityB')),
    ...present('densityThinner', figure('densityThinner')),
    ...present('skinLeastC', figure('skinLeast')),
    ...present('skinMostC', figure('skinMost')),
    ...present('flashPointC', figure('flashPoint')),
    ...present('vocKgPerM3', figure('voc')),
    ...present('openedLifeH', figure('openedLife')),
    ...present('shelfLifeH', figure('shelfLife')),
    recoat,
    thinners: thinnersOf(own.id, rows.thinners),
    thinnerShare: figure('thinnerShare') ?? { value: 0, certainty: 'assumed' },
    airLeastC: figure('airLeast') ?? { value: 10, certainty: 'assumed' },
    airMostC: figure('airMost') ?? { value: 30, certainty: 'assumed' },
    humidityMost: figure('humidityMost') ?? { value: 0.85, certainty: 'assumed' },
    dewMarginK: figure('dewMargin') ?? { value: 3, certainty: 'assumed' },
    clocks,
    isocyanate: own.isocyanate ?? generic?.sheet.isocyanate ?? false,
  }
  return {
    sheet,
    assumed: assumedIn(sheet),
    notes: [...windowNotes, ...ratio.notes, ...neverOpen(sheet)],
  }
}

/**
 * The film on one's own sheet; else what the coverage printed on it leaves, since a label tells how far a litre goes and
 * another's film would contradict it; else the generic one's.
 */
function filmOf(own: Sheet, figure: (key: FigureKey) => Seen | undefined): Seen | undefined {
  const solids = figure('volumeSolids')
  if (own.dryFilm || !own.coverage || !solids) return figure('dryFilm')
  return filmAtSpread(own.coverage.value, solids)
}

/** The film that a litre leaves which goes so far, m²/m³. */
export const filmAtSpread = (spread: number, solids: Sure<number>): Sure<number> => ({
  value: dryFilm({
    wetFilm: wetFilmFromSpread({ spread, thinnerShare: 0 }),
    volumeSolids: solids.value,
    thinnerShare: 0,
  }),
  certainty: solids.certainty === 'sheet' ? 'worked' : 'assumed',
})

function clocksOf(own: Sheet, generic: GenericSheet | undefined): ResolvedSheet['clocks'] {
  const found = clockNames.map((name) => [name, clockOf(own, generic, name)] as const)
  return Object.fromEntries(found.filter(([, clock]) => clock !== undefined))
}

/**
 * Windows for anything, or else for itself, take the place of the shortest and longest wait; one that is open at once,
 * or never shuts, has no such wait, whatever the generic sheet says.
 */
function withWindows(
  clocks: ResolvedSheet['clocks'],
  recoat: ResolvedSheet['recoat'],
): ResolvedSheet['clocks'] {
  const general =
    recoat.find(({ next }) => next === 'anything') ?? recoat.find(({ next }) => next === 'itself')
  if (!general) return clocks
  const { recoatLeast: _least, recoatMost: _most, ...others } = clocks
  const { least, unsanded } = general.windows
  return {
    ...others,
    ...(least ? { recoatLeast: { value: least, certainty: 'sheet' } } : {}),
    ...(unsanded ? { recoatMost: { value: unsanded, certainty: 'sheet' } } : {}),
  }
}

/** The longest wait of a sheet may not be over before its shortest: told at the temperatures where it is. */
function neverOpen({ id, name, clocks }: ResolvedSheet): readonly Note[] {
  const { recoatLeast, recoatMost } = clocks
  if (!recoatLeast || !recoatMost) return []
  const at = shutBeforeOpen(recoatLeast.value, recoatMost.value)
  if (at.length === 0) return []
  const bothOwn = recoatLeast.certainty === 'sheet' && recoatMost.certainty === 'sheet'
  return [
    {
      code: 'buildup.sheetNeverOpen',
      severity: bothOwn ? 'fault' : 'caution',
      data: { sheet: id, name, count: at.length, airC: at[0]! },
    },
  ]
}

function figureOf(own: Sheet, generic: GenericSheet | undefined, key: FigureKey): Seen | undefined {
  const given: Figure | undefined = own[key]
  if (given) return { value: given.value, certainty: given.certainty === 'assumed' ? 'assumed' : 'sheet' }
  const typical: Figure | undefined = generic?.sheet[key]
  if (!typical) return undefined
  const seen = generic?.seen[key]
  return { value: typical.value, certainty: generic?.certainty[key] ?? 'assumed', ...(seen ? { seen } : {}) }
}

function clockOf(
  own: Sheet,
  generic: GenericSheet | undefined,
  name: ClockName,
): ResolvedSheet['clocks'][ClockName] {
  const given: readonly ClockPoint[] | undefined = own[name]
  if (given && given.length > 0) return { value: cureTable(given), certainty: 'sheet' }
  const typical = generic?.sheet[name]
  return typical && typical.length > 0
    ? { value: cureTable(typical), certainty: generic?.certainty[name] ?? 'assumed' }
    : undefined
}

function mixOf(generic: GenericSheet | undefined): Sure<readonly number[]> {
  const typical = generic?.sheet.mix
  return typical
    ? { value: typical.parts, certainty: generic?.certainty.mix ?? 'assumed' }
    : { value: [1], certainty: 'assumed' }
}

const present = <K extends string>(key: K, value: Seen | undefined) =>
  (value === undefined ? {} : { [key]: value }) as { readonly [P in K]?: Seen }

/** Names of the figures nobody gave. */
function assumedIn(sheet: ResolvedSheet): readonly string[] {
  const plain = Object.entries(sheet).filter(([, value]) => isSure(value) && value.certainty === 'assumed')
  const clocks = Object.entries(sheet.clocks).filter(([, value]) => value.certainty === 'assumed')
  return [...plain, ...clocks].map(([name]) => name).sort()
}

const isSure = (value: unknown): value is Sure<unknown> =>
  typeof value === 'object' && value !== null && 'certainty' in value
