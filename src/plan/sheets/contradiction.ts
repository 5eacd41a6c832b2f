/** A sheet whose solids, film and coverage as printed do not go together. */
import { spreadingRate } from '#core/coating'
import type { Note } from '#core/note'
import type { ResolvedSheet } from '../types.ts'

/** A label's coverage may round, and leaves out what is lost: below this share of what solids and film give, assumed. */
const LEAST_OF_THEORETICAL = 0.5
const MOST_OF_THEORETICAL = 1.05

/** Solids, film and coverage of one sheet are two figures and their quotient: a label cannot go beyond it. */
export function contradiction(sheet: ResolvedSheet): readonly Note[] {
  const { volumeSolids, dryFilmM, coverageM2PerM3: printed } = sheet
  if (![volumeSolids, dryFilmM, printed].every((figure) => figure?.certainty === 'sheet')) return []
  const theoretical = spreadingRate({ volumeSolids: volumeSolids!.value, dryFilm: dryFilmM!.value })
  const share = printed!.value / theoretical
  if (share >= LEAST_OF_THEORETICAL && share <= MOST_OF_THEORETICAL) return []
  return [
    {
      code: 'buildup.sheetContradicts',
      severity: 'warning',
      data: {
        sheet: sheet.id,
        name: sheet.name,
        spreadM2PerL: printed!.value / 1000,
        theoreticalM2PerL: theoretical / 1000,
        dryFilmUm: dryFilmM!.value * 1e6,
        reachedUm: (volumeSolids!.value / printed!.value) * 1e6,
      },
      source: 'spread = volume solids / dry film',
    },
  ]
}
