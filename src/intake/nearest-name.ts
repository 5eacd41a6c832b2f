/** The known name that somebody most likely meant. */

/**
 * Nearest of some names by letters changed, added, left out or swapped, capitals apart.
 * @returns undefined when none is within a third of the letters typed, at least one.
 */
export function nearestName(typed: string, names: readonly string[]): string | undefined {
  if (typed.length > 40) return undefined
  const most = Math.max(1, Math.floor(typed.length / 3))
  let best: { readonly name: string; readonly steps: number } | undefined
  for (const name of names) {
    const steps = editSteps(typed.toLowerCase(), name.toLowerCase())
    if (steps <= most && (best === undefined || steps < best.steps)) best = { name, steps }
  }
  return best?.name
}

/** Optimal string alignment distance. */
function editSteps(a: string, b: string): number {
  const rows: number[][] = [Array.from({ length: b.length + 1 }, (_, j) => j)]
  for (let i = 1; i <= a.length; i++) {
    const row = [i]
    for (let j = 1; j <= b.length; j++) {
      const change = rows[i - 1]![j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1)
      const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]
      const swap = swapped ? rows[i - 2]![j - 2]! + 1 : Number.POSITIVE_INFINITY
      row.push(Math.min(change, swap, rows[i - 1]![j]! + 1, row[j - 1]! + 1))
    }
    rows.push(row)
  }
  return rows[a.length]![b.length]!
}
