import { describe, expect, it } from 'vitest'
import { createPlanner, type Plan, type PlanInput, plan } from '#plan'
import { sampleInput } from '../../../test/support/samples.ts'
import { skinPlaceOf } from './skin-places.ts'

const sample = sampleInput('open-powerboat')
type Place = PlanInput['work']['place']
const standing = (change: Partial<Place>): PlanInput => ({
  ...sample,
  work: { ...sample.work, place: { ...sample.work.place, shelter: 'open', ...change } },
})
const without = (key: 'bowBearing' | 'latitude'): PlanInput => {
  const { [key]: _left, ...place } = standing({}).work.place
  return { ...standing({}), work: { ...standing({}).work, place } }
}
const turned = (degrees: number) =>
  standing({ bowBearing: { value: (degrees * Math.PI) / 180, text: `${degrees}°`, certainty: 'measured' } })
const open = plan(standing({}))
const airOf = (of: Plan, place: string) => of.conditions.air.find(({ key }) => key === place)!
const skinOf = (of: Plan, place: string) => airOf(of, place).surfaceC
const codes = (of: Plan) => of.conditions.notes.map(({ code }) => code)
/** Mean of what one place is warmer than the other over the hours of a clock, UTC. */
const warmerBy = (of: Plan, places: readonly [string, string], hours: readonly number[]) => {
  const [a, b] = places.map((place) => skinOf(of, place)) as [readonly number[], readonly number[]]
  const gaps = a.flatMap((value, hour) => {
    const clock = ((airOf(of, places[0]).firstMinute / 60 + hour) % 24) + 0
    return hours.includes(clock) && !Number.isNaN(value - b[hour]!) ? [value - b[hour]!] : []
  })
  return gaps.reduce((sum, gap) => sum + gap, 0) / gaps.length
}
const night = [22, 23, 0, 1, 2]
const morning = [7, 8, 9]
const afternoon = [14, 15, 16]

describe('places of a boat', () => {
  it('are the sides they look to in the open, and one under a cloth or a roof', () => {
    const zone = { kind: 'topsides', side: 'port', indoors: false } as const
    expect(skinPlaceOf(zone, 'open')).toBe('port')
    expect(skinPlaceOf({ ...zone, side: 'both' }, 'open')).toBe('sides')
    expect(skinPlaceOf({ ...zone, kind: 'cockpit sole' }, 'open')).toBe('deck')
    expect(skinPlaceOf({ ...zone, indoors: true }, 'open')).toBe('indoors')
    expect(skinPlaceOf(zone, 'cover')).toBe('boat')
  })

  it('have hours for every step that keeps to some', () => {
    const keys = new Set(open.conditions.zones.map(({ key }) => key))
    const asked = open.steps.steps.flatMap(({ hoursKey }) => hoursKey ?? [])
    expect(asked.length).toBeGreaterThan(20)
    for (const key of asked) expect(keys).toContain(key)
    for (const { place } of open.conditions.zones) expect(airOf(open, place)).toBeDefined()
  })

  it('are the boat and indoors alone under a cover', () => {
    const places = new Set(plan(sample).conditions.zones.map(({ place }) => place))
    expect([...places].sort()).toEqual(['boat', 'indoors'])
    expect(codes(plan(sample))).toContain('climate.shelterAssumed')
  })
})

describe('the skin of a boat under a cover', () => {
  const names = ['open-powerboat', 'deck-only', 'cruiser-topsides'] as const
  it.each(names)('is 0 to 2 K under the air in the clear calm nights of the weather of %s', (name) => {
    const input = sampleInput(name)
    const { place } = input.work
    const air = airOf(
      plan({ ...input, work: { ...input.work, place: { ...place, shelter: 'cover' } } }),
      'boat',
    )
    const { weather } = input
    // Midnight where the boat stands, by its longitude.
    const midnight = Math.round(24 - ((place.longitude?.value ?? 0) * 12) / Math.PI) % 24
    const drops = air.airC.flatMap((airC, hour) =>
      (air.firstMinute / 60 + hour) % 24 === midnight &&
      weather!.cloudShare![hour]! < 0.2 &&
      weather!.windMps![hour]! < 3
        ? [airC - air.surfaceC[hour]!]
        : [],
    )
    expect(drops.length).toBeGreaterThan(2)
    for (const drop of drops) {
      expect(drop).toBeGreaterThan(0)
      expect(drop).toBeLessThan(2)
    }
  })

  it('is no more than 2 K over the air by day', () => {
    const air = airOf(plan(sample), 'boat')
    expect(air.shelter).toBe('cover')
    for (const [hour, airC] of air.airC.entries()) expect(air.surfaceC[hour]! - airC).toBeLessThan(2)
  })
})

describe('the skin of a boat in the open', () => {
  it('is under the air in the night, the deck more than the sides', () => {
    const air = airOf(open, 'deck')
    const drop = night.map((clock) => {
      const gaps = air.airC.flatMap((airC, hour) =>
        (air.firstMinute / 60 + hour) % 24 === clock ? [airC - air.surfaceC[hour]!] : [],
      )
      return gaps.reduce((sum, gap) => sum + gap, 0) / gaps.length
    })
    for (const gap of drop) {
      expect(gap).toBeGreaterThan(0.5)
      expect(gap).toBeLessThan(6)
    }
    expect(warmerBy(open, ['sides', 'deck'], night)).toBeGreaterThan(0.3)
  })

  it('is warmer on the side the sun stands on, and turns with the bow', () => {
    const north = plan(turned(0))
    const south = plan(turned(180))
    // With the bow to the north, starboard looks east.
    expect(warmerBy(north, ['starboard', 'port'], morning)).toBeGreaterThan(1)
    expect(warmerBy(north, ['port', 'starboard'], afternoon)).toBeGreaterThan(1)
    expect(warmerBy(south, ['port', 'starboard'], morning)).toBeGreaterThan(1)
    expect(Math.abs(warmerBy(north, ['port', 'starboard'], night))).toBeLessThan(0.1)
  })

  it('of both sides is the colder of the two in every hour', () => {
    const [port, starboard, both] = ['port', 'starboard', 'sides'].map((place) => skinOf(open, place))
    both!.forEach((skinC, hour) => {
      expect(skinC).toBe(Math.min(port![hour]!, starboard![hour]!))
    })
  })

  it('gets no sun on its sides where nobody knows which way the bow points, and none at all without a place', () => {
    const adrift = plan(without('bowBearing'))
    expect(codes(adrift)).toContain('conditions.bowUnknown')
    expect(skinOf(adrift, 'deck')).toEqual(skinOf(open, 'deck'))
    expect(Math.abs(warmerBy(adrift, ['port', 'starboard'], morning))).toBeLessThan(0.2)
    const nowhere = plan(without('latitude'))
    expect(codes(nowhere)).toEqual(expect.arrayContaining(['conditions.openSkin', 'conditions.placeUnknown']))
    skinOf(nowhere, 'deck').forEach((skinC, hour) => {
      expect(skinC).toBeLessThanOrEqual(skinOf(open, 'deck')[hour]! + 1e-3)
    })
  })

  it('is not worked again for an edit that does not reach it', () => {
    const planner = createPlanner()
    const input = standing({})
    planner.plan(input)
    const { trace } = planner.plan({ ...input, work: { ...input.work, layers: [] } })
    const ran = trace.filter((entry) => entry.ran).map(({ stage }) => stage)
    expect(ran).toContain('buildUps')
    expect(ran.filter((stage) => stage.startsWith('skin '))).toEqual([])
  })
})
