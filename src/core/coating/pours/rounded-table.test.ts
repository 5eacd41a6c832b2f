import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { roundedTable } from './rounded-table.ts'

const sum = (values: readonly number[]): number => values.reduce((all, value) => all + value, 0)
const columnsOf = (table: readonly (readonly number[])[]): readonly (readonly number[])[] =>
  (table[0] ?? []).map((_, at) => table.map((row) => row[at]!))

const tables = fc
  .tuple(fc.integer({ min: 1, max: 12 }), fc.integer({ min: 1, max: 4 }))
  .chain(([rows, width]) =>
    fc.array(
      fc.array(fc.double({ min: 0, max: 3000, noNaN: true }), { minLength: width, maxLength: width }),
      { minLength: rows, maxLength: rows },
    ),
  )
/** Sums of doubles, not of real numbers. */
const slip = 1e-6

describe('roundedTable', () => {
  it('adds up the thirds that rounding alone would lose', () => {
    const third = [100 / 3, 50 / 3]
    const table = roundedTable([third, third, third])
    expect(columnsOf(table).map(sum)).toEqual([100, 50])
    expect(table.map(sum)).toEqual([50, 50, 50])
  })

  it('keeps what is whole, and an empty table', () => {
    expect(roundedTable([[410, 205, 62]])).toEqual([[410, 205, 62]])
    expect(roundedTable([])).toEqual([])
    expect(roundedTable([[0, 0]])).toEqual([[0, 0]])
  })

  it('moves no cell, no row and no column by a whole step, and the sum of all by half of one at most', () => {
    fc.assert(
      fc.property(tables, (values) => {
        const table = roundedTable(values)
        table.forEach((row, at) => {
          row.forEach((cell, column) => {
            expect(Number.isInteger(cell)).toBe(true)
            expect(cell).toBeGreaterThanOrEqual(0)
            expect(Math.abs(cell - values[at]![column]!)).toBeLessThan(1)
          })
          expect(Math.abs(sum(row) - sum(values[at]!))).toBeLessThan(1 + slip)
        })
        columnsOf(table).forEach((column, at) => {
          expect(Math.abs(sum(column) - sum(columnsOf(values)[at]!))).toBeLessThan(1 + slip)
        })
        expect(Math.abs(sum(table.flat()) - sum(values.flat()))).toBeLessThanOrEqual(0.5 + slip)
      }),
    )
  })

  it('rounds sixty pours of four parts at once', () => {
    const row = [205.3, 102.65, 30.8, 12.1]
    expect(columnsOf(roundedTable(Array.from({ length: 60 }, () => row))).map(sum)).toEqual([
      12318, 6159, 1848, 726,
    ])
  })
})
