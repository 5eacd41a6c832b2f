/** Air, skin and dew at a place and an hour, from the weather under its shelter. */
import type { ShownPlan } from '../worker/messages.ts'

export type AirThen = {
  readonly airC: number
  readonly surfaceC: number
  /** Of both sides the warmer one, `surfaceC` being the colder; the same where there is one. */
  readonly warmestC: number
  readonly dewC: number
  readonly humidityShare: number
  readonly marginK: number
}

/** Undefined where the weather does not reach, or has a hole. */
export function airThen(plan: ShownPlan, place: string, minute: number): AirThen | undefined {
  const air = plan.conditions.air.find(({ key }) => key === place)
  if (!air) return undefined
  const hour = Math.floor((minute - air.firstMinute) / 60)
  const [airC, surfaceC, dewC] = [air.airC[hour], air.surfaceC[hour], air.dewC[hour]]
  const humidityShare = air.humidityShare[hour]
  if (airC === undefined || surfaceC === undefined || dewC === undefined || humidityShare === undefined)
    return undefined
  if (Number.isNaN(airC + surfaceC + dewC + humidityShare)) return undefined
  return {
    airC,
    surfaceC,
    warmestC: air.warmestC?.[hour] ?? surfaceC,
    dewC,
    humidityShare,
    marginK: surfaceC - dewC,
  }
}
