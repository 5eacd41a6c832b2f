import { describe, expect, it } from 'vitest'
import { type HourlySeries, hourMs, inventWeather } from '#core/climate'
import { createPlanner, likeDaysOf, originOf, type PlanInput, plan, weatherAtHand } from '#plan'
import { sampleInput } from '../../../test/support/samples.ts'
import { createMemory } from '../remember.ts'
import { datedWeather } from './dated-weather.ts'

const sample = sampleInput('open-powerboat')
const { place } = sample.work
const spot = { latitude: place.latitude!.value, longitude: place.longitude!.value }
const typical: HourlySeries = {
  ...inventWeather({ kind: 'lake spring', ...spot, startMs: Date.UTC(2001, 0, 1), days: 365, seed: 5 }),
  source: 'a made year',
  typicalYear: true,
  spot,
}
const firstHours = (series: HourlySeries, hours: number): HourlySeries => {
  const cut = Object.entries(series).map(([key, value]) => [
    key,
    ArrayBuffer.isView(value) || (Array.isArray(value) && key !== 'gaps')
      ? Array.from(value as unknown as ArrayLike<number>).slice(0, hours)
      : value,
  ])
  return { ...(Object.fromEntries(cut) as HourlySeries), hours }
}
/** Twenty days of the weather of the sample: the work begins on the twelfth. */
const forecast = firstHours(sample.weather!, 480)
const input: PlanInput = { ...sample, weather: forecast, typical }
const made = plan(input)
const horizonMs = forecast.startMs + 480 * hourMs

describe('a plan past the horizon of its forecast', () => {
  it('has the hours of the forecast as they are, and goes on for more than a year', () => {
    const without = plan({ ...sample, weather: forecast })
    const [air, bare] = [made, without].map(
      ({ conditions }) => conditions.air.find(({ key }) => key === 'boat')!,
    )
    expect(air!.airC.slice(0, 480)).toEqual(bare!.airC)
    expect(made.conditions.lastMinute - made.conditions.firstMinute).toBeGreaterThan(400 * 1440)
    expect(made.conditions.horizon).toEqual({
      forecastUntilMinute: horizonMs / 60_000,
      typicalFromMinute: (horizonMs + 120 * hourMs) / 60_000,
    })
  })

  it('judges every hour, where there was nothing', () => {
    const known = (given: PlanInput) => {
      const zone = plan(given).conditions.zones[0]!
      return zone.verdicts.filter((verdict) => verdict !== 'unknown').length
    }
    expect(known(input)).toBeGreaterThan(known({ ...sample, weather: forecast }) + 9000)
    expect(made.notes.some(({ code }) => code === 'days.beyondWeather')).toBe(false)
  })

  it('counts on how many like days an hour is good: none before the horizon, 0 to 21 behind it', () => {
    for (const { goOnDays = [], firstMinute } of made.conditions.zones) {
      goOnDays.forEach((days, hour) => {
        const before = (firstMinute + hour * 60) * 60_000 < horizonMs
        if (before !== Number.isNaN(days)) throw new Error(`hour ${hour}: got ${days}`)
      })
      const known = goOnDays.filter((days) => !Number.isNaN(days))
      expect(Math.min(...known)).toBeGreaterThanOrEqual(0)
      expect(Math.max(...known)).toBeLessThanOrEqual(21)
    }
  })

  it('counts what the typical year alone would give on those days', () => {
    const { weather: _, ...bare } = input
    const alone = plan(bare)
    const zone = alone.conditions.zones[0]!
    // Far from both ends, and no leap day about it: 1 July 2027, noon.
    const at = (Date.UTC(2027, 6, 1, 12) / 60_000 - zone.firstMinute) / 60
    const go = Array.from({ length: 21 }, (_, k) => zone.verdicts[at + (k - 10) * 24]).filter(
      (one) => one === 'go',
    )
    expect(zone.goOnDays?.[at]).toBe(go.length)
    expect(alone.conditions.horizon?.forecastUntilMinute).toBe(alone.conditions.firstMinute)
  })

  it('says which is which, and how sure the coats behind the horizon are', () => {
    const codes = made.notes.flatMap(({ code }) => (/typical|orecast/.test(code) ? [code] : []))
    expect(codes).toEqual(['days.beyondForecast', 'conditions.beyondForecast'])
    const note = made.notes.find(({ code }) => code === 'days.beyondForecast')!
    const { step, goCount } = note.data
    const placed = made.days.placed.find((one) => one.step === step)!
    const key = made.steps.steps.find(({ id }) => id === step)?.hoursKey
    const hours = made.conditions.zones.find((zone) => zone.key === key)!
    const like = placed.pieces.flatMap(({ startMinute, endMinute }) => {
      const found = likeDaysOf(hours, { fromMinute: startMinute, toMinute: endMinute })
      return found ? [found.least] : []
    })
    expect(Math.min(...like)).toBe(goCount)
    expect(['forecast', 'blended', 'typical']).toEqual(
      [-1, 0, 120].map((hour) => originOf(made.conditions.horizon, horizonMs / 60_000 + hour * 60)),
    )
  })

  it('is the same every time, and runs nothing again when nothing changed', () => {
    expect(plan(input)).toEqual(made)
    const planner = createPlanner()
    planner.plan(input)
    const { trace } = planner.plan({ ...input, seed: 2 })
    expect(trace.filter(({ ran }) => ran).map(({ stage }) => stage)).toEqual([])
  }, 20_000)

  it('judges like days anew only for the product whose limits changed', () => {
    const planner = createPlanner()
    planner.plan(input)
    const id = made.conditions.zones[0]!.sheet
    const humidityMost = { value: 0.6, text: '60 %', certainty: 'measured' as const }
    const sheets = input.work.sheets.map((sheet) => (sheet.id === id ? { ...sheet, humidityMost } : sheet))
    const { trace } = planner.plan({ ...input, work: { ...input.work, sheets } })
    const ran = trace.flatMap(({ stage, ran }) => (ran && stage.startsWith('like days count') ? [stage] : []))
    expect(ran.length).toBeGreaterThan(0)
    expect(ran.every((stage) => stage.endsWith(id))).toBe(true)
  })
})

describe('the weather at hand behind the horizon', () => {
  const behind = weatherAtHand(input)!.behind!

  it('has a spread from the first hour that is not of the forecast', () => {
    expect(behind.firstMinute).toBe(horizonMs / 60_000)
    expect(behind.airC.low).toHaveLength(weatherAtHand(input)!.hours - 480)
    const ordered = behind.airC.low.every(
      (low, hour) => low <= behind.airC.middle[hour]! && behind.airC.middle[hour]! <= behind.airC.high[hour]!,
    )
    expect([ordered, behind.likeDays, behind.source]).toEqual([true, 21, 'a made year'])
  })

  it('tells rain as days on which it falls, and nothing where the typical year has none', () => {
    expect(Math.max(...behind.rainOnDays)).toBeGreaterThan(0)
    const { rainMm: _, ...dry } = typical
    expect(weatherAtHand({ ...input, typical: dry })!.behind!.rainOnDays).toEqual([])
  })

  it('is not there without a typical year', () => {
    expect(weatherAtHand(sample)!.behind).toBeUndefined()
  })
})

describe('weather that does not go together', () => {
  const dated = (given: Partial<PlanInput>, fromDate = '2027-04-12') =>
    datedWeather(createMemory().begin().run, { weather: forecast, typical, ...given, place, fromDate })
  const told = (given: Partial<PlanInput>, fromDate?: string) =>
    dated(given, fromDate).notes.map(({ code }) => code)
  const bare = () => {
    const { run } = createMemory().begin()
    return datedWeather(run, { weather: undefined, typical, place, fromDate: '2027-04-12' })
  }

  it('a typical year as the forecast stands alone', () => {
    expect(told({ weather: typical })).toEqual(['conditions.typicalTwice'])
    expect(dated({ weather: typical }).series).toEqual(bare().series)
  })

  it('weather with dates as the typical year is left out', () => {
    expect(told({ typical: forecast })).toEqual(['conditions.typicalDated'])
    expect(dated({ typical: forecast })).toMatchObject({ series: forecast })
    expect(dated({ typical: forecast }).horizon).toBeUndefined()
  })

  it('a forecast that ended long before the work is told, and no hour of it is left', () => {
    const weather = { ...forecast, startMs: forecast.startMs - 90 * 24 * hourMs }
    expect(told({ weather })).toEqual(['conditions.forecastPast'])
    expect(dated({ weather })).toMatchObject({ series: bare().series, horizon: bare().horizon, alone: true })
  })

  it('a forecast that ended last week is told, and still fades', () => {
    const weather = firstHours(forecast, 240)
    expect(told({ weather })).toEqual(['conditions.forecastPast'])
    expect(dated({ weather }).horizon?.forecastUntilMinute).toBe((forecast.startMs + 240 * hourMs) / 60_000)
  })

  it('a forecast that reaches past the plan leaves nothing to do, and nothing to say', () => {
    expect(told({}, '2020-01-01')).toEqual([])
    expect(dated({}, '2020-01-01')).toEqual({ series: forecast, notes: [] })
  })

  it('a typical year of another place is told by how far that is', () => {
    const far = { ...typical, spot: { latitude: spot.latitude - Math.PI / 18, longitude: spot.longitude } }
    const note = dated({ typical: far }).notes.find(({ code }) => code === 'conditions.typicalElsewhere')
    // Ten degrees of latitude.
    expect(note?.data).toMatchObject({ distanceKm: 1112, distanceMiles: 691 })
    expect(told({})).not.toContain('conditions.typicalElsewhere')
    const { spot: _, ...nowhere } = typical
    expect(told({ typical: nowhere })).toEqual(['conditions.beyondForecast'])
  })

  it('a season of the other half of the world is a season of the other half', () => {
    const { latitude, longitude } = spot
    const of = { kind: 'lake spring', longitude, startMs: Date.UTC(2001, 0, 1), days: 365, seed: 5 } as const
    const south = { ...typical, ...inventWeather({ ...of, latitude: -latitude }) }
    const mean = ({ series }: ReturnType<typeof dated>) =>
      Array.from(series!.airC.slice(1000, 2000)).reduce((sum, airC) => sum + airC, 0) / 1000
    expect(mean(dated({ typical: south }))).toBeLessThan(mean(dated({})) - 5)
  })
})
