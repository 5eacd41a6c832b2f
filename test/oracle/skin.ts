/** The skin of the boat by the hour as the plan has it, and whether it may be coated, judged by own rules. */
import type { Plan } from '#plan'
import type { SheetLimits } from './coats.ts'
import type { CureRow } from './cure-clock.ts'
import { shareAnHour } from './cure-clock.ts'
import { wmoDewPoint } from './weather-file.ts'

export type Air = Plan['conditions']['air'][number]

/** Decimals of a difference are not exact. */
export const rounding = 1e-9

/** Skin over the dew point, K; NaN past the weather. */
export function marginK(air: Air, index: number): number {
  const airC = air.airC[index]
  if (airC === undefined) return Number.NaN
  return air.surfaceC[index]! - wmoDewPoint(airC, air.humidityShare[index]!)
}

/**
 * What forbids a coat in an hour; empty when nothing does. After hours with the skin at or under the dew point it must
 * first stand a whole hour at 3 K over it.
 */
export function faultsOfHour(air: Air, index: number, limits: SheetLimits): readonly string[] {
  const airC = air.airC[index]!
  const humidity = air.humidityShare[index]!
  const margin = marginK(air, index)
  return [
    ...(airC < limits.airLeastC - rounding ? [`air ${airC} under ${limits.airLeastC}`] : []),
    ...(airC > limits.airMostC + rounding ? [`air ${airC} over ${limits.airMostC}`] : []),
    ...(humidity > limits.humidityMost + rounding
      ? [`humidity ${humidity} over ${limits.humidityMost}`]
      : []),
    ...(margin < limits.dewMarginK - rounding ? [`dew margin ${margin} under ${limits.dewMarginK}`] : []),
    ...(isStillWet(air, index) ? ['wet since the night'] : []),
  ]
}

const dryingMarginK = 3

function isStillWet(air: Air, index: number): boolean {
  for (let before = index - 1; before >= 0; before--) {
    const margin = marginK(air, before)
    if (margin >= dryingMarginK - rounding) return false
    if (margin <= rounding) return true
  }
  return false
}

export type Drying = {
  readonly air: Air
  readonly rows: readonly CureRow[]
  readonly fromMinute: number
  readonly dewMarginK: number
}

/** Hours, as indexes of the air, that begin with too little margin while the film still minds dew. */
export function dewWhileDrying({ air, rows, fromMinute, dewMarginK }: Drying): readonly number[] {
  const wet: number[] = []
  let done = 0
  let minute = fromMinute
  while (done < 1) {
    const index = Math.floor((minute - air.firstMinute) / 60)
    const airC = air.airC[index]
    if (airC === undefined) return wet
    if (marginK(air, index) < dewMarginK - rounding) wet.push(index)
    const next = air.firstMinute + (index + 1) * 60
    done += (shareAnHour(rows, airC, 'least') * (next - minute)) / 60
    minute = next
  }
  return wet
}
