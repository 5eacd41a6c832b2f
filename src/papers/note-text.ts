/** A note as a sentence, with the steps it names in words instead of ids. */
import { describeStep, type Plan } from '#plan'
import type { Words } from '#words'

type Note = Plan['notes'][number]

/** Keys of note data that hold the id of a step. */
const stepKeys = ['step', 'after']

/** The sentence of a note; works on any part of a plan that steps can be described from. */
export function noteText(
  plan: Parameters<typeof describeStep>[0],
  note: Note,
  words: Pick<Words, 'sentence'>,
): string {
  const named = Object.entries(note.data).map(([key, value]) => {
    if (!stepKeys.includes(key) || typeof value !== 'string') return [key, value] as const
    const { code, data } = describeStep(plan, value)
    return [key, `“${words.sentence(code, data)}”`] as const
  })
  return words.sentence(note.code, Object.fromEntries(named))
}
