/** A note as a sentence, with the steps it names in words instead of ids. */
import type { Plan } from '#plan'
import { describeStep } from '#plan'
import type { Words } from '#words'

type Note = Plan['notes'][number]

/** Keys of note data that hold the id of a step. */
const stepKeys = ['step', 'after']

export function noteText(plan: Plan, note: Note, words: Words): string {
  const named = Object.entries(note.data).map(([key, value]) => {
    if (!stepKeys.includes(key) || typeof value !== 'string') return [key, value] as const
    const { code, data } = describeStep(plan, value)
    return [key, `“${words.sentence(code, data)}”`] as const
  })
  return words.sentence(note.code, Object.fromEntries(named))
}
