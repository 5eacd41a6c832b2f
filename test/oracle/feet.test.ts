/** Nobody works from a wet floor: console, cockpit sides and coamings from the sole, cabin and hatches from the side deck. */
import { describe, expect, it } from 'vitest'
import { wetUnder } from './feet.ts'
import { jobNames } from './jobs.ts'
import { shown, subjectOf } from './plans.ts'

describe.each(jobNames)('feet in %s', (name) => {
  const subject = subjectOf(name)

  it('are on no floor that a coat keeps them off', () => {
    const wrong = subject.plan.days.placed.flatMap((one) => {
      const step = subject.steps.get(one.keyFor ?? one.step)
      if (!step) return []
      const wet = wetUnder(subject, step, subject.plan.days.placed)
      return one.pieces
        .filter((piece) =>
          wet.some((spell) => piece.startMinute < spell.endMinute && spell.startMinute < piece.endMinute),
        )
        .map((piece) => `${one.step} at ${shown(piece.startMinute)}`)
    })
    expect(wrong).toEqual([])
  })
})
