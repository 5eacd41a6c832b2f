/** Step numbers as a short list: 1, 2, 3, 5 becomes `1–3, 5`. */
export function numberList(numbers: readonly number[]): string {
  const sorted = [...new Set(numbers)].sort((a, b) => a - b)
  const runs: (readonly [from: number, to: number])[] = []
  for (const number of sorted) {
    const last = runs.at(-1)
    if (last && number === last[1] + 1) runs[runs.length - 1] = [last[0], number]
    else runs.push([number, number])
  }
  return runs
    .map(([from, to]) =>
      from === to ? `${from}` : to === from + 1 ? `${from}, ${to}` : `${from}\u2013${to}`,
    )
    .join(', ')
}
