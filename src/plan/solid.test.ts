import { describe, expect, it } from 'vitest'
import { catalogue } from '#catalogue'
import { polygonArea } from '#core/geometry'
import { parseJob, project } from '#job'
import { sampleBytes } from '../../test/job-documents.ts'
import { plan } from './plan.ts'
import { type Solid, solidOf } from './solid.ts'

const made = (sample: Parameters<typeof sampleBytes>[0]) => {
  const { work, log } = project(parseJob(sampleBytes(sample)).document!, { strict: false })
  const planned = plan({ work, log, catalogue, nowMs: 0, seed: 1, app: 'test' })
  return { planned, work, solid: solidOf(planned, work) as Solid }
}

const areaOf = ({ faces }: Solid, zone: string): number =>
  faces.filter((face) => face.zone === zone).reduce((sum, { areaM2 }) => sum + areaM2, 0)

describe('the boat as triangles', () => {
  it('has the areas of a hull that was measured, and its points on both sides', () => {
    const { planned, work, solid } = made('cruiser-topsides')
    const stripe = planned.marks.stripes[0]!.table
    const sides = planned.surfaces.zones.filter(({ kind }) => kind === 'topsides')
    const drawn = sides.reduce((sum, { id }) => sum + areaOf(solid, id), 0)
    const whole = sides.reduce((sum, { areaM2 }) => sum + areaM2, 0)
    expect(drawn / (whole - stripe.areaM2)).toBeCloseTo(1, 2)
    expect(solid.points).toHaveLength(6 * work.points.length)
  })

  it('lays measured zones of the deck on it, without their openings, and guesses where others lie', () => {
    const { planned, solid } = made('deck-only')
    const laid = planned.surfaces.shapes.filter(({ edges }) => edges.length > 0)
    expect(laid.length).toBeGreaterThan(0)
    for (const { zone, edges, openings, certainty } of laid) {
      const face = solid.faces.find(({ id }) => id === zone)!
      expect(face.rough, zone).toBe(certainty === 'assumed')
      const areas = (lines: typeof edges) => lines.reduce((sum, line) => sum + polygonArea(line), 0)
      const fromAbove = areas(edges) - areas(openings)
      // The sheer rises forward: a face along it is a little larger than from above.
      expect(face.areaM2 / fromAbove, zone).toBeGreaterThan(0.999)
      expect(face.areaM2 / fromAbove, zone).toBeLessThan(1.05)
    }
    // The side decks have faces of their own, so what is left of the deck is nobody's.
    expect(solid.faces.find(({ kind }) => kind === 'deck')?.zone).toBeUndefined()
    expect(made('open-powerboat').solid.faces.find(({ id }) => id === 'foredeck')?.rough).toBe(true)
  })

  it('is none without a hull', () => {
    const { planned, work } = made('open-powerboat')
    const { hull: _, ...rest } = planned.surfaces
    expect(solidOf({ ...planned, surfaces: rest }, work)).toBeUndefined()
  })
})
