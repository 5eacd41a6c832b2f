/** A single tape line round the hull, such as the upper edge of the bottom paint. Boat frame, metres. */
import { type Hull, lineAtHeight } from '#core/boat'
import type { Note } from '#core/note'
import { curvePlaces } from './curve-places.ts'
import { type StripeInput, settleHeights } from './settle-stripe.ts'
import { stripeCurve } from './stripe-curve.ts'
import { fault, heightFaults, spacingFaults } from './stripe-notes.ts'
import { stripeRows } from './stripe-rows.ts'

export type TapeLineInput = Pick<StripeInput, 'heightStemM' | 'heightLowM' | 'heightSternM'>

export type TapeLineRow = {
  /** Forward of the aftmost point. */
  readonly xM: number
  /** Plumb, above the floating waterline; minus below it. */
  readonly heightM: number
  /** Off the centreline. */
  readonly halfBreadthM: number
}

export type TapeLineTable = {
  /** Numbers to strike, from aft to forward; the same on both sides. */
  readonly rows: readonly TapeLineRow[]
  /** Along the hull, one side. */
  readonly lengthM: number
  /** Both sides, taped once. */
  readonly tapeM: number
}

export type TapeLineResult = {
  /** Undefined when a fault note says why. */
  readonly table: TapeLineTable | undefined
  readonly notes: readonly Note[]
}

/**
 * Table of a tape line every `spacingM` along the boat, ends included, through its heights at stern, low point and
 * stem. A height left out is the lower of the others; with none at all there is no line. It may lie under water.
 */
export function tapeLine(hull: Hull, input: TapeLineInput & { readonly spacingM: number }): TapeLineResult {
  const settled = settleHeights(input)
  if (!settled)
    return { table: undefined, notes: [{ code: 'marking.lineWithoutHeight', severity: 'missing', data: {} }] }
  const faults = [...heightFaults(settled.given), ...spacingFaults(input.spacingM)]
  if (faults.length > 0) return { table: undefined, notes: faults }
  const places = curvePlaces(hull, settled.heights)
  if ('code' in places) return { table: undefined, notes: [places] }
  const height = stripeCurve(settled.heights, places)
  const { rows, offHull } = stripeRows(hull, {
    lower: height,
    upper: height,
    places,
    spacingM: input.spacingM,
  })
  if (offHull) return { table: undefined, notes: [fault('marking.stripeOffHull', offHull)] }
  const lengthM = lineAtHeight(hull, { z: height, side: 'port' }).length
  return {
    table: {
      rows: rows.map((row) => ({ xM: row.xM, heightM: row.upperM, halfBreadthM: row.upperHalfBreadthM })),
      lengthM,
      tapeM: 2 * lengthM,
    },
    notes: settled.notes,
  }
}
