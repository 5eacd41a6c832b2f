/** A root between two places where a function has opposite signs. */

export type Bracket = {
  readonly from: number
  readonly to: number
  readonly atFrom: number
  readonly atTo: number
}

const mostSteps = 60

/**
 * Place where `f` is zero, by false position with the stale end's value halved.
 * Source: Dowell and Jarratt, A modified regula falsi method for computing the root of an equation, BIT 11, 1971.
 * Without a change of sign the answer is the end with the smaller value.
 */
export const bracketedRoot = (f: (t: number) => number, bracket: Bracket): number => {
  let { from, to, atFrom, atTo } = bracket
  if (atFrom === 0) return from
  if (atTo === 0) return to
  if (atFrom < 0 === atTo < 0) return Math.abs(atFrom) < Math.abs(atTo) ? from : to
  let place = from
  for (let step = 0; step < mostSteps && Math.abs(to - from) > 1e-15; step++) {
    place = (from * atTo - to * atFrom) / (atTo - atFrom)
    const value = f(place)
    if (Math.abs(value) < 1e-14) return place
    if (value < 0 === atTo < 0) atFrom /= 2
    else {
      from = to
      atFrom = atTo
    }
    to = place
    atTo = value
  }
  return place
}
