/** Heights and widths of a boot stripe with nothing left out: as given, or assumed with a note. */
import type { Note } from '#core/note'
import type { ThreeHeights } from './stripe-curve.ts'

export type StripeInput = {
  /** Lower edge above the floating waterline, m. */
  readonly heightStemM?: number
  readonly heightLowM?: number
  readonly heightSternM?: number
  /** Plumb width, lower to upper edge, m. */
  readonly widthStemM?: number
  readonly widthLowM?: number
  readonly widthSternM?: number
}

export type SettledStripe = {
  readonly heights: ThreeHeights
  readonly widths: ThreeHeights
  readonly notes: readonly Note[]
}

/** Common practice for a boat of 7.5 m, m; scaled with the length. */
const usualLengthM = 7.5
const usualHeights: ThreeHeights = { stern: 0.06, low: 0.05, stem: 0.075 }
const usualWidths: ThreeHeights = { stern: 0.06, low: 0.0525, stem: 0.07 }
/** Topside paint nearer to the water than this is wetted at rest. */
export const leastHeightM = 0.05

export type Given = { readonly [Place in keyof ThreeHeights]: number | undefined }

/**
 * Fills what nobody gave. Nothing given: common practice for 7.5 m (lower edge 60, 50, 75 mm above the water at
 * stern, low point and stem; width 60, 52.5, 70 mm), scaled with the length, the edge never under 50 mm. One figure:
 * straight and level at that. Two: the third is the lower of them. Widths in the same way. Everything filled in is
 * noted as assumed. Lengths in m.
 */
export function settleStripe(input: StripeInput, lengthM: number): SettledStripe {
  const scale = lengthM / usualLengthM
  const scaled = (usual: ThreeHeights, least: number): ThreeHeights => ({
    stern: Math.max(least, usual.stern * scale),
    low: Math.max(least, usual.low * scale),
    stem: Math.max(least, usual.stem * scale),
  })
  const givenHeights = { stern: input.heightSternM, low: input.heightLowM, stem: input.heightStemM }
  const givenWidths = { stern: input.widthSternM, low: input.widthLowM, stem: input.widthStemM }
  const heights = settle(givenHeights, scaled(usualHeights, leastHeightM))
  const widths = settle(givenWidths, scaled(usualWidths, 0))
  return {
    heights,
    widths,
    notes: [
      ...assumedNote('marking.heightsAssumed', givenHeights, heights),
      ...assumedNote('marking.widthsAssumed', givenWidths, widths),
    ],
  }
}

export type SettledHeights = {
  readonly given: Given
  readonly heights: ThreeHeights
  readonly notes: readonly Note[]
}

/** Heights of a single line; undefined when none is given. */
export function settleHeights(input: StripeInput): SettledHeights | undefined {
  const given = { stern: input.heightSternM, low: input.heightLowM, stem: input.heightStemM }
  if (Object.values(given).every((height) => height === undefined)) return undefined
  const heights = settle(given, { stern: 0, low: 0, stem: 0 })
  return { given, heights, notes: assumedNote('marking.lineHeightsAssumed', given, heights) }
}

function settle(given: Given, usual: ThreeHeights): ThreeHeights {
  const known = [given.stern, given.low, given.stem].filter((height) => height !== undefined)
  if (known.length === 0) return usual
  const rest = Math.min(...known)
  return { stern: given.stern ?? rest, low: given.low ?? rest, stem: given.stem ?? rest }
}

function assumedNote(code: string, given: Given, settled: ThreeHeights): readonly Note[] {
  const places = [given.stern, given.low, given.stem]
  const count = places.filter((height) => height === undefined).length
  if (count === 0) return []
  const data = { count, sternM: settled.stern, lowM: settled.low, stemM: settled.stem }
  return [{ code, severity: 'assumed', data, source: 'assumed' }]
}
