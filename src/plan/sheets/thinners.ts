/** Which thinner of a sheet's list suits an air and a way of putting the paint on. */
import { planningC, type Work } from '#job'
import type { ResolvedSheet, Sure, Thinner } from '../types.ts'

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
