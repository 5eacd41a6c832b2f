/** Every note of every stage, worst first; the same note from two stages stands once. */
import type { Note, Severity } from '#core/note'
import { moneyMissing } from './money.ts'
import type { Estimate } from './types.ts'

const rank: Readonly<Record<Severity, number>> = {
  fault: 0,
  danger: 1,
  warning: 2,
  caution: 3,
  missing: 4,
  notice: 5,
  assumed: 6,
  uncovered: 7,
  info: 8,
}

export function gatherNotes(
  stages: readonly { readonly notes: readonly Note[] }[],
  estimate: Estimate | undefined,
): readonly Note[] {
  const all = [...stages.flatMap((stage) => stage.notes), ...(estimate ? estimate.notes : [moneyMissing])]
  const unique = new Map(all.map((note) => [`${note.code} ${JSON.stringify(note.data)}`, note]))
  return [...unique.values()].sort((a, b) => rank[a.severity] - rank[b.severity])
}
