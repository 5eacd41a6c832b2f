/** A person's sheet completed from its generic one, every figure marked with where it came from. */
import { cureTable } from '#core/cure'
import type { Certainty } from '#core/note'
import type { ClockPoint, Figure, Sheet } from '#job'
import type { ClockName, ResolvedSheet, Sure } from './types.ts'

/** A generic sheet as the catalogue has it, with the certainty of each of its cells. */
export type GenericSheet = { readonly sheet: Sheet; readonly certainty: Readonly<Record<string, Certainty>> }

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
  | 'humidityMost'
  | 'dewMargin'
  | 'flashPoint'

export type Resolution = { readonly sheet: ResolvedSheet; readonly assumed: readonly string[] }

/** Own figure first, then the generic sheet's, then the limits that hold for paint in general. */
export function resolveSheet(own: Sheet, generic: GenericSheet | undefined): Resolution {
  const figure = (key: FigureKey): Sure<number> | undefined => figureOf(own, generic, key)
  const clocks = Object.fromEntries(
    clockNames.flatMap((name) => {
      const found = clockOf(own, generic, name)
      return found ? [[name, found]] : []
    }),
  )
  const sheet: ResolvedSheet = {
    id: own.id,
    name: own.name ?? generic?.sheet.name ?? own.id,
    family: own.family ?? generic?.sheet.family ?? 'unknown',
    role: own.role ?? generic?.sheet.role ?? 'finish',
    colour: own.colour ?? '',
    shade: own.shade ?? '',
    ...(own.like === undefined ? {} : { generic: own.like }),
    mix: mixOf(own, generic),
    ...present('volumeSolids', figure('volumeSolids')),
    ...present('dryFilmM', figure('dryFilm')),
    ...present('coverageM2PerM3', figure('coverage')),
    ...present('thinnerMost', figure('thinnerMost')),
    ...present('densityA', figure('densityA')),
    ...present('densityB', figure('densityB')),
    ...present('densityThinner', figure('densityThinner')),
    ...present('flashPointC', figure('flashPoint')),
    thinnerShare: figure('thinnerShare') ?? { value: 0, certainty: 'assumed' },
    airLeastC: figure('airLeast') ?? { value: 10, certainty: 'assumed' },
    airMostC: figure('airMost') ?? { value: 30, certainty: 'assumed' },
    humidityMost: figure('humidityMost') ?? { value: 0.85, certainty: 'assumed' },
    dewMarginK: figure('dewMargin') ?? { value: 3, certainty: 'assumed' },
    clocks,
    isocyanate: own.isocyanate ?? generic?.sheet.isocyanate ?? false,
  }
  return { sheet, assumed: assumedIn(sheet) }
}

function figureOf(own: Sheet, generic: GenericSheet | undefined, key: FigureKey): Sure<number> | undefined {
  const given: Figure | undefined = own[key]
  if (given) return { value: given.value, certainty: given.certainty === 'assumed' ? 'assumed' : 'sheet' }
  const typical: Figure | undefined = generic?.sheet[key]
  return typical && { value: typical.value, certainty: generic?.certainty[key] ?? 'assumed' }
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

function mixOf(own: Sheet, generic: GenericSheet | undefined): Sure<readonly number[]> {
  if (own.mix) return { value: own.mix.parts, certainty: 'sheet' }
  const typical = generic?.sheet.mix
  return typical
    ? { value: typical.parts, certainty: generic?.certainty.mix ?? 'assumed' }
    : { value: [1], certainty: 'assumed' }
}

const present = <K extends string>(key: K, value: Sure<number> | undefined) =>
  (value === undefined ? {} : { [key]: value }) as { readonly [P in K]?: Sure<number> }

/** Names of the figures nobody gave. */
function assumedIn(sheet: ResolvedSheet): readonly string[] {
  const plain = Object.entries(sheet).filter(([, value]) => isSure(value) && value.certainty === 'assumed')
  const clocks = Object.entries(sheet.clocks).filter(([, value]) => value.certainty === 'assumed')
  return [...plain, ...clocks].map(([name]) => name).sort()
}

const isSure = (value: unknown): value is Sure<unknown> =>
  typeof value === 'object' && value !== null && 'certainty' in value
