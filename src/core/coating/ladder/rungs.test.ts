import { describe, expect, it } from 'vitest'
import { rungsOf } from './rungs.ts'

// Mean grains of FEPA 43-2 (P80 to P220 by sieve, from P240 by sediment), m.
const grain = { P40: 425e-6, P80: 201e-6, P120: 125e-6, P180: 82e-6, P220: 68e-6, P320: 46.2e-6, P400: 35e-6 }
const grit = (name: keyof typeof grain) => ({ name, sizeM: grain[name] })
const grits = (Object.keys(grain) as (keyof typeof grain)[]).map(grit)
const way = { grits, mostRatio: 2, area: 20, last: grit('P320') }
const told = (starts: Parameters<typeof rungsOf>[0]['starts'], more = {}) =>
  rungsOf({ ...way, starts, ...more }).map((rung) => [rung.grit.name, rung.area])

describe('rungs of a surface', () => {
  it('are the last grit alone where nothing coarser lies there', () => {
    expect(told([])).toEqual([['P320', 20]])
    expect(told([{ grit: grit('P400'), state: 'scratched', area: 5 }])).toEqual([['P320', 20]])
  })

  it('begin with the cut of what stands proud, and after the scratches that are there already', () => {
    const part = { grit: grit('P80'), area: 3 }
    const after = [['P120', 3], ['P220', 3], ['P320', 20]] as const // biome-ignore format: a row
    expect(told([{ ...part, state: 'proud' }])).toEqual([['P80', 3], ...after])
    expect(told([{ ...part, state: 'scratched' }])).toEqual(after)
  })

  it('add up what several parts share, up to all of it', () => {
    const rungs = told([
      { grit: grit('P80'), state: 'proud', area: 3 },
      { grit: grit('P120'), state: 'proud', area: 4 },
    ])
    expect(rungs).toEqual([['P80', 3], ['P120', 7], ['P220', 7], ['P320', 20]]) // biome-ignore format: a row
    const all = told([1, 2].map(() => ({ grit: grit('P80'), state: 'proud' as const, area: 15 })))
    expect(all.map(([, area]) => area)).toEqual([20, 20, 20, 20])
  })

  it('never step further than the ratio while the grits at hand allow it', () => {
    for (const first of grits)
      for (const last of grits) {
        const rungs = rungsOf({ ...way, last, starts: [{ grit: first, state: 'proud', area: 1 }] })
        const sizes = rungs.map((rung) => rung.grit.sizeM)
        sizes.slice(1).forEach((size, at) => {
          // P40 to P80 is 2.11 and nothing at hand lies between them.
          expect(sizes[at]! / size).toBeLessThan(2.12)
          expect(sizes[at]!).toBeGreaterThan(size)
        })
      }
  })
})
