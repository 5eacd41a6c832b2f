import { describe, expect, it } from 'vitest'
import { type BoatSide, litSides } from './lit-sides.ts'

const degree = Math.PI / 180
const lit = (sides: ReturnType<typeof litSides>): BoatSide[] =>
  sides.filter((side) => side.lit).map((side) => side.side)

describe('lit sides', () => {
  it('light port and deck when the sun stands abeam to port', () => {
    const sides = litSides({ altitude: 30 * degree, azimuth: 0, bowBearing: Math.PI / 2 })
    expect(lit(sides)).toEqual(['port', 'deck'])
    expect(sides[0]?.incidence).toBeCloseTo(Math.cos(30 * degree), 12)
    expect(sides[4]?.incidence).toBeCloseTo(0.5, 12)
  })

  it('light bow, and neither side, when the sun stands dead ahead', () => {
    expect(lit(litSides({ altitude: 0.5, azimuth: 1.2, bowBearing: 1.2 }))).toEqual(['bow', 'deck'])
  })

  it('light starboard and transom with the sun on the starboard quarter', () => {
    const sides = litSides({ altitude: 0.4, azimuth: 135 * degree, bowBearing: 0 })
    expect(lit(sides)).toEqual(['starboard', 'transom', 'deck'])
  })

  it('are all dark at night', () => {
    expect(lit(litSides({ altitude: -0.01, azimuth: 3, bowBearing: 0 }))).toEqual([])
  })

  it('light only the deck with the sun overhead', () => {
    expect(lit(litSides({ altitude: Math.PI / 2, azimuth: 0, bowBearing: 0 }))).toEqual(['deck'])
  })
})
