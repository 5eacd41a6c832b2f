/** The dew rule of coating work: a surface is coated only when it stands far enough above the dew point. */
import { dewMargin } from './dew-point.ts'

/** Least margin of ISO 8502-4 and of the data sheets, K. */
export const dewLimitK = 3

/**
 * Least margin of US government specifications, 5 °F = 2.78 K (MIL-HDBK-1110, section 9.6.6): not the same
 * limit as 3 °C, which is 5.4 °F.
 */
export const dewLimitFiveFahrenheitK = 5 / 1.8

/** A margin this little under the limit is the limit itself, K: differences of decimals are not exact. */
const roundingK = 1e-9

export type DewVerdict = {
  /** True when the surface may be coated as far as dew goes. */
  readonly go: boolean
  /** `dry` at or over the limit, `close` above the dew point but under the limit, `wet` at or under the dew point. */
  readonly state: 'dry' | 'close' | 'wet'
  readonly marginK: number
  readonly limitK: number
}

/**
 * Says whether a surface stands far enough above the dew point.
 * @param skin.surfaceC surface, °C. @param skin.dewC dew point, °C. @param skin.limitK least margin, K:
 * `dewLimitK` or `dewLimitFiveFahrenheitK`.
 * @returns the verdict; a margin equal to the limit is a go. The rule holds for the whole drying time, not
 * only at the start: judge every hour of it.
 * Source: ISO 8502-4 (3 °C); MIL-HDBK-1110, 9.6.6 (5 °F and rising).
 */
export function dewRule(skin: {
  readonly surfaceC: number
  readonly dewC: number
  readonly limitK: number
}): DewVerdict {
  const marginK = dewMargin(skin)
  const go = marginK >= skin.limitK - roundingK
  return { go, state: go ? 'dry' : marginK > 0 ? 'close' : 'wet', marginK, limitK: skin.limitK }
}
