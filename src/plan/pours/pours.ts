/** Each coat as pours: how much to mix, when, and until when it can be used, at the temperature of its hour. */
import type { Note } from '#core/note'
import type { Stage } from '../remember.ts'
import type { Pours } from '../types.ts'
import { cardsOf, chainOf } from './cards.ts'
import { coatOf, type PoursInput, shelfOf } from './coat.ts'
import { notesOf } from './run-notes.ts'

export const pours: Stage<PoursInput, Pours> = { name: 'pours', run: planPours }

function planPours(input: PoursInput): Pours {
  const shelf = shelfOf(input)
  const made = input.steps.steps.flatMap((step) => {
    const at = shelf.placed.get(step.id)
    const coat = at && !at.done ? coatOf(shelf, step, at) : undefined
    if (!coat) return []
    const chain = chainOf(coat)
    return [{ pours: cardsOf(coat, chain, input.known), notes: notesOf(coat, chain, input.known) }]
  })
  return { pours: made.flatMap((one) => one.pours), notes: worstOnce(made.flatMap((one) => one.notes)) }
}

/** Coats of one product on one zone fail for one reason: the warmest of them says it, its remedies do for the others. */
function worstOnce(notes: readonly Note[]): readonly Note[] {
  const worst = new Map<string, Note>()
  for (const note of notes) {
    const key =
      note.severity === 'fault'
        ? `${note.code} ${note.data.zone} ${note.data.sheet}`
        : `${note.code} ${note.data.step}`
    const had = worst.get(key)
    if (!had || Number(note.data.airC) > Number(had.data.airC)) worst.set(key, note)
  }
  return [...worst.values()]
}
