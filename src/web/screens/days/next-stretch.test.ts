import { describe, expect, it } from 'vitest'
import type { ShownPlan } from '../../worker/messages.ts'
import { marginCloses, nextStretches } from './next-stretch.ts'

const plan = {
  steps: {
    steps: [
      { id: 'a', zone: 'port', hoursKey: 'port|s' },
      { id: 'b', zone: 'deck', hoursKey: 'deck|s' },
      { id: 'c', zone: 'hatch', hoursKey: 'deck|s' },
    ],
  },
  days: { placed: ['a', 'b', 'c'].map((step) => ({ step, startMinute: 0, endMinute: 60 })) },
  conditions: {
    zones: [
      { key: 'port|s', firstMinute: 0, verdicts: ['no', 'go', 'go', 'risky', 'go'] },
      { key: 'deck|s', firstMinute: 0, verdicts: ['no', 'no', 'no', 'no', 'no'] },
    ],
    air: [
      {
        ...{ key: 'port', shelter: 'open', firstMinute: 0 },
        airC: [15, 15, 15],
        humidityShare: [0.7, 0.7, 0.7],
        surfaceC: [15, 14, 11],
        dewC: [10, 10, 10],
      },
    ],
  },
} as unknown as ShownPlan

describe('the next hours that take a coat', () => {
  it('are the first stretch from now on, once for zones that are judged alike', () => {
    const found = nextStretches(plan, ['port', 'deck', 'hatch'], { fromMinute: 0, toMinute: 300 })
    expect(found.map(({ zones, open }) => [zones, open])).toEqual([
      [['port'], { fromMinute: 60, toMinute: 180 }],
      [['deck', 'hatch'], undefined],
    ])
  })

  it('end when the skin comes within the margin, on the line between two hours', () => {
    // 4 K at 01:00, 1 K at 02:00: 3 K is passed a third of the way.
    expect(marginCloses(plan, { place: 'port', minute: 120, neededK: 3 })).toBe(80)
    expect(marginCloses(plan, { place: 'port', minute: 60, neededK: 3 })).toBeUndefined()
    expect(marginCloses(plan, { place: 'port', minute: 600, neededK: 3 })).toBeUndefined()
  })
})
