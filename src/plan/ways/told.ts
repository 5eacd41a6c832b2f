/** What ways are told from: the plan with the documents and the catalogue it was made of. */
import type { Catalogue } from '#catalogue'
import type { Figure, MoneyTerms, Work } from '#job'
import type { Known } from '../known.ts'
import type { Plan, ResolvedSheet, Sure, ZoneArea } from '../types.ts'
import { type CellAt, given, type Part } from './way.ts'

export type Told = {
  readonly plan: Plan
  readonly work: Work
  readonly money?: MoneyTerms
  readonly catalogue: Catalogue
  readonly known: Known
}

export const zoneOf = ({ plan }: Told, id: string): ZoneArea | undefined =>
  [...plan.surfaces.zones, ...plan.marks.zones].find((zone) => zone.id === id)

export const sheetOf = ({ plan }: Told, id: string): ResolvedSheet | undefined =>
  plan.buildUps.sheets.find((sheet) => sheet.id === id)

export const workCell = (section: string, item: string | undefined, key: string): CellAt => ({
  part: 'work',
  section,
  ...(item === undefined ? {} : { item }),
  key,
})

/** A quantity that stands in the document as a person wrote it. */
export const written = (part: Omit<Part, 'kind' | 'value' | 'certainty'>, figure: Figure): Part =>
  given({ ...part, value: figure.value, certainty: figure.certainty })

/** A whole number from the document; nobody guesses at those. */
export const counted = (name: string, value: number, more: Pick<Part, 'at' | 'of'> = {}): Part =>
  given({ name, key: 'count', value, certainty: 'measured', ...more })

/** A limit of the shop, with where the catalogue has it from. */
export function limitPart(
  { catalogue }: Told,
  key: keyof Catalogue['limits']['sources'],
  part: Omit<Part, 'kind' | 'certainty' | 'source'>,
): Part {
  const origin = catalogue.limits.sources[key]
  return given({ ...part, certainty: origin?.certainty ?? 'assumed', source: origin?.source ?? 'assumed' })
}

type SheetKey = 'volumeSolids' | 'dryFilm' | 'coverage' | 'thinnerShare' | 'mix'

/** A figure of a product: from its own sheet, else from the generic one, with the source of either. */
export function sheetPart(
  told: Told,
  sheet: ResolvedSheet,
  cell: SheetKey,
  part: Omit<Part, 'kind' | 'certainty' | 'source' | 'at' | 'of'> & Pick<Sure<number>, 'certainty'>,
): Part {
  return given({
    ...part,
    of: sheet.name,
    at: workCell('sheets', sheet.id, cell),
    source: sourceOf(told, sheet, cell),
  })
}

function sourceOf({ work, catalogue }: Told, sheet: ResolvedSheet, cell: SheetKey): string {
  const own = work.sheets.find(({ id }) => id === sheet.id)
  if (own?.[cell]) return own.source ?? 'sheet'
  const generic = Object.entries(catalogue.sheets).find(([id]) => id === sheet.generic)?.[1]
  return generic?.sources[cell]?.source ?? 'assumed'
}
