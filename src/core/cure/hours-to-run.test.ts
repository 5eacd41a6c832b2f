import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { clockEnd } from './clock-end.ts'
import { cureTable } from './cure-table.ts'
import { hoursToRun } from './hours-to-run.ts'

describe('hoursToRun', () => {
  it('counts whole hours from the end of each hour', () => {
    const table = cureTable([{ airC: 20, hours: 2 }])
    expect(hoursToRun({ table, airC: [20, 20, 20, 20], most: 9 })).toEqual([2, 2, 9, 9])
    expect(hoursToRun({ table, airC: [20, 10, 20, 20, 20, 20], most: 9 })).toEqual([3, 2, 2, 2, 9, 9])
  })

  it('makes no headway in hours that nobody knows or that are too cold for the table', () => {
    const table = cureTable([
      { airC: 10, hours: 2 },
      { airC: 20, hours: 1 },
    ])
    expect(hoursToRun({ table, airC: [20, Number.NaN, 5, 20, 20], most: 9 })).toEqual([3, 2, 1, 1, 9])
  })

  it('agrees with the clock that is followed from each hour on', () => {
    const air = fc.array(fc.integer({ min: 0, max: 35 }), { minLength: 1, maxLength: 80 })
    const rows = fc.uniqueArray(fc.tuple(fc.integer({ min: 5, max: 30 }), fc.integer({ min: 1, max: 30 })), {
      minLength: 1,
      maxLength: 4,
      selector: ([airC]) => airC,
    })
    fc.assert(
      fc.property(air, rows, (airC, points) => {
        const table = cureTable(points.map(([at, hours]) => ({ airC: at, hours })))
        const most = 1000
        hoursToRun({ table, airC, most }).forEach((hours, hour) => {
          const end = clockEnd({
            table,
            sense: 'least',
            startHours: hour + 1,
            temperatureAt: (index) => airC[index],
          })
          expect(hours).toBe(end ? Math.ceil(end.endHours - hour - 1 - 1e-6) : most)
        })
      }),
      { numRuns: 300 },
    )
  })
})
