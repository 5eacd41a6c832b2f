import { describe, expect, it, vi } from 'vitest'
import { paperPlan } from '../../../test/support/paper-plan.ts'
import type { ShownPlan } from '../worker/messages.ts'
import { createPlanMoves } from './plan-moves.ts'

type Stamp = Partial<ShownPlan['stamp']>

/** The first placed step an hour later for every `late`. */
const planOf = (late: number, stamp: Stamp): ShownPlan => {
  const [first, ...rest] = paperPlan.days.placed
  const startMinute = first!.startMinute + 60 * late
  return {
    ...paperPlan,
    stamp: { ...paperPlan.stamp, weather: 'a', ...stamp },
    days: { ...paperPlan.days, placed: [{ ...first!, startMinute }, ...rest] },
  }
}

const seen = (...plans: readonly (readonly [ShownPlan, number])[]) => {
  const moves = createPlanMoves()
  for (const [plan, number] of plans) moves.see(plan, { number, atMs: number })
  return moves.list().map(({ by, number, moved }) => [by, number, moved.steps.length])
}

describe('what the last plans moved', () => {
  it('is told of an edit here, an edit elsewhere, the log and other weather, newest first', () => {
    expect(
      seen(
        [planOf(0, { work: '1' }), 4],
        [planOf(1, { work: '2' }), 5],
        [planOf(2, { work: '3' }), 5],
        [planOf(3, { work: '3', log: 'more' }), 5],
        [planOf(4, { work: '3', log: 'more', weather: 'b' }), 5],
      ),
    ).toEqual([
      ['weather', 5, 1],
      ['log', 5, 1],
      ['elsewhere', 5, 1],
      ['edit', 5, 1],
    ])
  })
  it('is not told of the clock, of an edit that moves nothing, nor of weather that came late', () => {
    expect(seen([planOf(0, { nowMs: 1 }), 1], [planOf(1, { nowMs: 2 }), 1])).toEqual([])
    expect(seen([planOf(0, { work: '1' }), 1], [planOf(0, { work: '2' }), 2])).toEqual([])
    const { weather: _, ...bare } = planOf(0, {}).stamp
    const without = { ...planOf(0, {}), stamp: bare }
    expect(seen([without, 1], [planOf(1, {}), 1])).toEqual([])
    expect(seen([without, 1], [planOf(1, { work: 'with weather' }), 2])).toEqual([['weather', 2, 1]])
  })
  it('names what is no longer part of the work by what it was', () => {
    const moves = createPlanMoves()
    const was = planOf(0, { work: '1' })
    const steps = { ...was.steps, steps: was.steps.steps.slice(1) }
    const gone = was.steps.steps[0]!.id
    const placed = was.days.placed.filter(({ step }) => step !== gone)
    moves.see(was, { number: 1, atMs: 0 })
    const stamp = { ...was.stamp, work: '2' }
    moves.see({ ...was, stamp, steps, days: { ...was.days, placed } }, { number: 2, atMs: 0 })
    const named = moves.list()[0]?.moved.gone
    expect(named?.map(({ step }) => step)).toEqual([gone])
    expect(named?.[0]?.text.code).not.toBe('step.unknown')
  })
  it('goes on from those that were kept, and is kept at every move', () => {
    const keep = vi.fn()
    const kept = createPlanMoves()
    kept.see(planOf(0, { work: '1' }), { number: 1, atMs: 1 })
    kept.see(planOf(1, { work: '2' }), { number: 2, atMs: 2 })
    const moves = createPlanMoves(kept.list(), keep)
    moves.see(planOf(1, { work: '2' }), { number: 2, atMs: 3 })
    expect(keep).not.toHaveBeenCalled()
    expect(moves.list()).toEqual(kept.list())
    moves.see(planOf(3, { work: '3' }), { number: 3, atMs: 4 })
    expect(moves.list().map(({ number }) => number)).toEqual([3, 2])
    expect(keep).toHaveBeenCalledExactlyOnceWith(moves.list())
  })
})
