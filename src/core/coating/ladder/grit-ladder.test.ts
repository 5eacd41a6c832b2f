import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Grit } from '../bond/rule.ts'
import { fillsScratches, gritLadder } from './grit-ladder.ts'

// FEPA grains, µm: 43-1 for P12 to P220, ISO 6344-3 from P240 on.
const sizes = {
  P80: 201,
  P100: 162,
  P120: 125,
  P150: 100,
  P180: 82,
  P220: 68,
  P240: 58.5,
  P320: 46.2,
  P400: 35,
}
const grits = Object.entries(sizes).map(([name, um]): Grit => ({ name, sizeM: um * 1e-6 }))
const grit = (name: keyof typeof sizes) => grits.find((one) => one.name === name)!
const names = (ladder: readonly Grit[]) => ladder.map(({ name }) => name)

const allWays = (between: readonly Grit[]): readonly (readonly Grit[])[] =>
  Array.from({ length: 2 ** between.length }, (_, mask) => between.filter((__, at) => (mask >> at) & 1))

describe('a ladder of grits', () => {
  it('goes from the board to a primer and to a finish without leaving out a step', () => {
    expect(names(gritLadder({ first: grit('P80'), last: grit('P120'), grits, mostRatio: 2 }))).toEqual([
      'P80',
      'P120',
    ])
    expect(names(gritLadder({ first: grit('P80'), last: grit('P320'), grits, mostRatio: 2 }))).toEqual([
      'P80',
      'P120',
      'P220',
      'P320',
    ])
  })

  it('is the last grit alone where that cuts the surface itself', () => {
    expect(names(gritLadder({ last: grit('P320'), grits, mostRatio: 2 }))).toEqual(['P320'])
    expect(names(gritLadder({ first: grit('P220'), last: grit('P120'), grits, mostRatio: 2 }))).toEqual([
      'P120',
    ])
  })

  it('goes on with what there is where no paper is near enough', () => {
    expect(
      names(gritLadder({ first: grit('P80'), last: grit('P400'), grits: [grit('P220')], mostRatio: 2 })),
    ).toEqual(['P80', 'P220', 'P400'])
    expect(names(gritLadder({ first: grit('P80'), last: grit('P400'), grits: [], mostRatio: 2 }))).toEqual([
      'P80',
      'P400',
    ])
  })

  it('is as short as the shortest of all rows that keep to the step, in one that falls all the way', () => {
    const any = fc.constantFrom(...grits)
    fc.assert(
      fc.property(
        any,
        any,
        fc.subarray(grits),
        fc.double({ min: 1.2, max: 4, noNaN: true }),
        (first, last, some, mostRatio) => {
          const ladder = gritLadder({ first, last, grits: some, mostRatio })
          expect(ladder.at(-1)).toBe(last)
          ladder.forEach((one, at) => {
            if (at > 0) expect(one.sizeM).toBeLessThan(ladder[at - 1]!.sizeM)
          })
          if (first.sizeM <= last.sizeM) return
          const between = some.filter(({ sizeM }) => sizeM < first.sizeM && sizeM > last.sizeM)
          const kept = (row: readonly Grit[]) =>
            row.every((one, at) => at === 0 || row[at - 1]!.sizeM / one.sizeM <= mostRatio * 1.001)
          const rows = allWays([...between].sort((a, b) => b.sizeM - a.sizeM))
            .map((way) => [first, ...way, last])
            .filter(kept)
          if (rows.length === 0) return
          expect(kept(ladder)).toBe(true)
          expect(ladder.length).toBe(Math.min(...rows.map(({ length }) => length)))
        },
      ),
    )
  })
})

describe('a film over scratches', () => {
  it('of a primer levels what its sheets ask for, of a gloss the last grits before it', () => {
    // Sheets: P80 to P120 under 100 µm of high-build; trade: P320 under light gloss of three coats.
    const mostRatio = 2.5
    expect(fillsScratches({ sizeM: grit('P80').sizeM, filmM: 100e-6, mostRatio })).toBe(true)
    expect(fillsScratches({ sizeM: grit('P320').sizeM, filmM: 20e-6, mostRatio })).toBe(true)
    expect(fillsScratches({ sizeM: grit('P80').sizeM, filmM: 60e-6, mostRatio })).toBe(false)
  })
})
