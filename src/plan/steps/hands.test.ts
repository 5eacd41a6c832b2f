import { describe, expect, it } from 'vitest'
import { handsAtOnce } from './hands.ts'

const shift = (person: string, days: readonly number[], from: string, until: string) => ({
  person,
  days,
  from,
  until,
})

describe('handsAtOnce', () => {
  it('counts who is there together, not who works on the job', () => {
    const week = shift('jo', [1, 2, 3, 4, 5], '08:00', '16:30')
    expect(handsAtOnce([week, shift('sam', [6, 7], '09:00', '15:00')])).toBe(1)
    expect(handsAtOnce([week, shift('sam', [5, 6], '09:00', '15:00')])).toBe(2)
    expect(handsAtOnce([week, shift('sam', [5], '16:30', '20:00')])).toBe(1)
  })
  it('counts a person of two shifts once, and nobody as none', () => {
    expect(handsAtOnce([shift('jo', [1], '08:00', '14:00'), shift('jo', [1], '12:00', '18:00')])).toBe(1)
    expect(handsAtOnce([])).toBe(0)
  })
})
