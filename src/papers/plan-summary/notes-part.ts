/** Every note, numbered: a circle, or a dashed square for what is missing; worst first. */
import type { Note } from '#core/note'
import { heading, paragraph } from '../blocks.ts'
import { missingFlag, noteFlag } from '../flags.ts'
import type { Kit } from '../kit.ts'
import { measureOf } from '../page.ts'
import type { Strip, Unit } from '../strips.ts'
import { type Flowing, space } from '../strips.ts'

const flagWidth = 9

export function notesPart(kit: Kit): readonly Flowing[] {
  const { plan, say, setter } = kit
  if (plan.notes.length === 0) return []
  const measure = measureOf(kit.page)
  return [
    {
      gap: 7,
      heading: heading(say.sentence('paper.notesCount', { count: plan.notes.length }), {
        ...measure,
        setter,
      }),
      units: plan.notes.map((note, index) => noteUnit(kit, note, index + 1)),
    },
  ]
}

function noteUnit(kit: Kit, note: Note, number: number): Unit {
  const { x, width } = measureOf(kit.page)
  const { say, setter } = kit
  const words = `${say.label(`severity.${note.severity}`)}: ${say.note(note)}`
  const lines = paragraph(words, 'body', { x: x + flagWidth, width: width - flagWidth, setter })
  const [first, ...rest] = lines
  const flag = note.severity === 'missing' ? missingFlag : noteFlag
  const head: Strip = {
    height: (first?.height ?? 0) + 0.4,
    draw: (top) => [...flag(number, [x, top]), ...(first?.draw(top + 0.7) ?? [])],
  }
  return [
    head,
    ...rest.map((strip): Strip => ({ ...strip, draw: (top) => strip.draw(top + 0.3) })),
    space(rest.length === 0 ? 2.8 : 2),
  ]
}
