/** Whether a colour gets a skin so hot that the glass of the laminate may print through its gloss. */
import type { SkinQuestion } from './skin-temperature.ts'
import { skinTemperature } from './skin-temperature.ts'

export type LaminateResin =
  | 'orthophthalic polyester'
  | 'isophthalic polyester'
  | 'room-cured epoxy'
  | 'unknown'

/** Between the two the resin softens: under the first it is used, at the second the laminate is given up. */
export type Softening = { readonly fromC: number; readonly toC: number; readonly source: string }

const givenUp = 'the end is the limit quoted for glass-fibre gliders (1983), assumed for boats'

/**
 * Where laminates soften. A resin that was cured warm lasts further: its maker's sheet comes first. Nobody knows the
 * resin of an old hull, so it counts as the softest.
 */
export const softening: Readonly<Record<LaminateResin, Softening>> = {
  'orthophthalic polyester': {
    fromC: 50,
    toC: 70,
    source: `a supplier’s use limit for general purpose resin; ${givenUp}`,
  },
  'isophthalic polyester': { fromC: 55, toC: 70, source: `a supplier’s use limit; ${givenUp}` },
  'room-cured epoxy': {
    fromC: 66,
    toC: 71,
    source:
      'heat deflection of room-cured epoxies, 150 to 160 °F, a builder’s article on composite aircraft (1988)',
  },
  unknown: { fromC: 50, toC: 70, source: `assumed, as the softest of polyesters; ${givenUp}` },
}

/** As near as this to where it softens is told, K. Assumed: what the colour, the wind and the place leave open. */
export const nearSofteningK = 5

export type PrintThrough = {
  /** `cool` by more than `nearSofteningK`, `near` the range, `soft` in it, `over` it. */
  readonly verdict: 'cool' | 'near' | 'soft' | 'over'
  readonly hottestC: number
  /** Index of that hour. */
  readonly hottestHour: number
  /** How many hours are at or over the start of the range. */
  readonly softHours: number
  /** From the hottest hour up to the start of the range, K; negative when it is past it. */
  readonly leftK: number
}

/**
 * The hottest hour of a skin against the range in which its laminate softens.
 * @param of.skinC by the hour; NaN hours are passed over. @returns undefined when no hour is known.
 */
export function printThrough(of: {
  readonly skinC: Float64Array
  readonly softens: Pick<Softening, 'fromC' | 'toC'>
}): PrintThrough | undefined {
  const { skinC, softens } = of
  let hottestHour = -1
  let softHours = 0
  skinC.forEach((value, hour) => {
    if (value >= softens.fromC) softHours++
    if (!Number.isNaN(value) && (hottestHour < 0 || value > skinC[hottestHour]!)) hottestHour = hour
  })
  if (hottestHour < 0) return undefined
  const hottestC = skinC[hottestHour]!
  return {
    verdict: verdictOf(hottestC, softens),
    hottestC,
    hottestHour,
    softHours,
    leftK: softens.fromC - hottestC,
  }
}

function verdictOf(
  hottestC: number,
  { fromC, toC }: Pick<Softening, 'fromC' | 'toC'>,
): PrintThrough['verdict'] {
  if (hottestC >= toC) return 'over'
  if (hottestC >= fromC) return 'soft'
  return hottestC >= fromC - nearSofteningK ? 'near' : 'cool'
}

/**
 * The darkest that a skin may be to stay under a temperature in every hour of its weather.
 * @returns share of light taken in, to 0.01; 1 when even black stays under it, undefined when white does not.
 */
export function darkestUnder(
  question: Omit<SkinQuestion, 'absorptance'>,
  underC: number,
): number | undefined {
  const stays = (hundredths: number) =>
    skinTemperature({ ...question, absorptance: hundredths / 100 }).every((skinC) => !(skinC >= underC))
  if (!stays(0)) return undefined
  let [low, high] = [0, 101]
  while (high - low > 1) {
    const middle = (low + high) >> 1
    if (stays(middle)) low = middle
    else high = middle
  }
  return low / 100
}
