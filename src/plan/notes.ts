/** Every note of every stage, worst first; the same note from two stages stands once. */
import type { Note, Severity } from '#core/note'
import { moneyMissing } from './money.ts'
import type { Runner, Stage } from './remember.ts'

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

type Noted = { readonly notes: readonly Note[] }

export function gatherNotes(
  run: Runner,
  stages: Readonly<Record<string, Noted | undefined>>,
): readonly Note[] {
  const lists = Object.entries(stages).map(([name, stage]) => [name, stage?.notes] as const)
  return run(gathered, Object.fromEntries(lists))
}

const gathered: Stage<Readonly<Record<string, readonly Note[] | undefined>>, readonly Note[]> = {
  name: 'notes',
  run: ({ money = [moneyMissing], ...lists }) =>
    sorted([...Object.values(lists).flatMap((list) => list ?? []), ...money]),
}

function sorted(all: readonly Note[]): readonly Note[] {
  const unique = new Map(all.map((note) => [`${note.code} ${JSON.stringify(note.data)}`, note]))
  return [...unique.values()].sort((a, b) => rank[a.severity] - rank[b.severity])
}
