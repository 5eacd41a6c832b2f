import { describe, expect, it } from 'vitest'
import { countOfLikeDays, likeDayCount, spreadOfLikeDays } from './like-days.ts'

const year = (of: (hour: number) => number) => Float64Array.from({ length: 8760 }, (_, hour) => of(hour))
const dayOf = (hour: number) => Math.floor(hour / 24)

describe('the like days of an hour', () => {
  it('are twenty-one, ten to each side, also over new year', () => {
    const spread = spreadOfLikeDays(year(dayOf))
    const noon = 100 * 24 + 12
    // Days 90 to 110: the third least, the middle, the third greatest.
    expect([spread.low[noon], spread.middle[noon], spread.high[noon]]).toEqual([92, 100, 108])
    // Days 355 to 364 and 0 to 10.
    expect([spread.low[12], spread.middle[12], spread.high[12]]).toEqual([2, 10, 362])
    expect(likeDayCount).toBe(21)
  })

  it('compare like hours of the day', () => {
    const spread = spreadOfLikeDays(year((hour) => hour % 24))
    expect([spread.low[5000], spread.high[5000]]).toEqual([5000 % 24, 5000 % 24])
  })

  it('say nothing where fewer than half are known', () => {
    const spread = spreadOfLikeDays(year((hour) => (dayOf(hour) < 100 ? Number.NaN : 1)))
    expect([spread.low[89 * 24], spread.low[99 * 24], spread.low[100 * 24]]).toEqual([
      Number.NaN,
      Number.NaN,
      1,
    ])
  })

  it('are counted as one by one', () => {
    const holds = (hour: number) => (hour * 7919) % 5 < 2
    const slow = year(
      (hour) =>
        Array.from({ length: 21 }, (_, k) => (hour + (k - 10) * 24 + 8760) % 8760).filter(holds).length,
    )
    expect(Array.from(countOfLikeDays(holds))).toEqual(Array.from(slow))
  })
})
