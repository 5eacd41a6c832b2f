import { describe, expect, it } from 'vitest'
import { SumError } from './sum-error.ts'
import { readTimeTable } from './time-table.ts'

const fault = (text: string): SumError => {
  try {
    readTimeTable('table', text)
  } catch (error) {
    if (error instanceof SumError) return error
    throw error
  }
  throw new Error('no fault')
}

describe('time table', () => {
  it('is read in any order and unit', () => {
    const rows = [
      { airC: 5, hours: 24 },
      { airC: 15, hours: 10 },
      { airC: 25, hours: 6 },
    ]
    expect(readTimeTable('table', '5C:24h,15C:10h,25C:6h')).toEqual(rows)
    expect(readTimeTable('table', ' 77 °F : 360 min, 5 °C : 1 d , 15C:10 h')).toEqual([
      rows[0],
      rows[1],
      { airC: expect.closeTo(25, 9), hours: 6 },
    ])
  })

  it('is parted by semicolons where figures have decimal commas', () => {
    expect(readTimeTable('table', '15C: 7,5h; 25C: 4h')).toEqual([
      { airC: 15, hours: 7.5 },
      { airC: 25, hours: 4 },
    ])
  })

  it('names the row that is not one', () => {
    for (const part of ['15C:10hh', '15C', '15C:0h', '15:10h', '', '900C:1h'])
      expect(fault(`5C:24h,${part}`)).toMatchObject({ code: 'sums.badTable', data: { part, field: 'table' } })
  })

  it('keeps the code of a fault of the whole table', () => {
    expect(fault('5C:24h,5C:10h')).toMatchObject({ code: 'cure.airTwice', data: { field: 'table', airC: 5 } })
  })
})
