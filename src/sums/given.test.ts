import { describe, expect, it } from 'vitest'
import type { SumField, SumValues } from './field.ts'
import { given } from './given.ts'
import { SumError } from './sum-error.ts'

const share: SumField = {
  name: 'share',
  dimension: 'share',
  required: true,
  limits: { over: 0, atMost: 1 },
  doc: 'A share.',
  example: '50 %',
}
const count: SumField = {
  ...share,
  name: 'count',
  dimension: 'count',
  required: false,
  limits: { atLeast: 1 },
}
const density: SumField = {
  ...share,
  name: 'density',
  dimension: 'density',
  required: false,
  default: '1.1 kg/L',
  limits: { over: 0 },
}
const words: SumField = { ...share, name: 'words', dimension: 'text', required: false, limits: {} }
const fields = [share, count, density, words]

const code = (values: SumValues): string => {
  try {
    given(fields, values)
  } catch (error) {
    if (error instanceof SumError) return error.code
    throw error
  }
  return 'none'
}

describe('given values', () => {
  it('hold every input within its bounds', () => {
    expect(code({ share: 1 })).toBe('none')
    expect(code({ share: 0 })).toBe('sums.outOfRange')
    expect(code({ share: 1.0001 })).toBe('sums.outOfRange')
    expect(code({ share: 0.5, count: 0 })).toBe('sums.outOfRange')
    expect(code({ share: 0.5, count: 1.5 })).toBe('sums.outOfRange')
    expect(code({ share: 0.5, count: 2 })).toBe('none')
  })

  it('are numbers where a number belongs and text where text does', () => {
    expect(code({ share: 'half' })).toBe('sums.notANumber')
    expect(code({ share: Number.NaN })).toBe('sums.notANumber')
    expect(code({ share: Number.POSITIVE_INFINITY })).toBe('sums.notANumber')
    expect(code({ share: 0.5, words: 3 })).toBe('sums.notText')
    expect(code({ share: 0.5, words: 'x'.repeat(201) })).toBe('sums.tooLong')
  })

  it('take the default of an input that was left out, and tell it from a value that was given', () => {
    const left = given(fields, { share: 0.5 })
    expect(left.number('density')).toBeCloseTo(1100, 9)
    expect(left.stated('density')).toBe(false)
    expect(given(fields, { share: 0.5, density: 1100 }).stated('density')).toBe(true)
    expect(left.optional('count')).toBeUndefined()
  })
})
