import { describe, expect, it } from 'vitest'
import type { Pour } from '#plan'
import type { LogLine } from '../../job/job-view.ts'
import { type PotShelf, readPots, withoutPot, withPot, writePots } from './kept-pots.ts'
import { type Pot, potOf, potState } from './pot-clock.ts'
import { pourOf } from './pour-of.ts'
import { startIsTold } from './start-is-told.ts'

const mixedMs = Date.parse('2027-05-14T07:02:00Z')
const at = (minutes: number): number => mixedMs + minutes * 60_000
const pot: Pot = { step: 'coat:port:1', nr: 1, of: 2, mixedMs, standMinutes: 15, lifeMinutes: 100, airC: 16 }

describe('the clock of a pot', () => {
  it('runs from the moment it was mixed, whatever hour the plan had', () => {
    const pour = { ...pourOf(pot), mixAtMinute: 1000, useFromMinute: 1015, useUntilMinute: 1100 } as Pour
    expect(potOf(pour, mixedMs)).toEqual(pot)
    expect(potState(pot, at(40))).toEqual({
      kind: 'good',
      fromMs: at(15),
      untilMs: at(100),
      leftMinutes: 60,
      usedShare: 0.4,
    })
  })

  it('stands first, is good, comes to its last tenth, and is over at its end', () => {
    const kinds = [0, 14.9, 15, 89.9, 90, 99.99, 100, 5000].map((minutes) => potState(pot, at(minutes)).kind)
    expect(kinds).toEqual(['stands', 'stands', 'good', 'good', 'last', 'last', 'over', 'over'])
  })

  it('never promises a minute that has begun', () => {
    expect(potState(pot, at(99.5)).leftMinutes).toBe(0)
    expect(potState(pot, at(39.1)).leftMinutes).toBe(60)
  })

  it('gives no more than its life when the clock is set back', () => {
    expect(potState(pot, at(-600))).toMatchObject({ leftMinutes: 100, usedShare: 0, kind: 'stands' })
  })

  it('has no end where the sheet gives no pot life, and is over at once where it is nothing', () => {
    const { lifeMinutes: _, ...open } = pot
    expect(potState(open, at(600))).toEqual({ kind: 'open', fromMs: at(15) })
    expect(potState({ ...pot, lifeMinutes: 0 }, at(0)).kind).toBe('over')
  })
})

describe('pots that are kept', () => {
  const shelfOf = (text: string | null): PotShelf & { readonly text: () => string | null } => {
    let kept = text
    return {
      text: () => kept,
      getItem: (key) => (key === 'hardstand.pots.job1' ? kept : null),
      setItem: (_, next) => {
        kept = next
      },
    }
  }
  const other: Pot = { ...pot, nr: 2 }

  it('come back after a reload, several at once, and only for their job', () => {
    const shelf = shelfOf(null)
    expect(writePots(shelf, 'job1', withPot(withPot([], pot), other))).toBe(true)
    expect(readPots(shelf, 'job1', at(5))).toEqual([pot, other])
    expect(readPots(shelf, 'job2', at(5))).toEqual([])
  })

  it('are one a pour: mixed anew, the clock starts again', () => {
    const anew = { ...pot, mixedMs: at(50) }
    expect(withPot([pot, other], anew)).toEqual([other, anew])
    expect(withoutPot([pot, other], pot)).toEqual([other])
  })

  it('are gone after a day, and whatever is no pot is left out', () => {
    const bad = [
      null,
      5,
      'x',
      {},
      { ...pot, nr: 0 },
      { ...pot, mixedMs: 'soon' },
      { ...pot, lifeMinutes: -1 },
    ]
    expect(readPots(shelfOf(JSON.stringify([...bad, pot])), 'job1', at(5))).toEqual([pot])
    expect(readPots(shelfOf(JSON.stringify([pot])), 'job1', at(24 * 60))).toEqual([])
    for (const text of ['', '{', '{}', 'null']) expect(readPots(shelfOf(text), 'job1', at(5))).toEqual([])
  })
})

describe('a start in the log', () => {
  let nr = 0
  const line = (kind: string, minutes: number, cells = {}): LogLine => ({
    id: `entry-${nr++}`,
    sent: true,
    cells: { kind, step: pot.step, at: new Date(at(minutes)).toISOString(), ...cells },
  })

  it('is told once: the second pot of a coat does not begin it anew', () => {
    expect(startIsTold([], pot.step)).toBe(false)
    expect(startIsTold([line('started', 0)], pot.step)).toBe(true)
    expect(startIsTold([line('started', 0), line('note', 5)], pot.step)).toBe(true)
    expect(startIsTold([line('started', 0)], 'another')).toBe(false)
  })

  it('is told again after the coat was done, taken back, or lost, in whatever order entries came', () => {
    for (const kind of ['done', 'not done'])
      expect(startIsTold([line(kind, 9), line('started', 0)], pot.step)).toBe(false)
    expect(startIsTold([line('started', 0), line('mishap', 9, { film: 'wiped off' })], pot.step)).toBe(false)
    expect(startIsTold([line('started', 0), line('mishap', 9, { film: 'stands' })], pot.step)).toBe(true)
  })
})
