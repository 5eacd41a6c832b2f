import { describe, expect, it } from 'vitest'
import { inSi } from '../../test/written-cell.ts'
import { limits } from './limits.ts'
import { type RateId, rates } from './rates.ts'

const hours = (id: RateId, cell: 'time' | 'least' | 'most' = 'time'): number =>
  inSi(rates[id].cells[cell] ?? '', 'time')

describe('rates', () => {
  it('lie inside the range that stands beside them', () => {
    for (const [id, { cells }] of Object.entries(rates)) {
      if (cells.least === undefined && cells.most === undefined) continue
      const time = hours(id as RateId)
      expect(time, id).toBeGreaterThanOrEqual(hours(id as RateId, 'least'))
      expect(time, id).toBeLessThanOrEqual(hours(id as RateId, 'most'))
    }
  })

  it('take one minute or more where a person does something, and no more than two days', () => {
    for (const id of Object.keys(rates) as RateId[]) {
      expect(hours(id), id).toBeGreaterThanOrEqual(0.5 / 60)
      expect(hours(id), id).toBeLessThanOrEqual(16)
    }
  })

  it('agree with the pace of a crew of two and of one person alone', () => {
    const spells = { paceTwo: 2, paceOne: 1 } as const
    for (const [pace, people] of Object.entries(spells)) {
      const personHours = people / inSi(limits.cells[pace as 'paceTwo'] ?? '', 'pace')
      expect(personHours, pace).toBeGreaterThanOrEqual(hours('roll-and-tip', 'least'))
      expect(personHours, pace).toBeLessThanOrEqual(hours('roll-and-tip', 'most'))
    }
  })

  it('cover the recorded coats: two people, 28 m², 4 h of primer and 4 to 4.5 h of gloss', () => {
    expect((2 * 4) / 28).toBeLessThanOrEqual(hours('roll-primer', 'most'))
    expect((2 * 4.5) / 28).toBeLessThanOrEqual(hours('roll-and-tip', 'most') + 0.005)
  })

  it('sand quicker with finer grit and slower by hand', () => {
    expect(hours('sand-80')).toBeGreaterThan(hours('sand-120'))
    expect(hours('sand-120')).toBeGreaterThan(hours('sand-220'))
    expect(hours('sand-by-hand')).toBeGreaterThan(hours('sand-80'))
    expect(hours('grind-bonded-grit')).toBeGreaterThan(hours('grind-moulded-non-skid'))
  })
})
