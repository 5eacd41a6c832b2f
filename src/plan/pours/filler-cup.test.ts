import { describe, expect, it } from 'vitest'
import { cupMinutes, cupsFor } from './filler-cup.ts'

const cup = { mostM3: 0.6e-3, potShare: 0.5, leadMinutes: 1 }
const pot = { induction: 0, life: 30 }

describe('a cup of filler', () => {
  it('is spread within half its pot life, less a minute of stirring', () => {
    expect(cupMinutes(cup, pot)).toBe(14)
  })

  it.each([
    ['by its size', 3e-3, 10, 5],
    ['by its time', 0.6e-3, 60, 5],
    ['as a whole one', 0.1e-3, 14, 1],
    ['one at least', 0, 0, 1],
  ])('is counted %s', (_, mixedM3, minutes, cups) => {
    expect(cupsFor(cup, { mixedM3, minutes, pot })).toBe(cups)
  })

  it('is counted by its size alone where the pot gives no time, which a fault tells', () => {
    expect(cupsFor(cup, { mixedM3: 1.2e-3, minutes: 600, pot: { induction: 0, life: 2 } })).toBe(2)
  })
})
