import { describe, expect, it } from 'vitest'
import { type FormulaTerm, writeFormula } from './formula.ts'

const part = (value: number): FormulaTerm => ({ kind: 'part', key: 'x', value })
const figures = { figure: (_: string, value: number) => `${value} m`, number: String }
const written = (term: FormulaTerm): string => writeFormula(term, figures)

describe('a formula', () => {
  it('puts brackets where the sum would be another without them, and nowhere else', () => {
    const [a, b, c] = [part(2), part(3), part(5)]
    expect(written({ kind: 'times', of: [a, { kind: 'plus', of: [b, c] }] })).toBe('2 m × (3 m + 5 m)')
    expect(written({ kind: 'plus', of: [a, { kind: 'times', of: [b, c] }] })).toBe('2 m + 3 m × 5 m')
    expect(written({ kind: 'minus', of: [a, { kind: 'minus', of: [b, c] }] })).toBe('2 m − (3 m − 5 m)')
    expect(written({ kind: 'minus', of: [{ kind: 'minus', of: [a, b] }, c] })).toBe('2 m − 3 m − 5 m')
    expect(written({ kind: 'over', of: [a, { kind: 'times', of: [b, c] }] })).toBe('2 m ÷ (3 m × 5 m)')
    expect(written({ kind: 'over', of: [{ kind: 'times', of: [a, b] }, c] })).toBe('2 m × 3 m ÷ 5 m')
  })

  it('says when it is rounded up, and keeps brackets inside of what is rounded', () => {
    const sum: FormulaTerm = { kind: 'plus', of: [part(2), part(3)] }
    expect(written({ kind: 'up', of: [sum], to: 1 })).toBe('2 m + 3 m, rounded up')
    const times: FormulaTerm = { kind: 'times', of: [{ kind: 'nearest', of: [sum], to: 1 }, part(4)] }
    expect(written(times)).toBe('(2 m + 3 m) × 4 m')
  })

  it('knows numbers, π and the logarithm', () => {
    const pi: FormulaTerm = { kind: 'number', value: Math.PI }
    const four: FormulaTerm = { kind: 'number', value: 4 }
    expect(written({ kind: 'minus', of: [four, pi] })).toBe('4 − π')
    expect(written({ kind: 'ln', of: [part(2)] })).toBe('ln(2 m)')
  })
})
