/** Every verdict of every hour, and the limits that fail, against rules written a second time. */
import { describe, expect, it } from 'vitest'
import { plan } from '#plan'
import { planInput, projectRaw, sampleWeather } from '../support/samples.ts'
import { jobNames, jobs, type OracleJob, programDocument } from './jobs.ts'
import { failsOf, judgeOf, nearTwilight, verdictOf } from './judge.ts'
import { shown } from './plans.ts'
import { readRawSample } from './raw-sample.ts'

/** The samples stand under something: once each in the open, and once unlit in a shed. */
const standing: Readonly<Record<string, OracleJob>> = {
  ...jobs,
  'open-powerboat in the open': { sample: 'open-powerboat', cells: [[['place', 'shelter'], 'open']] },
  'cruiser-topsides in the open': { sample: 'cruiser-topsides', cells: [[['place', 'shelter'], 'open']] },
  'deck-only in a shed without lamps': { sample: 'deck-only', cells: [[['place', 'lamps'], 'no']] },
}

/** Left out: it needs the light on each face, see below. */
const isSun = ({ limit }: { readonly limit: string }): boolean => limit === 'hotSun'

describe.each([...jobNames, ...Object.keys(standing).slice(jobNames.length)])(
  'the verdicts of %s',
  (name) => {
    const job = standing[name]!
    const raw = readRawSample(job)
    const made = plan(planInput(projectRaw(programDocument(job)), sampleWeather(job.sample)))

    it('are those of rules written a second time, in every hour of every product and place', () => {
      let judged = 0
      for (const hours of made.conditions.zones) {
        const judge = judgeOf(raw, made, hours)
        hours.verdicts.forEach((verdict, hour) => {
          if (nearTwilight(judge, hour)) return
          const expected = failsOf(judge, hour)
          const failing = hours.failing[hour]!
          const found = failing.filter((one) => !isSun(one)).map(({ limit, effect }) => `${limit} ${effect}`)
          const at = `${hours.key} ${shown(hours.firstMinute + hour * 60)}`
          expect(found.sort(), at).toEqual(expected)
          expect(verdict, at).toBe(verdictOf([...expected, ...(failing.some(isSun) ? ['hotSun risky'] : [])]))
          judged += 1
        })
      }
      expect(judged).toBeGreaterThan(1000)
    })

    it('have the sun on a side only by day, in the open, with the skin over 5 K over the air', () => {
      for (const hours of made.conditions.zones) {
        const { air, warmestC } = judgeOf(raw, made, hours)
        hours.failing.forEach((failing, hour) => {
          const sun = failing.find(isSun)
          if (!sun) return
          expect(air.shelter).toBe('open')
          expect(sun.effect).toBe('risky')
          expect(sun.had).toBeCloseTo(warmestC[hour]! - air.airC[hour]!, 9)
          expect(sun.had).toBeGreaterThan(5)
        })
      }
    })

    it('fail by what the weather has less what is needed', () => {
      for (const hours of made.conditions.zones) {
        const judge = judgeOf(raw, made, hours)
        hours.failing.forEach((failing, hour) => {
          for (const { limit, effect, needed, had } of failing) {
            if (limit === 'airLeast')
              expect([needed, had]).toEqual([judge.limits.airLeastC, judge.air.airC[hour]])
            if (limit === 'skinLeast')
              expect([needed + (effect === 'no' ? 5 : 0), had]).toEqual([
                judge.limits.airLeastC,
                judge.air.surfaceC[hour],
              ])
            if (limit === 'wind') expect(had).toBeCloseTo(judge.lines[hour]!.windMps * judge.windShare, 9)
          }
        })
      }
    })
  },
)
