/** Inputs that the film sums share. */
import type { SumField } from './field.ts'

export const solidsInput: SumField = {
  name: 'solids',
  dimension: 'share',
  required: true,
  limits: { over: 0, atMost: 1 },
  doc: 'Volume solids from the data sheet, before thinning.',
  example: '50 %',
}

export const dryFilmInput: SumField = {
  name: 'dryFilm',
  dimension: 'length',
  required: true,
  limits: { over: 0, atMost: 0.05 },
  doc: 'Dry film of one coat.',
  example: '50 µm',
}

export const thinnerInput: SumField = {
  name: 'thinner',
  dimension: 'share',
  required: false,
  default: '0 %',
  limits: { atLeast: 0, atMost: 1 },
  doc: 'Thinner as a share of the paint, base and hardener together, by volume.',
  example: '10 %',
}
