import { describe, expect, it } from 'vitest'
import { hatchDrawing, parallels } from './hatch.ts'
import { hatchFor, hatchRule } from './hatches.ts'
import { corners } from './shapes.ts'

const square = corners({ x: 10, y: 20, width: 12, height: 12 })

describe('parallels', () => {
  it('cover an area in proportion to it, whatever their angle', () => {
    for (const angle of [0, 45, 90, 135]) {
      const lines = parallels(square, { angle, gap: 0.1 })
      const length = lines.reduce((sum, [[ax, ay], [bx, by]]) => sum + Math.hypot(bx - ax, by - ay), 0)
      // Length times gap is the area, short of half a gap along the edges.
      expect(Math.abs(length * 0.1 - 144)).toBeLessThan(1.5)
    }
  })

  it('rise to the right at 45 degrees and fall at 135', () => {
    const slope = (angle: number) => {
      const [[a, b]] = [parallels(square, { angle, gap: 2 })[1]!]
      return (b[1] - a[1]) / (b[0] - a[0])
    }
    expect(slope(45)).toBeCloseTo(-1, 9)
    expect(slope(135)).toBeCloseTo(1, 9)
  })

  it('stay inside a polygon with a bay', () => {
    const bay = [
      [0, 0],
      [10, 0],
      [10, 10],
      [6, 10],
      [6, 4],
      [4, 4],
      [4, 10],
      [0, 10],
    ] as const
    const lines = parallels(bay, { angle: 0, gap: 2 })
    const low = lines.filter(([[, y]]) => y > 4)
    expect(low.length).toBeGreaterThan(2)
    for (const [[ax], [bx]] of low)
      expect(ax < 4.001 ? bx : ax).toSatisfy((x: number) => x <= 4.001 || x >= 5.999)
  })
})

describe('a hatch', () => {
  it('says the family by its direction and the kind by its density', () => {
    expect(hatchFor('vinylester', 'filler')).toBe('polyester-filler')
    expect(hatchFor('two-part polyurethane', 'finish')).toBe('twoPart-finish')
    expect(hatchFor('who knows', 'finish')).toBeUndefined()
    const angle = (family: string) => {
      const rule = hatchRule(hatchFor(family, 'primer')!)
      return rule.kind === 'lines' ? rule.angles : []
    }
    const directions = ['polyester', 'epoxy', 'two-part', 'one-part', 'acrylic'].map((family) =>
      angle(family).join(),
    )
    expect(new Set(directions).size).toBe(5)
  })

  it('draws dots in fillers only, and lenses in laminate', () => {
    const kinds = (hatch: Parameters<typeof hatchRule>[0]) =>
      new Set(hatchDrawing({ kind: 'hatch', within: square, hatch, ink: 'ink' }).map((shape) => shape.kind))
    expect(kinds('epoxy-filler')).toContain('circle')
    expect(kinds('epoxy-primer')).not.toContain('circle')
    expect(kinds('glass')).toEqual(new Set(['line']))
  })
})
