import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { CureError } from './cure-error.ts'
import { cureTable } from './cure-table.ts'
import { type CureSense, hoursAt } from './hours-at.ts'

const recoat = cureTable([
  { airC: 5, hours: 24 },
  { airC: 15, hours: 10 },
  { airC: 25, hours: 6 },
])

describe('hours at a temperature', () => {
  it('are those of a row on the row', () => {
    expect(hoursAt(recoat, 15, 'least')).toEqual({ hours: 10, found: 'row', stopped: false })
    expect(hoursAt(recoat, 25, 'most').hours).toBe(6)
  })

  it('are halfway on a log scale between two rows', () => {
    const between = hoursAt(recoat, 20, 'least')
    expect(between.found).toBe('between')
    expect(between.hours).toBeCloseTo(Math.sqrt(60), 12)
  })

  it('stand still for a least time below the table', () => {
    expect(hoursAt(recoat, 4.9, 'least')).toEqual({
      hours: Number.POSITIVE_INFINITY,
      found: 'below',
      stopped: true,
    })
  })

  it('get no shorter for a least time above the table', () => {
    expect(hoursAt(recoat, 40, 'least')).toEqual({ hours: 6, found: 'above', stopped: false })
  })

  it('get no longer for a most time below the table', () => {
    expect(hoursAt(recoat, -10, 'most')).toEqual({ hours: 24, found: 'below', stopped: false })
  })

  it('are at least halved per 10 °C for a most time above a flat table', () => {
    const above = hoursAt(recoat, 35, 'most')
    expect(above.found).toBe('above')
    expect(above.hours).toBeCloseTo(3, 12)
  })

  it('go on at the table’s own pace for a most time above a steep table', () => {
    const steep = cureTable([
      { airC: 15, hours: 9 },
      { airC: 25, hours: 3 },
    ])
    expect(hoursAt(steep, 35, 'most').hours).toBeCloseTo(1, 12)
  })

  it('double and halve per 10 °C from a single row, and say so', () => {
    const single = cureTable([{ airC: 20, hours: 4 }])
    expect(hoursAt(single, 20, 'least').found).toBe('row')
    expect(hoursAt(single, 10, 'least')).toMatchObject({ found: 'one-point', stopped: false })
    expect(hoursAt(single, 10, 'least').hours).toBeCloseTo(8, 12)
    expect(hoursAt(single, 30, 'most').hours).toBeCloseTo(2, 12)
  })

  it('refuse an empty table and a temperature that is no number', () => {
    expect(() => hoursAt([], 20, 'least')).toThrow(CureError)
    expect(() => hoursAt(recoat, Number.NaN, 'least')).toThrow(CureError)
  })

  it('stay between the neighbouring rows, whatever the table', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 100, noNaN: true }),
        fc.double({ min: 0.1, max: 100, noNaN: true }),
        fc.double({ min: 0.001, max: 0.999, noNaN: true }),
        fc.constantFrom<CureSense>('least', 'most'),
        (low, high, share, sense) => {
          const table = cureTable([
            { airC: 10, hours: low },
            { airC: 20, hours: high },
          ])
          const { hours } = hoursAt(table, 10 + 10 * share, sense)
          expect(hours).toBeGreaterThanOrEqual(Math.min(low, high) * (1 - 1e-12))
          expect(hours).toBeLessThanOrEqual(Math.max(low, high) * (1 + 1e-12))
        },
      ),
    )
  })
})
