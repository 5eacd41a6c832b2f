/** The numbers to strike a stripe with, station by station. Boat frame, metres. */
import type { Hull } from '#core/boat'
import {
  type Level,
  type LoftLine,
  loftLineAt,
  loftParameterAt,
  rowGirthTo,
  rowTopmost,
} from '#core/geometry'
import type { CurvePlaces } from './stripe-curve.ts'

export type StripeRow = {
  /** Forward of the aftmost point. */
  readonly xM: number
  /** Plumb, above the floating waterline. */
  readonly lowerM: number
  readonly upperM: number
  /** From lower to upper edge along the section of the hull, never less than the plumb width. */
  readonly girthM: number
}

export type RowsAsked = {
  readonly lower: (x: number) => number
  readonly upper: (x: number) => number
  readonly places: CurvePlaces
  readonly spacingM: number
}

export type StripeRows = {
  readonly rows: readonly StripeRow[]
  /** First place where the hull does not reach the upper edge, and that edge's height. */
  readonly offHull?: { readonly xM: number; readonly heightM: number }
}

/** A row at the aft end, one each spacing, and one at the stem. */
export function stripeRows(hull: Hull, { lower, upper, places, spacingM }: RowsAsked): StripeRows {
  const rows: StripeRow[] = []
  for (const xM of rowPlaces(places, spacingM)) {
    const row = loftLineAt(hull.surface, loftParameterAt(hull.surface, xM))
    const heights = { lowerM: lower(xM), upperM: upper(xM) }
    const to = girthAt(row, heights.upperM)
    if (to === undefined) return { rows, offHull: { xM, heightM: heights.upperM } }
    // At the stem the lower edge begins where the section does.
    rows.push({ xM, ...heights, girthM: to - (girthAt(row, heights.lowerM) ?? 0) })
  }
  return { rows }
}

// Nearer to the stem than this the last two rows would be one.
const apart = 0.001

function rowPlaces({ sternX, stemX }: CurvePlaces, spacingM: number): readonly number[] {
  const steps = Math.ceil((stemX - sternX - apart) / spacingM)
  return [...Array.from({ length: steps }, (_, k) => sternX + k * spacingM), stemX]
}

/** Girth from the keel to the topmost place at a height. */
function girthAt(row: LoftLine, height: number): number | undefined {
  const level: Level = (_x, _y, z) => z - height
  const point = rowTopmost(row, level)
  return point === undefined ? undefined : rowGirthTo(row, point)
}
