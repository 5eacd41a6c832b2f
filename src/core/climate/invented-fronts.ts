/** Fronts of invented weather: when they pass and how strong they are, hour by hour. */
import type { Chance } from './invented-chance.ts'
import type { InventedPlace } from './invented-places.ts'

/**
 * Strength of the front overhead in each hour, 0 for none, at most 1.
 * Fronts come at uneven intervals, swell and fade as a squared sine.
 */
export function inventFronts(at: {
  readonly hours: number
  readonly place: InventedPlace
  readonly chance: Chance
}): Float64Array {
  const { hours, place, chance } = at
  const front = new Float64Array(hours)
  let from = chance.between(-0.2, 0.8) * place.frontEveryHours
  while (from < hours) {
    const length = chance.between(0.5, 1.5) * place.frontHours
    const strength = chance.between(0.4, 1)
    for (let hour = Math.max(0, Math.ceil(from)); hour < Math.min(hours, from + length); hour++) {
      front[hour] = Math.max(front[hour]!, strength * Math.sin((Math.PI * (hour - from)) / length) ** 2)
    }
    from += chance.between(0.4, 1.6) * place.frontEveryHours
  }
  return front
}
