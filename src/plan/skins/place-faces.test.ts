import { describe, expect, it } from 'vitest'
import type { PlanInput } from '#plan'
import { sampleInput } from '../../../test/support/samples.ts'
import { hull } from '../surfaces.ts'
import { camberOverBeam, placeFaces, usualFaces } from './place-faces.ts'

const degree = Math.PI / 180
const { work }: PlanInput = sampleInput('open-powerboat')
const measured = hull.run({ boat: work.boat, stations: work.stations, points: work.points })
const faces = placeFaces.run({ hull: measured, rake: work.boat.transomRake, camber: 0.03 })
const mean = (place: keyof typeof faces, figure: 'tilt' | 'normalAzimuth') =>
  faces[place].reduce((sum, face) => sum + face.share * face[figure], 0)

describe('the ways the places of a boat look', () => {
  it('are those of its hull: flared sides, a bottom that faces the ground, a cambered deck', () => {
    expect(mean('port', 'tilt')).toBeGreaterThan(90 * degree)
    expect(mean('port', 'tilt')).toBeLessThan(125 * degree)
    expect(mean('port', 'normalAzimuth')).toBeGreaterThan(270 * degree)
    expect(mean('starboard', 'normalAzimuth')).toBeLessThan(90 * degree)
    expect(mean('bottom', 'tilt')).toBeGreaterThan(130 * degree)
    expect(mean('deck', 'tilt')).toBeCloseTo(Math.atan(0.06), 9)
  })

  it('each cover their place', () => {
    for (const place of Object.values(faces))
      expect(place.reduce((sum, face) => sum + face.share, 0)).toBeCloseTo(1, 9)
  })

  it('are upright sides and a level deck without a hull', () => {
    const none = placeFaces.run({
      hull: { rules: [], certainty: 'assumed', notes: [] },
      rake: undefined,
      camber: 0,
    })
    expect(none).toEqual(usualFaces)
  })
})

describe('camber over the beam', () => {
  const metres = (value: number) => ({ value, text: `${value} m`, certainty: 'measured' as const })
  it('is of the highest camber, and none without a beam', () => {
    const zones = [0.03, 0.06].map((camber) => ({ ...work.zones[0]!, camber: metres(camber) }))
    expect(camberOverBeam(zones, { ...work.boat, beam: metres(2.4) })).toBeCloseTo(0.025, 12)
    const { beam: _beam, ...boat } = work.boat
    expect(camberOverBeam(zones, boat)).toBe(0)
    expect(camberOverBeam([], work.boat)).toBe(0)
  })
})
