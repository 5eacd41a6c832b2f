import { describe, expect, it } from 'vitest'
import type { Days, Steps } from './types.ts'
import { coatWindows } from './windows.ts'

const table = (hours: number) => [{ airC: 20, hours }]
const placed = (step: string, startMinute: number) =>
  ({ step, startMinute, endMinute: startMinute + 60, pieces: [], verdict: 'go', done: false }) as const
const need = {
  step: 'coat 1',
  wait: { kind: 'clock', clock: 'recoatLeast', table: table(10) },
  window: { table: table(72), keyMinutes: 30, keyAfter: [], barred: [] },
} as const
const steps = {
  steps: [
    { id: 'coat 1', needs: [] },
    { id: 'coat 2', needs: [need] },
  ],
} as unknown as Steps
const days = (...all: readonly ReturnType<typeof placed>[]): Pick<Days, 'placed'> => ({ placed: all })

describe('coatWindows', () => {
  it('opens when the coat below may be coated and shuts when it has to be sanded', () => {
    const found = coatWindows({
      steps,
      days: days(placed('coat 1', 0), placed('coat 2', 1000)),
      conditions: { air: [] },
    })
    expect(found).toEqual([
      { after: 'coat 1', step: 'coat 2', fromMinute: 60, openMinute: 60 + 600, shutMinute: 60 + 72 * 60 },
    ])
  })
  it('has nothing to say of a coat that finds no place', () => {
    expect(coatWindows({ steps, days: days(placed('coat 1', 0)), conditions: { air: [] } })).toEqual([])
  })
})
