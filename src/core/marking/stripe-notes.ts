/** What there is to say about a stripe: faults that stop it, and what to look out for when striking it. */
import type { Hull } from '#core/boat'
import type { Note } from '#core/note'
import { type Given, leastHeightM, type SettledStripe } from './settle-stripe.ts'
import type { StripeRow } from './stripe-rows.ts'

/** Nearer marks than this help nobody. */
const leastSpacingM = 0.02
const mostSpacingM = 5
const mostHeightM = 2
/** From here on a parallel tape would look wrong: girth over plumb width (1.5: 42° to the level). */
const flatRatio = 1.5
/** Boats of 30 to 45 ft sink about 2 in with stores aboard (yacht designers' newsletter). */
const load = { sinkM: 0.05, fromM: 9.1, toM: 13.7 }

export const heightFaults = (heights: Given): readonly Note[] =>
  Object.entries(heights).flatMap(([place, m]) =>
    m === undefined || Math.abs(m) <= mostHeightM
      ? []
      : [fault('marking.stripeHeight', { place, heightM: m })],
  )

export const spacingFaults = (spacingM: number): readonly Note[] =>
  spacingM >= leastSpacingM && spacingM <= mostSpacingM
    ? []
    : [fault('marking.stripeSpacing', { spacingM, leastM: leastSpacingM, mostM: mostSpacingM })]

/** Figures that make no stripe; empty when all is well. */
export function stripeFaults(settled: SettledStripe, spacingM: number): readonly Note[] {
  const widths = Object.entries(settled.widths).filter(([, m]) => !(m > 0 && m <= mostHeightM))
  return [
    ...heightFaults(settled.heights),
    ...widths.map(([place, m]) => fault('marking.stripeWidth', { place, widthM: m })),
    ...spacingFaults(spacingM),
  ]
}

export type NotesAsked = {
  readonly hull: Hull
  readonly rows: readonly StripeRow[]
  readonly settled: SettledStripe
}

/** Assumed figures, nearness to the water, flat places, and how far the boat will sink with stores. */
export function stripeNotes({ hull, rows, settled }: NotesAsked): readonly Note[] {
  return [...settled.notes, ...nearWater(rows), ...flat(rows), ...loadMargin(hull)]
}

function nearWater(rows: readonly StripeRow[]): readonly Note[] {
  const lowestM = Math.min(...rows.map((row) => row.lowerM))
  if (lowestM >= leastHeightM - 1e-9) return []
  const data = { heightM: lowestM, leastM: leastHeightM }
  return [{ code: 'marking.stripeNearWater', severity: 'notice', data, source: 'assumed' }]
}

function flat(rows: readonly StripeRow[]): readonly Note[] {
  const ratioOf = (row: StripeRow): number => row.girthM / (row.upperM - row.lowerM)
  const flattest = rows.reduce<StripeRow | undefined>(
    (most, row) => (most === undefined || ratioOf(row) > ratioOf(most) ? row : most),
    undefined,
  )
  if (flattest === undefined || ratioOf(flattest) < flatRatio) return []
  const { xM, girthM, upperM, lowerM } = flattest
  const data = { xM, girthM, widthM: upperM - lowerM }
  return [{ code: 'marking.stripeFlatHull', severity: 'info', data }]
}

function loadMargin(hull: Hull): readonly Note[] {
  const data = { ...load, lengthM: hull.particulars.lengthOverall }
  return [{ code: 'marking.loadMargin', severity: 'info', data, source: 'yacht designers’ newsletter' }]
}

export const fault = (code: string, data: Note['data']): Note => ({ code, severity: 'fault', data })
