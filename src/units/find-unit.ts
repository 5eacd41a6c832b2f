/** Finds units by spelling, exactly first and without regard to capitals after that. */

import type { Dimension } from './dimension.ts'
import { dimensionRules } from './dimension.ts'
import { type Unit, unitTable } from './unit-table.ts'

const gather = (fold: (spelling: string) => string): ReadonlyMap<string, readonly Unit[]> => {
  const found = new Map<string, readonly Unit[]>()
  for (const unit of unitTable) {
    for (const spelling of new Set(unit.spellings.map(fold))) {
      found.set(spelling, [...(found.get(spelling) ?? []), unit])
    }
  }
  return found
}

const exactly = gather((spelling) => spelling)
const folded = gather((spelling) => spelling.toLowerCase())

/** Every unit with this spelling; several when it stands for more than one (`'`, `ton`, `°`). */
export const unitsSpelled = (spelling: string): readonly Unit[] =>
  exactly.get(spelling) ?? folded.get(spelling.toLowerCase()) ?? []

/** The units of the kinds that the dimension accepts, or all when none is of such a kind. */
export const preferring = (units: readonly Unit[], dimension: Dimension): readonly Unit[] => {
  const { kinds } = dimensionRules[dimension]
  const fitting = units.filter(({ kind }) => kinds.includes(kind))
  return fitting.length > 0 ? fitting : units
}

const mostSteps = 3

/** The unit whose spelling is nearest to a word, at most three and a third of its letters away. */
export const nearestUnit = (word: string, dimension: Dimension): string | undefined => {
  const lower = word.toLowerCase().slice(0, 24)
  const limit = Math.min(mostSteps, Math.floor(lower.length / 3))
  const { kinds } = dimensionRules[dimension]
  let best: { readonly id: string; readonly score: number } | undefined
  for (const [spelling, units] of folded) {
    if (Math.abs(spelling.length - lower.length) > limit) continue
    const steps = stepsBetween(lower, spelling)
    if (steps > limit) continue
    const unit = units.find(({ kind }) => kinds.includes(kind)) ?? units[0]
    const score = steps * 2 + (unit && kinds.includes(unit.kind) ? 0 : 1)
    if (unit && (!best || score < best.score)) best = { id: unit.id, score }
  }
  return best?.id
}

/** Letters to put in, take out or change (edit distance), one row at a time. */
const stepsBetween = (a: string, b: string): number => {
  let above = Array.from({ length: b.length + 1 }, (_, column) => column)
  for (let row = 1; row <= a.length; row++) {
    const line = [row]
    for (let column = 1; column <= b.length; column++) {
      const change = (above[column - 1] as number) + (a[row - 1] === b[column - 1] ? 0 : 1)
      line.push(Math.min(change, (above[column] as number) + 1, (line[column - 1] as number) + 1))
    }
    above = line
  }
  return above[b.length] as number
}
