/** No step stands later than it must: with all others where they are, it could not begin at any quarter before. */
import { describe, expect, it } from 'vitest'
import { couldStart, placedSteps, trialOf } from './could-start.ts'
import { jobNames } from './jobs.ts'
import { shown, slotMinutes, subjectOf, toSlots } from './plans.ts'

describe.each(jobNames)('every step of %s', (name) => {
  const subject = subjectOf(name)
  const trials = placedSteps(subject).map((placed) => trialOf(subject, placed))

  it('could begin where the plan has it', () => {
    const wrong = trials.filter((trial) => {
      const { startMinute, verdict } = trial.placed
      return !couldStart(trial, startMinute, verdict === 'go' ? 'go' : 'any')
    })
    expect(wrong.map(({ placed }) => `${placed.step} at ${shown(placed.startMinute)}`)).toEqual([])
  })

  it('could begin at no quarter of an hour before', () => {
    const sooner = trials.flatMap((trial) => {
      const { placed, readyMinute } = trial
      for (let minute = toSlots(readyMinute); minute < placed.startMinute; minute += slotMinutes)
        if (couldStart(trial, minute, 'go'))
          return [`${placed.step} at ${shown(placed.startMinute)} could begin at ${shown(minute)}`]
      return []
    })
    expect(sooner).toEqual([])
  })
})
