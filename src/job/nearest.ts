/** The known word that a mistyped one most likely stands for. */

const longest = 40

/**
 * The candidate with the fewest letters to put in, take out, change or swap with the next; none when more than a
 * third of the letters differ. Ties go to the earlier candidate.
 */
export const nearest = (found: string, candidates: Iterable<string>): string | undefined => {
  const word = found.toLowerCase().slice(0, longest)
  const limit = word.length < 3 ? 0 : Math.floor(word.length / 3)
  let best: { readonly candidate: string; readonly steps: number } | undefined
  for (const candidate of candidates) {
    const steps = stepsBetween(word, candidate.toLowerCase().slice(0, longest), limit)
    if (steps <= limit && (best === undefined || steps < best.steps)) best = { candidate, steps }
  }
  return best?.candidate
}

/** Edit distance with swaps of neighbours (optimal string alignment); `limit + 1` when the lengths alone exceed it. */
const stepsBetween = (a: string, b: string, limit: number): number => {
  if (Math.abs(a.length - b.length) > limit) return limit + 1
  let before: readonly number[] = []
  let above: readonly number[] = Array.from({ length: b.length + 1 }, (_, column) => column)
  for (let row = 1; row <= a.length; row++) {
    const line = [row]
    for (let column = 1; column <= b.length; column++) {
      const same = a[row - 1] === b[column - 1]
      const swapped = row > 1 && column > 1 && a[row - 1] === b[column - 2] && a[row - 2] === b[column - 1]
      line.push(
        Math.min(
          (above[column - 1] as number) + (same ? 0 : 1),
          (above[column] as number) + 1,
          (line[column - 1] as number) + 1,
          swapped ? (before[column - 2] as number) + 1 : Number.POSITIVE_INFINITY,
        ),
      )
    }
    before = above
    above = line
  }
  return above[b.length] as number
}
