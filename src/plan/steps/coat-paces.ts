/** How long a coat takes alone and in a pair. */

import type { Certainty } from '#core/note'
import type { Pace } from '#core/schedule'
import { minutesOf } from '../minutes.ts'
import type { ZoneLayer } from '../types.ts'
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
