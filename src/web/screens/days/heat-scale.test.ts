import { describe, expect, it } from 'vitest'
import type { SolidFace, WeatherAtHand } from '#plan'
import type { ShownPlan } from '../../worker/messages.ts'
import { bandColour, bandOf, heatScale, heatsAt, placeOfFace } from './heat-scale.ts'

const inks = { paper: 'rgb(200, 200, 200)', water: 'rgb(0, 100, 200)', skin: 'rgb(200, 0, 100)' }

describe('colours of a skin', () => {
  it('go from the air to both sides in bands that hold the farthest skin', () => {
    expect(heatScale({ airC: 20, skinsC: [18, 37] })).toEqual({ airC: 20, bandK: 5 })
    expect(heatScale({ airC: 8, skinsC: [7.2, 6.1] }).bandK).toBe(0.5)
    expect(heatScale({ airC: 8, skinsC: [] }).bandK).toBe(0.5)
    const scale = { airC: 20, bandK: 5 }
    expect([37, 22, 20, 17, 0, -90].map((skinC) => bandOf(skinC, scale))).toEqual([3, 0, 0, -1, -4, -4])
  })

  it('are paper at the air, the water of the look below it and its skin above', () => {
    expect(bandColour(0, inks)).toBe('#c8c8c8')
    expect(bandColour(4, inks)).toBe('#c82878')
    expect(bandColour(-4, inks)).toBe('#2878c8')
    expect(bandColour(2, inks)).toBe('#c878a0')
  })
})

const plan = {
  surfaces: { zones: [{ id: 'z', side: 'port' }] },
  marks: { zones: [] },
  conditions: {
    air: [{ key: 'boat', firstMinute: 0, airC: [10], humidityShare: [0.7], surfaceC: [9], dewC: [5] }],
  },
} as unknown as ShownPlan

describe('how warm each place is', () => {
  it('is its own skin, and that of the boat where a place has none', () => {
    const weather = {
      firstMinute: 0,
      skins: { port: [14], starboard: [8] },
      lightsWm2: { port: [500] },
    } as unknown as WeatherAtHand
    const found = heatsAt(plan, weather, 0)
    expect(found.map(({ place, skinC }) => [place, skinC])).toEqual([
      ['port', 14],
      ['starboard', 8],
      ...(['deck', 'transom', 'bottom'] as const).map((place) => [place, 9]),
    ])
    expect(found[0]).toMatchObject({ airC: 10, dewC: 5, lightWm2: 500 })
    expect(heatsAt(plan, weather, 600)).toEqual([])
  })

  it('belongs to the faces that look its way', () => {
    const face = (kind: string, zone?: string) => ({ kind, zone }) as SolidFace
    const kinds = ['topsides-port', 'transom', 'boot-top', 'deck zone', 'deck'].map((kind) => face(kind))
    expect(kinds.map((one) => placeOfFace(one, plan))).toEqual(['port', 'transom', 'bottom', 'deck', 'deck'])
    expect(placeOfFace(face('stripe', 'z'), plan)).toBe('port')
    expect(placeOfFace(face('stripe', 'round'), plan)).toBeUndefined()
  })
})
