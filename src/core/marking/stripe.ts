/**
 * A boot stripe on the real hull: where its edges run, how wide it lies on the surface, what it covers. Boat frame:
 * x forward from the aftmost point, z up from the floating waterline; metres.
 */
import { type Hull, stripeArea } from '#core/boat'
import type { Note } from '#core/note'
import { curvePlaces } from './curve-places.ts'
import { type StripeInput, settleStripe } from './settle-stripe.ts'
import { type CurvePlaces, stripeCurve, sumOf } from './stripe-curve.ts'
import { fault, stripeFaults, stripeNotes } from './stripe-notes.ts'
import { type StripeRow, stripeRows } from './stripe-rows.ts'

export type StripeTable = {
  /** Where the lower edge ends aft, is lowest, and meets the stem. */
  readonly sternXM: number
  readonly lowXM: number
  readonly stemXM: number
  /** Numbers to strike, from aft to forward; the same on both sides. */
  readonly rows: readonly StripeRow[]
  /** Length of each edge along the hull, one side. */
  readonly lowerLengthM: number
  readonly upperLengthM: number
  /** True surface of the side; the transom is not in it. */
  readonly areaPerSideM2: number
  readonly areaM2: number
  /** Both edges on both sides, taped once; stages and waste are the caller's. */
  readonly tapeM: number
}

export type StripeResult = {
  /** Undefined when a fault note says why. */
  readonly table: StripeTable | undefined
  readonly notes: readonly Note[]
}

/**
 * Table of a boot stripe every `spacingM` along the boat, ends included.
 *
 * Inputs: lower edge above the water and plumb width at stern, low point and stem, m, each of which may be left out
 * (`settleStripe`); spacing 0.02 m or more. Heights are plumb. On a leaning hull the stripe lies wider: girth =
 * height / sin of the angle between hull and level. The stripe is fair seen from the side, not by tape width.
 *
 * No table, and a fault note, when a figure is not a usable number, the hull does not cross the water, or the stripe
 * reaches over the sheer or below the bottom.
 */
export function bootStripe(hull: Hull, input: StripeInput & { readonly spacingM: number }): StripeResult {
  const settled = settleStripe(input, hull.particulars.lengthOverall)
  const faults = stripeFaults(settled, input.spacingM)
  if (faults.length > 0) return { table: undefined, notes: faults }
  const places = curvePlaces(hull, settled.heights)
  if ('code' in places) return { table: undefined, notes: [places] }
  const lower = stripeCurve(settled.heights, places)
  const upper = sumOf(lower, stripeCurve(settled.widths, places))
  const { rows, offHull } = stripeRows(hull, { lower, upper, places, spacingM: input.spacingM })
  if (offHull) return { table: undefined, notes: [fault('marking.stripeOffHull', offHull)] }
  const table = { ...namedPlaces(places), rows, ...measures(hull, lower, upper) }
  return { table, notes: stripeNotes({ hull, rows, settled }) }
}

const namedPlaces = ({ sternX, lowX, stemX }: CurvePlaces) => ({
  sternXM: sternX,
  lowXM: lowX,
  stemXM: stemX,
})

function measures(hull: Hull, lower: (x: number) => number, upper: (x: number) => number) {
  const { area, lowerLength, upperLength } = stripeArea(hull, { zLow: lower, zHigh: upper })
  return {
    lowerLengthM: lowerLength,
    upperLengthM: upperLength,
    areaPerSideM2: area / 2,
    areaM2: area,
    tapeM: 2 * (lowerLength + upperLength),
  }
}
