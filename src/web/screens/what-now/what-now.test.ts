import { describe, expect, it } from 'vitest'
import { type MishapId, mishapActs, mishaps } from '#catalogue'
import type { RawCells, RawDocument } from '#job'
import { plan } from '#plan'
import { createWords } from '#words'
import { planInput, projectRaw, sampleRaw, sampleWeather } from '../../../../test/support/samples.ts'
import { howItMoved } from '../../job/how-it-moved.ts'
import type { LogLine } from '../../job/job-view.ts'
import { localInstant } from '../../job/local-date.ts'
import { brokenSteps } from './broken-steps.ts'
import { entryCells, filmsOf, mishapFigures } from './mishap-data.ts'

const ids = Object.keys(mishaps) as MishapId[]
const raw = sampleRaw('open-powerboat')
const weather = sampleWeather('open-powerboat')
const planWith = (log: Readonly<Record<string, RawCells>>, nowMs: number) => {
  const projected = projectRaw({ ...raw, log } as RawDocument)
  expect(projected.problems.filter(({ severity }) => severity === 'error')).toEqual([])
  return plan({ ...planInput(projected, weather), nowMs })
}
const first = plan(planInput(projectRaw(raw), weather))
const coats = first.steps.steps.filter(({ kind, coats: of }) => kind === 'coat' && (of ?? 0) >= 2)
const coat = coats[0]?.id ?? ''
const placed = first.days.placed.find(({ step }) => step === coat)
const nowMs = ((placed?.startMinute ?? 0) + 30) * 60_000
const at = (ms: number): string => localInstant(ms, first.days.timeZone)

const doneBefore = Object.fromEntries(
  first.days.placed
    .filter(({ endMinute }) => endMinute * 60_000 <= nowMs)
    .map(({ step, endMinute }, index) => [
      `done-${String(index).padStart(4, '0')}`,
      { kind: 'done', step, at: at(endMinute * 60_000) },
    ]),
)

describe('the sentences of every mishap', () => {
  it.each(['metric', 'us'] as const)('have every figure they ask for, in %s units', (system) => {
    const words = createWords({ locale: 'en-GB', system })
    for (const id of ids) {
      const { see, now, after, never } = mishapActs[id]
      for (const code of [see, ...now, ...after, ...never]) {
        const text = words.sentence(code, mishapFigures(id))
        expect(text, code).not.toMatch(/mishap\.|\?|NaN/)
      }
    }
  })
})

describe('the entry of a mishap', () => {
  it('is read by the job without a fault, whatever became of the coat', () => {
    const log = Object.fromEntries(
      ids.flatMap((id) =>
        [undefined, ...filmsOf(id)].map((film) => [
          `${id} ${film ?? 'none'}`.replaceAll(' ', '-').toLowerCase(),
          { at: at(nowMs), ...entryCells({ id, step: coat, film }) },
        ]),
      ),
    )
    expect(projectRaw({ ...raw, log } as RawDocument).problems).toEqual(projectRaw(raw).problems)
  })

  it('takes the share that somebody typed instead of the usual one, only where the coat stands', () => {
    expect(entryCells({ id: 'runs', step: coat, film: 'stands', share: '12 %' })).toMatchObject({
      share: '12 %',
    })
    expect(entryCells({ id: 'runs', step: coat, film: 'stands', share: '' })).toMatchObject({ share: '5 %' })
    expect(entryCells({ id: 'runs', step: coat, film: 'sanded off', share: '12 %' })).not.toHaveProperty(
      'share',
    )
  })

  it('names no film where no coat is in it', () => {
    expect(entryCells({ id: 'eyeSplash' })).toEqual({ kind: 'mishap', mishap: 'eyeSplash' })
  })
})

describe('the coat that went wrong', () => {
  const line = (kind: string, step: string, ms: number): LogLine => ({
    id: `${kind}-${step}`,
    sent: true,
    cells: { kind, step, at: at(ms) },
  })

  it('is the one under way by the plan, before those that are over', () => {
    const found = brokenSteps({ plan: first, log: [], nowMs })
    expect(found[0]).toBe(coat)
    expect(found.length).toBeLessThanOrEqual(12)
  })

  it('is the one last started by the log, and never one still to come', () => {
    const later = coats.at(-1)?.id ?? ''
    expect(brokenSteps({ plan: first, log: [], nowMs })).not.toContain(later)
    expect(brokenSteps({ plan: first, log: [line('started', later, nowMs - 60_000)], nowMs })[0]).toBe(later)
    const nothing = brokenSteps({ plan: first, log: [], nowMs: first.days.startMinute * 60_000 - 1 })
    expect(nothing).toEqual([])
  })
})

describe('how the plan moved', () => {
  const was = planWith(doneBefore, nowMs)

  it('is told by a coat that has to come off: it is put on again later, and its sanding is new', () => {
    const entry = { at: at(nowMs), ...entryCells({ id: 'rain', step: coat, film: 'sanded off' }) }
    const is = planWith({ ...doneBefore, rain: entry }, nowMs)
    const { steps, launch } = howItMoved(was, is)
    const again = steps.find(({ step }) => step === coat)
    expect(again?.toMinute).toBeGreaterThan(again?.fromMinute ?? Number.POSITIVE_INFINITY)
    expect(steps.find(({ step }) => step === `mend:${coat}`)).not.toHaveProperty('fromMinute')
    expect(launch?.toMinute).toBeGreaterThanOrEqual(launch?.fromMinute ?? Number.POSITIVE_INFINITY)
  })

  it('is nothing for a mishap without a coat, and for the same plan', () => {
    const entry = { at: at(nowMs), ...entryCells({ id: 'spill' }) }
    const is = planWith({ ...doneBefore, spill: entry }, nowMs)
    for (const other of [was, is]) expect(howItMoved(was, other)).toMatchObject({ steps: [], lost: [] })
  })
})
