/** Cautions and notes: what can hurt, what was assumed, what is missing, what is not covered yet. */

import { noteText } from '#papers'
import type { Plan } from '#plan'
import type { Words } from '#words'
import { section, wrap } from './table.ts'

export function cautionLines(plan: Plan, words: Words): readonly string[] {
  return section(
    words.label('heading.cautions'),
    plan.cautions.cautions.flatMap((caution) =>
      wrap(
        `${words.label(`signal.${caution.severity}`)}: ${words.sentence(caution.code, caution.data)}`,
        '  ',
      ),
    ),
  )
}

export function noteLines(plan: Plan, words: Words): readonly string[] {
  return section(
    words.label('heading.notes'),
    plan.notes.flatMap((note) =>
      wrap(`${words.label(`severity.${note.severity}`)}: ${noteText(plan, note, words)}`, '  '),
    ),
  )
}

export const notesJson = (plan: Plan) => ({
  notes: plan.notes,
  cautions: plan.cautions.cautions,
})
