import { describe, expect, it } from 'vitest'
import { plan } from '#plan'
import { sampleInput } from '../../../../test/support/samples.ts'
import { boatLayout } from './boat-layout.ts'
import { balloon, balloonsOf, findingPlaces } from './finding-places.ts'

const made = plan(sampleInput('open-powerboat'))
const outline = made.surfaces.outline!
const zones = [...made.surfaces.zones, ...made.marks.zones]
const placesAt = (width: number) => {
  const layout = boatLayout(outline, width)
  return { layout, places: findingPlaces({ findings: made.repairs.repairs, zones, outline, layout }) }
}

describe('a finding on the lines plan', () => {
  it('lies where it was measured, and in the middle of its zone, marked so, where it was not', () => {
    const { layout, places } = placesAt(900)
    const of = (id: string) => places.find(({ finding }) => finding.finding === id)!
    expect(of('crazing-port')).toMatchObject({ mark: 'F1', view: 'side', guessed: false, hidden: false })
    expect(of('crazing-port').at).toEqual(layout.side(6.2, 0.85))
    expect(of('soft-patch').at).toEqual(layout.above(5.9, 0.55))
    expect(of('crazing-starboard')).toMatchObject({ guessed: true, hidden: true })
    const [x, y] = of('seat-holes').at
    expect(x).toBeGreaterThan(layout.above(0, 0)[0])
    expect(x).toBeLessThan(layout.above(layout.length / 2, 0)[0])
    expect(y).toBeGreaterThan(layout.centre)
  })

  it('of a zone that is not there lies nowhere, and keeps its number', () => {
    const { layout } = placesAt(900)
    const [first, second] = made.repairs.repairs
    const findings = [{ ...first!, zone: 'nowhere' }, second!]
    expect(findingPlaces({ findings, zones, outline, layout }).map(({ mark }) => mark)).toEqual(['F2'])
  })

  it.each([328, 600, 900])('has a balloon of its own that stays on a sheet of %i px', (width) => {
    const balloons = balloonsOf(placesAt(width).places, width)
    expect(balloons).toHaveLength(made.repairs.repairs.length)
    for (const [index, { at }] of balloons.entries()) {
      expect(at[0]).toBeLessThanOrEqual(width - balloon.radius)
      expect(at[0]).toBeGreaterThanOrEqual(balloon.radius)
      for (const other of balloons.slice(index + 1)) {
        expect(Math.hypot(at[0] - other.at[0], at[1] - other.at[1])).toBeGreaterThanOrEqual(balloon.apart)
      }
    }
  })
})
