import { describe, expect, it } from 'vitest'
import type { Plan } from '#plan'
import { MIDNIGHT, paperJob, paperPlan } from '../../../test/support/paper-plan.ts'
import { testPress } from '../../../test/support/paper-press.ts'
import { createKit } from '../kit.ts'
import { createSetter } from '../setter.ts'
import { minuteAt } from './clock-minute.ts'
import { firstSentence } from './day-cautions.ts'
import { dayData } from './day-data.ts'
import { daySheetSheets } from './day-sheet.ts'
import { hoursAxis } from './hours-axis.ts'
import { numberList } from './numbers.ts'
import { paintHoursOf } from './paint-strips.ts'
import { tape } from './tape.ts'

const setter = createSetter(await testPress())
const kitFor = (plan: Plan, locale = 'en-GB') =>
  createKit({ plan, job: { ...paperJob, locale }, page: 'A4' }, setter)
const textsOf = (plan: Plan, locale?: string): readonly string[] =>
  daySheetSheets(kitFor(plan, locale), '2027-05-10').pages[0]!.flatMap((shape) =>
    shape.kind === 'text' ? [shape.text] : [],
  )

describe('the day sheet', () => {
  const kit = kitFor(paperPlan)
  const data = dayData(kit, '2027-05-10')

  it('numbers the steps of the day in the order of the clock', () => {
    expect(data.steps.map((step) => [step.number, step.id, step.coat])).toEqual([
      [1, 'sand:port', false],
      [2, 'coat:port:primer:1', true],
      [3, 'mask:transom', false],
    ])
  })

  it('brings the pours of the day and the cautions that stand before its steps', () => {
    expect(data.pours.map(({ number, pour }) => [number, pour.nr])).toEqual([
      [2, 1],
      [2, 2],
    ])
    expect(data.cautions.map(({ caution, steps }) => [caution.code, steps])).toEqual([
      ['caution.wetFloorPower', [2]],
      ['caution.epoxy', [2]],
    ])
  })

  it('says hours first, and the clock of every pour', () => {
    const texts = textsOf(paperPlan).join(' ').replaceAll('\u2009', ' ')
    expect(texts).toContain('07:30 to 12:00, 8.25 h for 2 people')
    for (const clock of ['08:40', '11:10', '09:50', '12:20']) expect(texts).toContain(clock)
  })

  /** The pours of the plan, so many times over, each an hour before the one in front of it. */
  const withPours = (copies: number, times: number): Plan => {
    const all = Array.from({ length: copies }, (_, at) =>
      paperPlan.pours.pours.map((pour) => ({
        ...pour,
        times,
        mixAtMinute: pour.mixAtMinute - 10 * at,
        useFromMinute: pour.useFromMinute - 10 * at,
      })),
    ).flat()
    return { ...paperPlan, pours: { ...paperPlan.pours, pours: all } }
  }

  it.each([
    ['cards', 1],
    ['a table of many', 12],
  ])('says on %s how many times a cup is mixed', (_, copies) => {
    const texts = textsOf(withPours(copies, 4)).join(' ')
    expect(texts).toMatch(/4 cups/)
    expect(textsOf(withPours(copies, 1)).join(' ')).not.toMatch(/cups/)
  })

  it('has the pours in the order of the clock', () => {
    const { pours } = dayData(kitFor(withPours(3, 1)), '2027-05-10')
    const clock = pours.map(({ pour }) => pour.useFromMinute)
    expect(clock).toEqual(clock.toSorted((a, b) => a - b))
    expect(clock).toHaveLength(6)
  })

  it('shows the verdict of each hour on the axis', () => {
    const [strip] = paintHoursOf(kit, data, hoursAxis(kit, data))
    expect(strip!.names).toEqual(['Primer'])
    expect(strip!.verdicts).toEqual([
      ...['no', 'no', 'go', 'go', 'go', 'go', 'go', 'go', 'risky', 'risky'],
      ...['unknown', 'unknown', 'unknown', 'unknown'],
    ])
  })

  it('counts to twelve for a reader whose clock does', () => {
    const american = kitFor(paperPlan, 'en-US')
    const axis = hoursAxis(american, data)
    const hours = tape(american, { ...data, day: undefined, steps: [] }, { axis, mostPeople: 0 })
      .draw(0)
      .flatMap((shape) => (shape.kind === 'text' ? [shape.text] : []))
    expect(hours).toEqual(['6', '7', '8', '9', '10', '11', '12', '1', '2', '3', '4', '5', '6', '7', '8'])
    const texts = textsOf(paperPlan, 'en-US').map((text) => text.replaceAll('\u2009', ' '))
    expect(texts.join(' ')).toContain('08:40 AM')
  })

  it('widens the tape for work before six and after twenty', () => {
    const early = { ...paperPlan.days.days[0]! }
    const pieces = [
      { ...early.pieces[0]!, startMinute: MIDNIGHT + 4.5 * 60, endMinute: MIDNIGHT + 21.25 * 60 },
    ]
    const plan: Plan = { ...paperPlan, days: { ...paperPlan.days, days: [{ ...early, pieces }] } }
    const axis = hoursAxis(kitFor(plan), dayData(kitFor(plan), '2027-05-10'))
    expect([axis.from, axis.to]).toEqual([4, 22])
  })

  it('reads the clock of the wall on the day the clocks change', () => {
    const midnight = Date.parse('2027-03-27T23:00:00Z') / 60_000
    const day = {
      ...paperPlan.days.days[0]!,
      date: '2027-03-28',
      startMinute: midnight,
      endMinute: midnight + 1380,
      pieces: [],
    }
    const plan: Plan = {
      ...paperPlan,
      days: { ...paperPlan.days, timeZone: 'Europe/Stockholm', days: [day] },
    }
    const changed = kitFor(plan)
    const minute = minuteAt(changed, dayData(changed, '2027-03-28'), 8 * 60)
    expect(new Date(minute * 60_000).toISOString()).toBe('2027-03-28T06:00:00.000Z')
  })
})

describe('numberList', () => {
  it('joins numbers that follow each other', () => {
    expect(numberList([1, 2, 3, 5, 7, 8])).toBe('1\u20133, 5, 7, 8')
    expect(numberList([4, 4, 2])).toBe('2, 4')
    expect(numberList([])).toBe('')
  })
})

describe('firstSentence', () => {
  it('ends at the first full stop that a space follows', () => {
    expect(firstSentence('Work over 1.8 m is done from staging. Build it first.')).toBe(
      'Work over 1.8 m is done from staging.',
    )
    expect(firstSentence('No full stop')).toBe('No full stop')
  })
})
