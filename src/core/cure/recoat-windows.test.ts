import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { hoursAt } from './hours-at.ts'
import { recoatWindows, type WindowRow } from './recoat-windows.ts'

const row = (airC: number, fromH: number, untilH?: number, sanded = false): WindowRow => ({
  airC,
  fromH,
  ...(untilH === undefined ? {} : { untilH }),
  sanded,
})

describe('windows with a hole', () => {
  // One alkyd sheet: wet on wet inside 0.5 to 4 h, then not until 4 d at 35 °C, 6 d at 23 °C, 12 d at 10 °C.
  const alkyd = [row(35, 0.5, 4), row(35, 96), row(23, 0.5, 4), row(23, 144), row(10, 0.5, 4), row(10, 288)]

  it('shut between the stretches at every temperature of the sheet', () => {
    const { windows, faults } = recoatWindows(alkyd)
    expect(faults).toEqual([])
    expect(windows?.holes).toHaveLength(1)
    const [hole] = windows!.holes
    for (const [airC, opens] of [
      [35, 96],
      [23, 144],
      [10, 288],
    ] as const) {
      expect(hoursAt(windows!.least!, airC, 'least').hours).toBe(0.5)
      expect(hoursAt(hole!.shuts, airC, 'most').hours).toBe(4)
      expect(hoursAt(hole!.opens, airC, 'least').hours).toBe(opens)
    }
    expect(windows!.unsanded).toBeUndefined()
  })

  it('have none where the stretches touch, and ask for sanding from the end of the last unsanded one', () => {
    const { windows } = recoatWindows([row(20, 6, 48), row(20, 48, undefined, true)])
    expect(windows!.holes).toEqual([])
    expect(windows!.unsanded).toEqual([{ airC: 20, hours: 48 }])
  })

  it('always ask for sanding where no stretch goes without', () => {
    expect(recoatWindows([row(20, 8, undefined, true)]).windows).toEqual({
      least: [{ airC: 20, hours: 8 }],
      holes: [],
      unsanded: [{ airC: 20, hours: 8 }],
    })
    expect(recoatWindows([row(20, 0, undefined, true)]).windows!.unsanded![0]!.hours).toBeLessThan(0.02)
  })

  it('are open at once where they begin at none', () => {
    expect(recoatWindows([row(20, 0, 4)]).windows).toEqual({
      holes: [],
      unsanded: [{ airC: 20, hours: 4 }],
    })
  })
})

describe('rows that cannot be meant', () => {
  const codes = (rows: readonly WindowRow[]) => recoatWindows(rows).faults.map(({ code }) => code)

  it('are told, and give no windows where it is open what they mean', () => {
    expect(codes([row(20, 1, 8), row(20, 4, 24)])).toEqual(['overlap'])
    expect(codes([row(20, 1), row(20, 4, 24)])).toEqual(['overlap'])
    expect(codes([row(20, 1, 8), row(10, 1, 8), row(10, 20)])).toEqual(['uneven'])
    expect(codes([row(20, 1, 8, true), row(20, 20)])).toEqual(['sandedBefore'])
    expect(recoatWindows([row(20, 1, 8), row(20, 4, 24)]).windows).toBeUndefined()
  })

  it('are taken as written, with a word, where a warmer row is later', () => {
    const { windows, faults } = recoatWindows([row(10, 8, 48), row(20, 12, 24)])
    expect(faults).toEqual([{ code: 'notMonotone', airC: 20, colderC: 10 }])
    expect(windows).toBeDefined()
  })

  it('never throw, and never give a hole that opens before it shuts at a temperature of the sheet', () => {
    const hours = fc.double({ min: 0, max: 5000, noNaN: true })
    const anyRow = fc.record({
      airC: fc.constantFrom(5, 10, 20, 30),
      fromH: hours,
      untilH: fc.option(hours, { nil: undefined }),
      sanded: fc.boolean(),
    })
    fc.assert(
      fc.property(fc.array(anyRow, { maxLength: 8 }), (drawn) => {
        const rows = drawn.filter(({ fromH, untilH }) => untilH === undefined || untilH > fromH)
        const { windows, faults } = recoatWindows(rows as readonly WindowRow[])
        if (rows.length > 0) expect(windows !== undefined || faults.length > 0).toBe(true)
        for (const { shuts, opens } of windows?.holes ?? [])
          for (const { airC, hours: opensAt } of opens) {
            const shut = shuts.find((one) => one.airC === airC)
            if (shut) expect(shut.hours).toBeLessThanOrEqual(opensAt + 1e-9)
          }
      }),
    )
  })
})
