import { describe, expect, it } from 'vitest'
import type { BehindSpread } from '#plan'
import { MIDNIGHT, paperPlan } from '../../../../test/support/paper-plan.ts'
import { bandCurves, bandsOf, horizonIn, isAlone } from './horizon-mark.tsx'
import { hourLikeText, originLabel } from './like-days.ts'

const planWith = (forecastUntilMinute: number) => ({
  ...paperPlan,
  conditions: {
    ...paperPlan.conditions,
    firstMinute: MIDNIGHT,
    horizon: { forecastUntilMinute, typicalFromMinute: forecastUntilMinute + 7200 },
  },
})
const within = { fromMinute: MIDNIGHT, toMinute: MIDNIGHT + 2880 }
const spread = { low: [1, 2, Number.NaN], middle: [2, 3, 4], high: [3, 4, Number.NaN] }
const behind: BehindSpread = {
  forecastUntilMinute: MIDNIGHT + 60,
  typicalFromMinute: MIDNIGHT + 7260,
  source: '',
  firstMinute: MIDNIGHT + 60,
  likeDays: 21,
  airC: spread,
  dewC: spread,
  windMps: spread,
  rainOnDays: [],
}

describe('where the forecast ends', () => {
  it('is a line only inside the days shown', () => {
    const at = (minute: number) => horizonIn({ plan: planWith(minute), within })
    expect([-60, 0, 60, 2880].map((by) => at(MIDNIGHT + by))).toEqual([
      undefined,
      undefined,
      MIDNIGHT + 60,
      undefined,
    ])
    expect(horizonIn({ plan: paperPlan, within })).toBeUndefined()
  })

  it('says which hours are of what', () => {
    const plan = planWith(MIDNIGHT + 60)
    expect([0, 60, 7260].map((by) => originLabel(plan, MIDNIGHT + by))).toEqual([
      'forecast',
      'between forecast and typical year',
      'typical year',
    ])
    expect([isAlone(plan), isAlone(planWith(MIDNIGHT)), isAlone(paperPlan)]).toEqual([false, true, false])
  })

  it('has bands behind it where the like days are known', () => {
    const bands = bandsOf(behind, within)!
    expect(bands.air.high).toEqual([
      { minute: MIDNIGHT + 60, value: 3 },
      { minute: MIDNIGHT + 120, value: 4 },
    ])
    expect(bandCurves(bands)).toHaveLength(4)
    expect(bandsOf(behind, { fromMinute: 0, toMinute: 60 })).toBeUndefined()
    expect(bandCurves(bandsOf(undefined, within))).toEqual([])
  })

  it('counts like days of an hour behind it alone', () => {
    const words = { sentence: (code: string, data: object) => `${code} ${JSON.stringify(data)}` }
    const hours = {
      ...paperPlan.conditions.zones[0]!,
      firstMinute: MIDNIGHT,
      verdicts: ['go', 'go'] as const,
      goOnDays: [Number.NaN, 7],
    }
    const said = (minute: number) => hourLikeText({ words } as never, hours, minute)
    expect(said(MIDNIGHT)).toBeUndefined()
    expect(said(MIDNIGHT + 60)).toBe('daysscreen.likeHour {"count":7,"of":21}')
  })
})
