/** How long a coat takes alone and in a pair, and what it costs before and after. */

import type { Certainty } from '#core/note'
import type { Pace } from '#core/schedule'
import { minutesOf } from '../minutes.ts'
import type { WorkStep, ZoneLayer } from '../types.ts'
import type { StepContext } from './context.ts'

type CoatPaces = {
  readonly personHours: number
  readonly certainty: Certainty
  readonly paces: readonly Pace[]
}

/** Roll and tip goes by square metres an hour of the clock, alone or in a pair; other methods by person-hours. */
export function coatPaces(context: StepContext, layer: ZoneLayer): CoatPaces {
  const { rates, crew } = context
  const pair = Math.min(2, crew)
  if (layer.method === 'roll and tip') {
    const alone = layer.areaM2 / rates.tipAloneM2PerH.value
    const both = (2 * layer.areaM2) / rates.tipPairM2PerH.value
    const paces = [pace(1, alone), ...(pair > 1 ? [pace(2, both)] : [])]
    return { personHours: alone, certainty: rates.tipAloneM2PerH.certainty, paces }
  }
  const rate =
    { roller: rates.rollHoursPerM2, brush: rates.brushHoursPerM2 }[layer.method] ?? rates.fillHoursPerM2
  const hours = layer.areaM2 * rate.value
  const paces = Array.from({ length: pair }, (_, index) => pace(index + 1, hours))
  return { personHours: hours, certainty: rate.certainty, paces }
}

const pace = (crew: number, personHours: number): Pace => ({
  crew,
  personMinutes: Math.max(1, minutesOf(personHours)),
})

/** Area that the catalogue's times for wiping, tacking, mixing and cleaning up are meant for: a side; assumed. */
const WHOLE_SIDE_M2 = 10
/** However small the part, so much of them is left: the pot and the brush are the same; assumed. */
const LEAST_SHARE = 1 / 3

/** Clock minutes before and after a coat. A locker lid is not wiped and tacked as long as a side. */
export function handling(
  context: StepContext,
  layer: ZoneLayer,
): Pick<WorkStep, 'setUpMinutes' | 'cleanUpMinutes'> {
  const share = Math.min(1, Math.max(LEAST_SHARE, layer.areaM2 / WHOLE_SIDE_M2))
  return {
    setUpMinutes: minutesOf(share * context.rates.coatSetUpHours.value),
    cleanUpMinutes: minutesOf(share * context.rates.coatCleanUpHours.value),
  }
}
