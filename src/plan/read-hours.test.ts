import { describe, expect, it } from 'vitest'
import type { Log } from '#job'
import { createPlanner, type Plan, type PlanInput, plan } from '#plan'
import { sampleInput } from '../../test/support/samples.ts'

/** The sample has a reading of its own in its log. */
const cover: PlanInput = { ...sampleInput('open-powerboat'), log: [] }
const open: PlanInput = {
  ...cover,
  work: { ...cover.work, place: { ...cover.work.place, shelter: 'open' } },
}
/** Eight in the morning in Stockholm. */
const atMs = Date.parse('2027-05-20T06:00:00Z')
const figure = (value: number) => ({ value, text: `${value}`, certainty: 'measured' as const })

type Reading = { readonly air?: number; readonly humidity?: number; readonly skin?: number }
const entry = ({ air, humidity, skin }: Reading, more: Partial<Log[number]> = {}): Log[number] => ({
  id: 'reading-1',
  kind: 'reading',
  at: new Date(atMs).toISOString(),
  ...(air === undefined ? {} : { air: figure(air) }),
  ...(humidity === undefined ? {} : { humidity: figure(humidity) }),
  ...(skin === undefined ? {} : { skin: figure(skin) }),
  ...more,
})
const airOf = (of: Plan, place: string) => of.conditions.air.find(({ key }) => key === place)!
/** Of a place, so many hours after eight. */
const hourOf = (of: Plan, place: string, after = 0) => {
  const air = airOf(of, place)
  const hour = Math.floor((atMs / 60_000 - air.firstMinute) / 60) + after
  return {
    airC: air.airC[hour]!,
    dewC: air.dewC[hour]!,
    surfaceC: air.surfaceC[hour]!,
    of: air.humidityShare[hour]!,
  }
}
const noteOf = (of: Plan, code: string) => of.conditions.notes.find((note) => note.code === code)
const before = plan(open)
const roofed = plan(cover)
const forecast = hourOf(roofed, 'boat')

describe('two numbers read at the boat at eight', () => {
  it('shift the hours of the day at once, air and dew point, and fade until the evening', () => {
    const read = plan({ ...cover, log: [entry({ air: forecast.airC + 4, humidity: forecast.of })] })
    expect(hourOf(read, 'boat').airC).toBeCloseTo(forecast.airC + 4, 9)
    expect(hourOf(read, 'boat').of).toBeCloseTo(forecast.of, 9)
    expect(hourOf(read, 'boat', 6).airC - hourOf(roofed, 'boat', 6).airC).toBeCloseTo(2, 9)
    expect(hourOf(read, 'boat', 12)).toEqual(hourOf(roofed, 'boat', 12))
    expect(hourOf(read, 'boat', -1)).toEqual(hourOf(roofed, 'boat', -1))
    // Loose parts stand in a shed of their own.
    expect(airOf(read, 'indoors')).toEqual(airOf(roofed, 'indoors'))
    expect(noteOf(read, 'conditions.readingTaken')?.data).toMatchObject({ readAtMs: atMs, skin: 'none' })
  })

  it('change nothing when they are as forecast', () => {
    const { airC, of: humidity, surfaceC } = forecast
    const read = plan({ ...cover, log: [entry({ air: airC, humidity, skin: surfaceC })] })
    expect(read.days).toEqual(roofed.days)
    expect(read.conditions.zones.map(({ verdicts }) => verdicts)).toEqual(
      roofed.conditions.zones.map(({ verdicts }) => verdicts),
    )
  })

  it('shut hours that the forecast had open, and open them', () => {
    const zone = roofed.conditions.zones[0]!
    const verdictAt = (hour: number, reading: Reading) => {
      const at = new Date((zone.firstMinute + hour * 60) * 60_000).toISOString()
      const read = plan({ ...cover, log: [entry(reading, { at })] })
      return read.conditions.zones[0]!.verdicts[hour]
    }
    const good = zone.verdicts.findIndex((verdict, hour) => verdict === 'go' && hour > 100)
    expect(verdictAt(good, { humidity: 0.99 })).toBe('no')
    const cold = zone.failing.findIndex(
      (failing, hour) =>
        hour > 24 &&
        failing.length > 0 &&
        failing.every(({ limit }) => limit === 'airLeast' || limit === 'skinLeast'),
    )
    expect(cold).toBeGreaterThan(24)
    expect(verdictAt(cold, { air: 9 })).toBe('go')
  })

  it('hold for the parts indoors too where the boat stands in the same shed', () => {
    const shed: PlanInput = {
      ...cover,
      work: { ...cover.work, place: { ...cover.work.place, shelter: 'shed' } },
    }
    const was = hourOf(plan(shed), 'indoors')
    const read = plan({ ...shed, log: [entry({ air: was.airC + 2 })] })
    expect(hourOf(read, 'indoors').airC).toBeCloseTo(was.airC + 2, 9)
  })
})

describe('a skin that was read', () => {
  const deck = hourOf(before, 'deck')
  const port = hourOf(before, 'port')

  it('counts in full where it was read, and elsewhere only as far as it is colder', () => {
    const warm = plan({ ...open, log: [entry({ skin: port.surfaceC + 6 }, { readAt: 'port' })] })
    expect(hourOf(warm, 'port').surfaceC).toBeCloseTo(port.surfaceC + 6, 9)
    expect(hourOf(warm, 'deck').surfaceC).toBeLessThanOrEqual(deck.surfaceC + 1e-9)
    const unsaid = plan({ ...open, log: [entry({ skin: deck.surfaceC + 9 })] })
    expect(hourOf(unsaid, 'deck').surfaceC).toBeLessThanOrEqual(deck.surfaceC + 1e-9)
    const cold = plan({ ...open, log: [entry({ skin: deck.surfaceC - 3 })] })
    expect(hourOf(cold, 'deck').surfaceC).toBeCloseTo(deck.surfaceC - 3, 9)
  })
})

describe('a reading that cannot be', () => {
  it('is told and left out', () => {
    const hot = plan({ ...cover, log: [entry({ air: 55, humidity: 0.6 })] })
    expect(noteOf(hot, 'conditions.readingFar')?.data).toMatchObject({ what: 'air', readC: 55 })
    expect(hot.days).toEqual(roofed.days)
    const dry = plan({ ...cover, log: [entry({ air: 12, humidity: 0.006 })] })
    expect(noteOf(dry, 'conditions.readingDry')).toBeDefined()
    expect(dry.days).toEqual(roofed.days)
  })
})

describe('the log', () => {
  it('judges hours anew for a reading, and for nothing else in it', () => {
    const planner = createPlanner()
    const log = [entry({ air: forecast.airC + 2 })]
    planner.plan({ ...cover, log })
    const note = { id: 'note-1', kind: 'note', at: new Date(atMs).toISOString(), text: 'damp' } as const
    const { trace } = planner.plan({ ...cover, log: [...log, note] })
    expect(trace.filter(({ stage, ran }) => ran && /^conditions/.test(stage))).toEqual([])
  })
})
