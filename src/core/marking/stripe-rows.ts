/** The numbers to strike a stripe with, station by station. Boat frame, metres. */
import type { Hull } from '#core/boat'
import { type LoftLine, loftLineAt, loftParameterAt, rowGirthTo, rowTopmost } from '#core/geometry'
import type { CurvePlaces } from './stripe-curve.ts'

export type StripeRow = {
  /** Forward of the aftmost point. */
  readonly xM: number
  /** Plumb, above the floating waterline. */
  readonly lowerM: number
  readonly upperM: number
  /** From lower to upper edge along the section of the hull, never less than the plumb width. */
  readonly girthM: number
  /** Of either edge off the centreline. */
  readonly lowerHalfBreadthM: number
  readonly upperHalfBreadthM: number
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
    const to = placeAt(row, heights.upperM)
    if (to === undefined) return { rows, offHull: { xM, heightM: heights.upperM } }
    // At the stem the lower edge begins where the section does.
    const from = placeAt(row, heights.lowerM) ?? { girthM: 0, halfBreadthM: 0 }
    rows.push({
      xM,
      ...heights,
      girthM: to.girthM - from.girthM,
      lowerHalfBreadthM: from.halfBreadthM,
      upperHalfBreadthM: to.halfBreadthM,
    })
  }
  return { rows }
}

// Nearer to the stem than this the last two rows would be one.
const apart = 0.001

function rowPlaces({ sternX, stemX }: CurvePlaces, spacingM: number): readonly number[] {
  const steps = Math.ceil((stemX - sternX - apart) / spacingM)
  return [...Array.from({ length: steps }, (_, k) => sternX + k * spacingM), stemX]
}

/** The topmost place at a height: its girth from the keel, and how far off the centreline it is. */
function placeAt(
  row: LoftLine,
  height: number,
): { readonly girthM: number; readonly halfBreadthM: number } | undefined {
  const point = rowTopmost(row, (_x, _y, z) => z - height)
  return point && { girthM: rowGirthTo(row, point), halfBreadthM: point.y }
}
