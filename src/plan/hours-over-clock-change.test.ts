import { describe, expect, it } from 'vitest'
import { type PlanInput, plan } from '#plan'
import { sampleInput } from '../../test/support/samples.ts'

const sample = sampleInput('open-powerboat')
const day = 24 * 60

/** Weather that begins five days before the clocks change, in a yard that keeps the given time. */
function yard(timeZone: string, changeMs: number): PlanInput {
  const startMs = changeMs - 5 * day * 60_000
  return {
    ...sample,
    work: { ...sample.work, place: { ...sample.work.place, shelter: 'open', timeZone } },
    weather: { ...sample.weather!, startMs },
  }
}

describe('verdicts over a change of the clock', () => {
  for (const [name, changeMs] of [
    ['forward', Date.UTC(2027, 2, 28, 1)],
    ['back', Date.UTC(2027, 9, 31, 1)],
  ] as const)
    it(`lose no hour and count none twice when it goes ${name}`, () => {
      const [changing, even] = ['Europe/Stockholm', 'Etc/UTC'].map(
        (timeZone) => plan(yard(timeZone, changeMs)).conditions,
      )
      const { hours } = sample.weather!
      expect(changing!.zones.length).toBeGreaterThan(3)
      expect(changing!.lastMinute - changing!.firstMinute).toBe(60 * hours)
      for (const zone of changing!.zones) expect(zone.verdicts).toHaveLength(hours)
      expect(changing!.zones).toEqual(even!.zones)
      expect(changing!.air).toEqual(even!.air)
    })
})
