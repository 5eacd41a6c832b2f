/** Wet film: how thick to lay a paint, thinned or not, so that the wanted film is left when it has dried. */
import { solidsAfterThinning, wetFilm } from '#core/coating'
import { dryFilmInput, solidsInput, thinnerInput } from './film-inputs.ts'
import { defineSum, how, result } from './sum.ts'

const source = 'MIL-HDBK-1110, section 2.1.5'

export const wet = defineSum({
  id: 'wet',
  doc: 'Wet film that dries to the wanted film, thinner counted in.',
  inputs: [dryFilmInput, solidsInput, thinnerInput],
  work: (given) => {
    const paint = {
      dryFilm: given.number('dryFilm'),
      volumeSolids: given.number('solids'),
      thinnerShare: given.number('thinner'),
    }
    const wetFilmUm = wetFilm(paint) * 1e6
    const thinned = paint.thinnerShare > 0
    return {
      results: [
        result('wetFilmUm', wetFilmUm, 'length'),
        result('solidsAfterThinningShare', solidsAfterThinning(paint), 'share'),
      ],
      how: [
        how('sums.wetFilm', {
          dryFilmUm: paint.dryFilm * 1e6,
          thinnerShare: paint.thinnerShare,
          solidsShare: paint.volumeSolids,
          wetFilmUm,
        }),
      ],
      notes: thinned ? [] : [{ code: 'sums.wetUnthinned', severity: 'info', data: {}, source }],
      sources: [source],
    }
  },
})
