import { describe, expect, it } from 'vitest'
import { airUnder, type HourlySeries, hourMs, inventWeather, skyLight } from '#core/climate'
import { type Plan, type PlanInput, plan } from '#plan'
import { sampleInput } from '../../../test/support/samples.ts'
import { type ShelterAirInput, shelterAir } from './shelter-air.ts'

// Without its log: what was read at the boat shifts the hours after it.
const sample: PlanInput = { ...sampleInput('open-powerboat'), log: [] }
const { weather, work } = sample
const at = { latitude: work.place.latitude!.value, longitude: work.place.longitude!.value }
const known = { airLagHours: 6, sunKPerWm2: 0.006, waterKgM3: 0.001 }

/** Five days of a logger that reads exactly what a shed of known figures would have. */
function logger(fromHour = 240, hours = 120): HourlySeries {
  const sunWm2 = skyLight({ series: weather!, place: at }).globalWm2
  const { airC, humidityShare } = airUnder({ series: weather!, shelter: 'shed', air: known, sunWm2 })
  return {
    kind: 'hourlySeries',
    startMs: weather!.startMs + fromHour * hourMs,
    hours,
    airC: airC.slice(fromHour, fromHour + hours),
    humidityShare: humidityShare.slice(fromHour, fromHour + hours),
    gaps: [],
    source: 'made for a test',
    licence: '',
  }
}

const planned = (shelter: PlanInput['work']['place']['shelter'], change: Partial<PlanInput> = {}) =>
  plan({ ...sample, work: { ...work, place: { ...work.place, shelter } }, ...change })
const noteOf = ({ conditions }: Plan, code: string) => conditions.notes.find((note) => note.code === code)
const airOf = ({ conditions }: Plan, key: string) => conditions.air.find((air) => air.key === key)!

describe('a shelter whose air was logged', () => {
  const fitted = planned('shed', { logger: logger() })

  it('is planned by what the logger told, and says from how many hours and how well', () => {
    const { data, severity } = noteOf(fitted, 'climate.shelterFitted')!
    expect(severity).toBe('info')
    expect(data.fittedHours).toBe(120)
    expect(data.airLagHours).toBeCloseTo(6, 1)
    expect(data.fullSunK).toBeCloseTo(6, 1)
    expect(data.addedGPerM3).toBeCloseTo(1, 1)
    expect(data.rmsK).toBeLessThan(0.01)
    expect(noteOf(fitted, 'climate.shelterAssumed')).toBeUndefined()
    const inside = logger(0, weather!.hours)
    airOf(fitted, 'boat').airC.forEach((airC, hour) => {
      expect(Math.abs(airC - inside.airC[hour]!)).toBeLessThan(0.05)
    })
  })

  it('has loose parts in the same air, but not where the boat is under a cover and they are in a shed', () => {
    expect(airOf(fitted, 'indoors').airC).toEqual(airOf(fitted, 'boat').airC)
    const cover = planned('cover', { logger: logger() })
    expect(noteOf(cover, 'climate.shelterFitted')).toBeDefined()
    expect(airOf(cover, 'indoors').airC).toEqual(airOf(planned('cover'), 'indoors').airC)
    expect(airOf(cover, 'boat').airC).not.toEqual(airOf(planned('cover'), 'boat').airC)
  })

  it('is another plan by its stamp', () => {
    expect(fitted.stamp.weather).not.toBe(planned('shed').stamp.weather)
  })
})

describe('a logger that is of no use', () => {
  const { latitude, longitude } = work.place
  const found = (given: HourlySeries, change: Partial<ShelterAirInput> = {}) =>
    shelterAir.run({
      weather,
      logger: given,
      latitude,
      longitude,
      shelter: 'shed',
      shed: undefined,
      ...change,
    })
  const refused = (code: string, given: HourlySeries, change: Partial<ShelterAirInput> = {}) => {
    const { fitted, notes } = found(given, change)
    expect(fitted).toBeUndefined()
    const assumed = change.shelter === 'open' ? [] : ['climate.shelterAssumed']
    expect(notes.map((note) => note.code)).toEqual([...assumed, code])
  }

  it('is told, and the shelter stays assumed', () => {
    refused('climate.loggerTooShort', logger(240, 20))
    refused('climate.loggerTooShort', { ...logger(), startMs: weather!.startMs - 9000 * hourMs })
    refused('climate.loggerPoor', { ...logger(), airC: new Float64Array(120).fill(24) })
  })

  it('hung under a boat in the open, or beside a typical year', () => {
    refused('climate.loggerInOpen', logger(), { shelter: 'open' })
    const startMs = Date.parse('2027-01-01T00:00Z')
    const year = inventWeather({ kind: 'lake spring', ...at, startMs, days: 365, seed: 5 })
    refused('climate.loggerTypicalYear', logger(), { weather: { ...year, typicalYear: true } })
  })
})
