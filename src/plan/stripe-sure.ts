/** How sure the numbers of a stripe are: one that a guess moves by more than a tenth is a guess itself. */
import type { StripeInput, StripeRow, StripeTable } from '#core/marking'
import type { Certainty } from '#core/note'
import type { RowSure } from './types.ts'

export type StripeSureInput = {
  /** Of the heights and widths, the ones that somebody measured. */
  readonly measured: ReadonlySet<keyof StripeInput>
  readonly table: StripeTable
}

/** How far off a guess at a height or width may well be; assumed. */
const GUESS_OFF = 0.5
/** A figure that moves by more than this share is no surer than what moves it. */
const MOVED = 0.1

type Place = 'Stern' | 'Low' | 'Stem'
const places = ['Stern', 'Low', 'Stem'] as const

/**
 * In the order of the rows. Both edges are parabolas with their vertex at the low point, so a height half off at one
 * place moves each row by a known share of that half; the width on the skin moves as the plumb width does.
 */
export function stripeSure({ measured, table }: StripeSureInput): readonly RowSure[] {
  const guessed = (what: 'height' | 'width') => places.filter((place) => !measured.has(`${what}${place}M`))
  const [heights, widths] = [guessed('height'), guessed('width')]
  const x: Readonly<Record<Place, number>> = { Stern: table.sternXM, Low: table.lowXM, Stem: table.stemXM }
  const at = (place: Place) => nearest(table.rows, x[place])
  return table.rows.map((row) => {
    const move = (place: Place, of: (row: StripeRow) => number): number =>
      GUESS_OFF * weight(row.xM, place, x) * Math.abs(of(at(place)))
    const byHeight = Math.max(0, ...heights.map((place) => move(place, lowerOf)))
    const byWidth = Math.max(0, ...widths.map((place) => move(place, widthOf)))
    return {
      lower: sureOf(byHeight, row.lowerM),
      upper: sureOf(Math.max(byHeight, byWidth), row.upperM),
      girth: sureOf(byWidth, widthOf(row)),
    }
  })
}

const lowerOf = ({ lowerM }: StripeRow): number => lowerM
const widthOf = ({ lowerM, upperM }: StripeRow): number => upperM - lowerM

const sureOf = (movedM: number, figureM: number): Certainty =>
  movedM > MOVED * Math.abs(figureM) ? 'assumed' : 'worked'

/** Share of a place's height that a row has, by the parabolas of the stripe. */
function weight(rowX: number, place: Place, x: Readonly<Record<Place, number>>): number {
  const end: Place = rowX < x.Low ? 'Stern' : 'Stem'
  const share = ((rowX - x.Low) / (x[end] - x.Low)) ** 2
  if (place === 'Low') return 1 - share
  return place === end ? share : 0
}

/** The low point lies between rows, where the parabola is level. */
const nearest = (rows: readonly StripeRow[], xM: number): StripeRow =>
  rows.reduce((best, row) => (Math.abs(row.xM - xM) < Math.abs(best.xM - xM) ? row : best))
