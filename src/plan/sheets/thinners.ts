/** Which thinner of a sheet's list suits an air and a way of putting the paint on. */
import type { Note } from '#core/note'
import { planningC, type Work } from '#job'
import type { ResolvedSheet, Sure, Thinner, ZoneLayer } from '../types.ts'

/** The thinners of one sheet, in the order of the document. */
export const thinnersOf = (sheet: string, thinners: Work['thinners']): readonly Thinner[] =>
  thinners
    .filter((one) => one.sheet === sheet)
    .map(({ name, method, airFrom, airUntil, least, most }) => ({
      name: name ?? '',
      method: method ?? 'any',
      airFromC: airFrom?.value ?? Number.NEGATIVE_INFINITY,
      airUntilC: airUntil?.value ?? Number.POSITIVE_INFINITY,
      least: least?.value ?? 0,
      most: most.value,
    }))

/** The one that names the method goes before one for any; then the one with the narrower air. */
export function thinnerFor(
  { thinners }: Pick<ResolvedSheet, 'thinners'>,
  at: { readonly method: string; readonly airC?: number },
): Thinner | undefined {
  const airC = at.airC ?? planningC
  const span = (one: Thinner) => one.airUntilC - one.airFromC
  return thinners
    .filter(({ method, airFromC, airUntilC }) => {
      const suits = method === 'any' || method === at.method
      return suits && airC >= airFromC && airC <= airUntilC
    })
    .sort((a, b) => Number(a.method === 'any') - Number(b.method === 'any') || span(a) - span(b))[0]
}

/** Between least and most one begins in the middle and sneaks up. */
export const usualShare = ({ least, most }: Thinner): Sure<number> => ({
  value: (least + most) / 2,
  certainty: 'worked',
})

/** Over the most or under the least of the grade that suits, or no grade that suits at all. */
export function thinnerNotes(layer: ZoneLayer, sheet: ResolvedSheet): readonly Note[] {
  const about = { zone: layer.zone, layer: layer.layer, name: layer.name }
  const share = layer.thinnerShare.value
  const suits = thinnerFor(sheet, layer)
  if (!suits && sheet.thinners.length > 0 && share > 0)
    return [
      {
        code: 'buildup.thinnerNone',
        severity: 'warning',
        data: { ...about, method: layer.method, airC: planningC },
      },
    ]
  const most = suits?.most ?? sheet.thinnerMost?.value
  const grade = suits?.name ? { grade: suits.name } : {}
  if (most !== undefined && share > most + ROUNDED_SHARE)
    return [
      {
        code: 'buildup.thinnerOver',
        severity: 'warning',
        data: { ...about, ...grade, thinnerShare: share, mostShare: most },
      },
    ]
  if (suits && share < suits.least - ROUNDED_SHARE)
    return [
      {
        code: 'buildup.thinnerUnder',
        severity: 'caution',
        data: { ...about, ...grade, thinnerShare: share, leastShare: suits.least },
      },
    ]
  return []
}

const ROUNDED_SHARE = 1e-9
