/** No dust on wet paint: what was sanded where while a coat was not yet dry to touch. */
import { describe, expect, it } from 'vitest'
import { allCoats, clockRows } from './coats.ts'
import { jobNames } from './jobs.ts'
import { dryMinute, fullAfter, placedCoats, type Subject, shown, subjectOf } from './plans.ts'

type Spell = { readonly step: string; readonly startMinute: number; readonly endMinute: number }

/** Pieces of work that make dust at a place; what the calendar puts in to key a surface is sanding at the boat. */
const sandingAt = (subject: Subject, place: string): readonly Spell[] =>
  subject.plan.days.placed.flatMap((one) => {
    const step = subject.steps.get(one.step)
    const makes = step ? step.dust === 'makes' && step.air === place : place === 'boat'
    return makes ? one.pieces.map((piece) => ({ ...piece, step: one.step })) : []
  })

/** Sanding between the start of each wet coat and the minute it no longer minds. */
function sandedInto(subject: Subject, dryMinute: (step: string, sheet: string) => number): readonly string[] {
  return placedCoats(subject).flatMap((coat) => {
    const step = subject.steps.get(coat.step)!
    if (step.dust !== 'minds') return []
    const { startMinute } = subject.placed.get(coat.step)!
    const dry = dryMinute(coat.step, coat.sheet)
    return sandingAt(subject, step.air)
      .filter((spell) => spell.startMinute < dry && startMinute < spell.endMinute)
      .map((spell) => `${coat.step} wet until ${shown(dry)}: ${spell.step} at ${shown(spell.startMinute)}`)
  })
}

describe.each(jobNames)('dust in %s', (name) => {
  const subject = subjectOf(name)

  it('is minded by every coat that is rolled or brushed', () => {
    const knife = new Set(
      subject.plan.buildUps.layers.flatMap((l) => (l.method === 'filler knife' ? [l.layer] : [])),
    )
    const painted = allCoats(subject.raw).filter((coat) => !knife.has(coat.layer))
    expect(painted.filter((coat) => subject.steps.get(coat.step)!.dust !== 'minds')).toEqual([])
  })

  it('is not made in the time the plan itself holds a coat for wet', () => {
    const wrong = sandedInto(subject, (id) =>
      dryMinute(subject, subject.steps.get(id)!, subject.placed.get(id)!.endMinute),
    )
    expect(wrong).toEqual([])
  })

  it('is not made while a coat at the same place is within its touch-dry time in the air it gets', () => {
    const wrong = sandedInto(subject, (after, sheet) =>
      fullAfter({ subject, rows: clockRows(subject.raw, sheet, 'touchDry')!, sense: 'least', after }),
    )
    expect(wrong).toEqual([])
  })
})
