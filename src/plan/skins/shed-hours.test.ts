import { describe, expect, it } from 'vitest'
import { dewPoint, heatToHold } from '#core/climate'
import { type Plan, plan } from '#plan'
import { planInput, projectRaw, sampleRaw, sampleWeather } from '../../../test/support/samples.ts'

const raw = sampleRaw('cruiser-topsides')
const weather = sampleWeather('cruiser-topsides')
type Cells = Readonly<Record<string, string>>

/** The cruiser in a shed that is kept warm, read from a document as a person writes it. */
function standing(place: Cells, shed: Cells = {}): Plan {
  const work = { ...raw.work, place: { ...raw.work.place, ...place }, shed }
  const projected = projectRaw({ ...raw, work } as typeof raw)
  expect(projected.problems).toEqual([])
  return plan(planInput(projected, weather))
}

const heated = (shed: Cells = {}, heater = 'electric') => standing({ shelter: 'heated shed', heater }, shed)
const boatOf = (of: Plan) => of.conditions.air.find(({ key }) => key === 'boat')!
const noteOf = (of: Plan, code: string) => of.conditions.notes.find((note) => note.code === code)
const size = { length: '14 m', width: '7 m', height: '5 m' }
const goes = (of: Plan) =>
  of.conditions.zones.flatMap(({ verdicts }) => verdicts).filter((verdict) => verdict === 'go').length
/** Hours of the local clock, British summer time until 31 October. */
const atClock = (of: Plan, clock: number) => {
  const { firstMinute, airC } = boatOf(of)
  return airC.filter((_, hour) => (firstMinute / 60 + hour + 1) % 24 === clock).slice(0, 60)
}
const plainly = standing({})

describe('a shed that is kept warm', () => {
  const warm = heated({ ...size, heatTo: '16 °C' })

  it('is never colder than it is kept, and has as much water as a cold one in the end', () => {
    const air = boatOf(warm)
    for (const airC of air.airC) expect(airC).toBeGreaterThan(16 - 1e-9)
    const mean = (list: readonly number[]) => list.reduce((sum, value) => sum + value, 0) / list.length
    expect(mean(air.dewC)).toBeCloseTo(mean(boatOf(plainly).dewC), 0)
    expect(goes(warm)).toBeGreaterThan(1.3 * goes(plainly))
  })

  it('says what heat the coldest hour takes', () => {
    const { data, severity } = noteOf(warm, 'climate.shedHeated')!
    expect(severity).toBe('info')
    expect(data.heatC).toBe(16)
    const coldestC = Math.min(...Array.from(weather!.airC).filter((airC) => !Number.isNaN(airC)))
    const room = { lengthM: 14, widthM: 7, heightM: 5, lossWm2K: 1 / 0.17, airChanges: 1 }
    const steadyKw = heatToHold(room, 16 - coldestC) / 1000
    expect(data.powerKw).toBeGreaterThan(0.85 * steadyKw)
    expect(data.powerKw).toBeLessThan(steadyKw + 1e-6)
  })

  it('is colder by night where it is kept so, and as the weather has it where the heater is off', () => {
    const set = heated({
      ...size,
      heatTo: '16 °C',
      heatFrom: '06:00',
      heatUntil: '18:00',
      heatToNight: '8 °C',
    })
    const off = heated({ ...size, heatTo: '16 °C', heatFrom: '06:00', heatUntil: '18:00' })
    for (const airC of atClock(set, 12)) expect(airC).toBeGreaterThan(16 - 1e-9)
    expect(Math.min(...atClock(set, 5))).toBeGreaterThan(8 - 1e-9)
    expect(Math.min(...atClock(set, 5))).toBeLessThan(12)
    expect(Math.min(...atClock(off, 5))).toBeLessThanOrEqual(Math.min(...atClock(set, 5)))
  })

  it('that is too small a heater for is judged by what it reaches, and says so', () => {
    const small = heated({ ...size, heatTo: '16 °C', heaterPower: '5 kW' })
    const { data, severity } = noteOf(small, 'climate.heaterSmall')!
    expect(severity).toBe('notice')
    const coldest = boatOf(small).airC.indexOf(Math.min(...boatOf(small).airC))
    expect(data.coldestC).toBe(boatOf(small).airC[coldest])
    expect(data.coldestAtMs).toBe((boatOf(small).firstMinute + 60 * coldest) * 60_000)
    expect(data.shortHours).toBe(boatOf(small).airC.filter((airC) => airC < 15.5).length)
    expect(goes(small)).toBeLessThan(goes(warm))
    expect(noteOf(warm, 'climate.heaterSmall')).toBeUndefined()
  })

  it('takes less heat with insulated walls, and is as large as the boat with room around where nobody said', () => {
    const insulated = heated({ ...size, walls: 'insulated', heatTo: '16 °C' })
    const kw = (of: Plan) => noteOf(of, 'climate.shedHeated')!.data.powerKw as number
    expect(kw(insulated)).toBeLessThan(0.4 * kw(warm))
    expect(noteOf(heated(), 'climate.shedRoom')!.data).toMatchObject({
      lengthM: 14,
      widthM: 7.24,
      heightM: 5,
      size: 'assumed',
    })
    expect(noteOf(heated(), 'climate.shedHeated')).toMatchObject({ severity: 'assumed', data: { heatC: 15 } })
  })
})

describe('water in the air of a shed', () => {
  it('of an open flame takes away the hours that its heat makes', () => {
    const dry = heated({ ...size, heatTo: '16 °C' })
    const flame = heated({ ...size, heatTo: '16 °C' }, 'unvented flame')
    const { data, severity } = noteOf(flame, 'climate.flameWater')!
    // Trade rule 8: an open flame near solvent, styrene or uncured epoxy is DANGER.
    expect(severity).toBe('danger')
    expect(data.riseK).toBeGreaterThan(3)
    expect(boatOf(flame).airC).toEqual(boatOf(dry).airC)
    boatOf(flame).dewC.forEach((dewC, hour) => {
      expect(dewC).toBeGreaterThanOrEqual(boatOf(dry).dewC[hour]! - 1e-9)
    })
    expect(goes(flame)).toBeLessThan(0.7 * goes(dry))
    expect(noteOf(dry, 'climate.flameWater')).toBeUndefined()
    // Trade rule 8: gas makes more water than kerosene for the same heat.
    const oil = heated({ ...size, heatTo: '16 °C', fuel: 'kerosene' }, 'unvented flame')
    expect(noteOf(oil, 'climate.flameWater')!.data.riseK).toBeLessThan(data.riseK as number)
    const kinds = flame.hazards.hazards.find(({ id }) => id === 'unventedFlame')
    expect(kinds).toMatchObject({ severity: 'danger', job: true })
  })

  it('on the floor lifts the dew point of the morning, in a cold shed too', () => {
    const wet = standing({}, { ...size, floorWater: '1 L', floorAt: '07:00' })
    const shut = standing({}, { ...size, doorFrom: '03:00', doorUntil: '04:00' })
    const rise = boatOf(wet).dewC.map((dewC, hour) => dewC - boatOf(shut).dewC[hour]!)
    expect(noteOf(wet, 'climate.floorWater')!.data).toMatchObject({ waterL: 1, dryHours: 3 })
    // By 10:00 three times a third of a litre in 490 m³, of which half is aired out each hour: 1/3 (1/2 + 1/4 + 1/8).
    const ten = rise.findIndex(
      (_, hour) => (boatOf(wet).firstMinute / 60 + hour + 1) % 24 === 10 && hour > 48,
    )
    expect(rise[ten]).toBeGreaterThan(0.3)
    const { airC, humidityShare } = boatOf(wet)
    const grams = (share: number) =>
      (share * 216.7 * (6.112 * Math.exp((17.62 * airC[ten]!) / (243.12 + airC[ten]!)))) /
      (273.15 + airC[ten]!)
    const added = grams(humidityShare[ten]!) - grams(boatOf(shut).humidityShare[ten]!)
    expect(added).toBeCloseTo((1000 / 490 / 3) * (0.5 + 0.25 + 0.125), 1)
    expect(dewPoint({ airC: airC[ten]!, humidityShare: humidityShare[ten]! })).toBeCloseTo(
      boatOf(wet).dewC[ten]!,
      9,
    )
  })

  it('leaves by an open door', () => {
    const shut = heated({ ...size, heatTo: '16 °C' }, 'unvented flame')
    const open = heated({ ...size, heatTo: '16 °C', doorFrom: '00:00', doorUntil: '00:00' }, 'unvented flame')
    expect(noteOf(open, 'climate.flameWater')!.data.riseK).toBeLessThan(
      noteOf(shut, 'climate.flameWater')!.data.riseK as number,
    )
    expect(noteOf(open, 'climate.shedHeated')!.data.powerKw).toBeGreaterThan(
      noteOf(shut, 'climate.shedHeated')!.data.powerKw as number,
    )
  })
})

describe('what is told of a shed and cannot be', () => {
  const codes = (of: Plan) => of.conditions.notes.map(({ code }) => code)

  it('is said, and left out', () => {
    expect(codes(standing({ shelter: 'open' }, size))).toContain('climate.shedUnused')
    expect(codes(standing({ shelter: 'heated shed', heater: 'none' }, size))).toContain('climate.heaterNone')
    expect(codes(standing({ heater: 'electric' }, size))).toContain('climate.heaterIdle')
    expect(codes(heated({ doorFrom: '08:00', heatUntil: '18:00' }))).toEqual(
      expect.arrayContaining(['climate.doorHalf', 'climate.heatHalf']),
    )
    expect(boatOf(standing({ heater: 'electric' }, size)).airC).toEqual(boatOf(plainly).airC)
    expect(boatOf(standing({ shelter: 'heated shed', heater: 'none' })).airC).toEqual(boatOf(plainly).airC)
  })

  it.each([
    ['a height of nothing', { height: '0 m' }],
    ['a Fahrenheit thermostat called Celsius', { heatTo: '62 °C' }],
    ['a heater that cools', { heaterPower: '-3 kW' }],
    ['a lake on the floor', { floorWater: '2000 L' }],
    ['no time of day', { doorFrom: '25:00' }],
  ])('is refused: %s', (_, shed) => {
    const work = { ...raw.work, shed }
    expect(projectRaw({ ...raw, work } as typeof raw).problems).toHaveLength(1)
  })
})
