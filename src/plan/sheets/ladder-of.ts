/** The grits with which a surface is brought to what the next layer wants, from what lies there. */
import { fillsScratches, type Grit, gritLadder } from '#core/coating'
import type { Note } from '#core/note'
import type { Known } from '../known.ts'
import type { ZoneLayer } from '../types.ts'

/** A knife leaves ridges: filler is cut with this before anything finer. */
const FILLER_CUT = 'P80'

/**
 * @param surface.filled a filler or fairing compound lies there. @param surface.sandBefore as the layer says it.
 * @returns grits by name, coarse to fine; none where nothing is sanded.
 */
export function ladderOf(
  surface: { readonly filled: boolean; readonly sandBefore: string },
  { grits, gritStep, rates }: Pick<Known, 'grits' | 'gritStep' | 'rates'>,
): readonly string[] {
  const { filled, sandBefore } = surface
  if (sandBefore === '' || sandBefore === 'none') return []
  const last = grits.find(({ name }) => name === sandBefore)
  if (!last) return [sandBefore]
  // Paper that the shop has a rate for is paper that it has.
  const atHand = grits.filter(({ name }) => name.startsWith('P') && name.slice(1) in rates.sandHoursPerM2)
  const first = filled ? atHand.find(({ name }) => name === FILLER_CUT) : undefined
  return gritLadder({ first, last, grits: atHand, mostRatio: gritStep.value }).map(({ name }) => name)
}

/** Scratches of the last grit that all coats of a layer together do not level. */
export function scratchNotes(layer: ZoneLayer, { grits, gritOverFilm }: Known): readonly Note[] {
  const last = grits.find(({ name }) => name === layer.sandBefore)
  if (!last || !layer.dryFilmM || layer.role === 'filler' || layer.role === 'fairing') return []
  const filmM = layer.dryFilmM.value * layer.coats
  const mostRatio = gritOverFilm.value
  if (fillsScratches({ sizeM: last.sizeM, filmM, mostRatio })) return []
  return [
    {
      code: 'buildup.scratchesShow',
      severity: 'caution',
      data: {
        zone: layer.zone,
        layer: layer.layer,
        name: layer.name,
        grit: last.name,
        filmUm: filmM * 1e6,
        finer: finerFor(filmM * mostRatio, grits)?.name ?? '',
      },
      source: 'assumed',
    },
  ]
}

/** The coarsest of the same system whose scratches are still levelled. */
const finerFor = (mostM: number, grits: readonly Grit[]): Grit | undefined =>
  grits
    .filter(({ name, sizeM }) => name.startsWith('P') && sizeM <= mostM)
    .sort((a, b) => b.sizeM - a.sizeM)[0]
