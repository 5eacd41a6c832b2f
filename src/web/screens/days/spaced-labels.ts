/** Where names stand beside bars on an upright tape: at their bar, or below the name before, never on each other. */

export type SpacedLabels = {
  /** Top of each name, px, in the order given. */
  readonly tops: readonly number[]
  /** Bottom of the last one. */
  readonly bottom: number
}

/** @param at tops of the bars, px, from above down. @param high of a name with its distance to the next, px. */
export function spacedLabels({
  at,
  high,
}: {
  readonly at: readonly number[]
  readonly high: number
}): SpacedLabels {
  let free = 0
  const tops = at.map((wanted) => {
    const top = Math.max(wanted, free)
    free = top + high
    return top
  })
  return { tops, bottom: free }
}
