/** Spread: how far a litre goes at a dry film, and how much an area takes. */
import { practicalSpread, spreadingRate, wetFilm } from '#core/coating'
import type { Note } from '#core/note'
import { dryFilmInput, solidsInput } from './film-inputs.ts'
import { defineSum, how, result } from './sum.ts'

const source = 'MIL-HDBK-1110, section 2.1.5'

export const spread = defineSum({
  id: 'spread',
  doc: 'Spreading rate of a paint from its volume solids and the dry film wanted.',
  inputs: [
    solidsInput,
    dryFilmInput,
    {
      name: 'loss',
      dimension: 'share',
      required: false,
      limits: { atLeast: 0, atMost: 0.9 },
      doc: 'Share of the paint that never becomes film: 10 to 15 % by brush or roller.',
      example: '15 %',
    },
    {
      name: 'area',
      dimension: 'area',
      required: false,
      limits: { over: 0, atMost: 1e5 },
      doc: 'Area of one coat, for the volume it takes.',
      example: '28 m²',
    },
  ],
  work: (given) => {
    const paint = { volumeSolids: given.number('solids'), dryFilm: given.number('dryFilm') }
    const theoretical = spreadingRate(paint)
    const loss = given.optional('loss')
    const practical = loss === undefined ? theoretical : practicalSpread({ theoretical, loss })
    const area = given.optional('area')
    const figures = { solidsShare: paint.volumeSolids, dryFilmUm: paint.dryFilm * 1e6 }
    const theoreticalM2PerL = theoretical / 1000
    const practicalM2PerL = practical / 1000
    return {
      results: [
        result('theoreticalM2PerL', theoreticalM2PerL, 'coverage'),
        ...(loss === undefined ? [] : [result('practicalM2PerL', practicalM2PerL, 'coverage')]),
        ...(area === undefined ? [] : [result('volumeL', (1000 * area) / practical, 'volume')]),
        result('wetFilmUm', wetFilm({ ...paint, thinnerShare: 0 }) * 1e6, 'length'),
      ],
      how: [
        how('sums.spreadTheory', { ...figures, theoreticalM2PerL }),
        ...(loss === undefined
          ? []
          : [how('sums.spreadPractical', { theoreticalM2PerL, lossShare: loss, practicalM2PerL })]),
        ...(area === undefined
          ? []
          : [how('sums.spreadVolume', { areaM2: area, practicalM2PerL, volumeL: area / practicalM2PerL })]),
      ],
      notes: loss === undefined ? [noLoss] : [],
      sources: [source],
    }
  },
})

const noLoss: Note = {
  code: 'sums.spreadNoLoss',
  severity: 'missing',
  data: { leastShare: 0.1, mostShare: 0.15 },
  source: 'public spreading-rate table',
}
