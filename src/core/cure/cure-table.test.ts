import { describe, expect, it } from 'vitest'
import { CureError } from './cure-error.ts'
import { cureTable } from './cure-table.ts'

const fault = (points: Parameters<typeof cureTable>[0]) => {
  try {
    cureTable(points)
  } catch (error) {
    return error instanceof CureError ? error.code : error
  }
  return 'none'
}

describe('cure table', () => {
  it('puts rows in order of temperature and leaves what it was given alone', () => {
    const given = [
      { airC: 25, hours: 6 },
      { airC: 5, hours: 24 },
    ]
    expect(cureTable(given).map((point) => point.airC)).toEqual([5, 25])
    expect(given[0]?.airC).toBe(25)
  })

  it('refuses what is no table', () => {
    expect(fault([])).toBe('cure.tableEmpty')
    expect(fault([{ airC: 5, hours: 0 }])).toBe('cure.hoursNotPositive')
    expect(fault([{ airC: 5, hours: Number.POSITIVE_INFINITY }])).toBe('cure.hoursNotPositive')
    expect(fault([{ airC: Number.NaN, hours: 1 }])).toBe('cure.airNotFinite')
    expect(
      fault([
        { airC: 5, hours: 1 },
        { airC: 5, hours: 2 },
      ]),
    ).toBe('cure.airTwice')
  })
})
