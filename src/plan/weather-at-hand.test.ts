import { describe, expect, it } from 'vitest'
import { plan } from '#plan'
import { sampleInput } from '../../test/support/samples.ts'
import { weatherAtHand } from './weather-at-hand.ts'

const sample = sampleInput('open-powerboat')
const open = {
  ...sample,
  work: { ...sample.work, place: { ...sample.work.place, shelter: 'open' as const } },
}

describe('the weather at hand', () => {
  it('covers the hours of the plan, and says where it is from', () => {
    const found = weatherAtHand(sample)!
    const { conditions } = plan(sample)
    expect(found.firstMinute).toBe(conditions.firstMinute)
    expect(found.firstMinute + 60 * found.hours).toBe(conditions.lastMinute)
    expect(found.source).toBe(sample.weather!.source)
    expect(found.sunWm2).toHaveLength(found.hours)
  })

  it('has the very skins by which the hours of a boat in the open are judged', () => {
    const { skins, lightsWm2 } = weatherAtHand(open)!
    expect(Object.keys(lightsWm2)).toEqual(Object.keys(skins))
    // A bow that points somewhere has one side in more sun than the other at most hours of a clear day.
    const { port = [], starboard = [] } = lightsWm2
    expect(port.filter((light, hour) => Math.abs(light - starboard[hour]!) > 100).length).toBeGreaterThan(100)
    const { air } = plan(open).conditions
    const judged = air.filter(({ key }) => key in skins)
    expect(judged.map(({ key }) => key)).toContain('deck')
    for (const { key, surfaceC } of judged) expect(skins[key as keyof typeof skins]).toEqual(surfaceC)
  })

  it('has the parts under a cover by which the boat there is judged: the colder of deck and side each hour', () => {
    const { skins, lightsWm2 } = weatherAtHand(sample)!
    const { deck = [], port = [], starboard, transom, bottom = [] } = skins
    const judged = plan(sample).conditions.air.find(({ key }) => key === 'boat')!
    expect(judged.shelter).toBe('cover')
    expect(deck.map((skinC, hour) => Math.min(skinC, port[hour]!))).toEqual(judged.surfaceC)
    expect([starboard, transom]).toEqual([port, port])
    // The sky's light alone gets through, and less of it where a part looks down.
    const most = (place: 'deck' | 'port' | 'bottom') => Math.max(...lightsWm2[place]!)
    expect(most('deck')).toBeGreaterThan(most('port'))
    expect(most('port')).toBeGreaterThan(most('bottom'))
    expect(most('deck')).toBeLessThan(100)
    // A bottom sees little of the cloth, so a cold one chills it less than the deck.
    const under = (skin: readonly number[]) => skin.map((skinC, hour) => skinC - judged.airC[hour]!)
    expect(Math.min(...under(bottom))).toBeGreaterThan(Math.min(...under(deck)))
  })

  it('has no sun where nobody knows where she stands, and is nothing without weather', () => {
    const { latitude: _, ...place } = sample.work.place
    const lost = weatherAtHand({ ...sample, work: { ...sample.work, place } })!
    expect([lost.sunWm2, lost.sunFrom]).toEqual([[], 'none'])
    const { weather: _weather, ...bare } = sample
    expect(weatherAtHand(bare)).toBeUndefined()
  })
})
