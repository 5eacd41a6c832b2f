import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Point2 } from '#core/geometry'
import { camberFactor } from './camber.ts'
import type { DeckShapeInput } from './deck-shape.ts'
import { deckZone } from './deck-zone.ts'

const rectangle = (length: number, width: number): readonly Point2[] => [
  [0, 0],
  [length, 0],
  [length, width],
  [0, width],
]

const shape = (more: Partial<DeckShapeInput>): DeckShapeInput => ({
  edge: rectangle(3, 1),
  ordered: false,
  openings: [],
  mirrored: false,
  camberRise: 0,
  slope: 0,
  cutOuts: [],
  count: 1,
  faces: 1,
  ...more,
})

const made = (more: Partial<DeckShapeInput>) => {
  const { zone, notes } = deckZone(shape(more))
  if (!zone) throw new Error(`no zone: ${notes.map(({ code }) => code)}`)
  return { ...zone, codes: notes.map(({ code }) => code) }
}

const codesOf = (more: Partial<DeckShapeInput>) => deckZone(shape(more)).notes.map(({ code }) => code)

describe('a deck zone', () => {
  it('that is a rectangle has length by width and all four sides', () => {
    expect(made({})).toMatchObject({ area: 3, perimeter: 8, codes: [] })
  })

  it('that is a circle of many corners has the area of the circle less what its chords cut off', () => {
    const n = 360
    const edge = Array.from({ length: n }, (_, i): Point2 => {
      const angle = (2 * Math.PI * i) / n
      return [2 + 0.5 * Math.cos(angle), 0.5 * Math.sin(angle)]
    })
    const zone = made({ edge })
    // Regular polygon in a circle: n/2 r² sin(2π/n), and 2 n r sin(π/n) round it.
    expect(zone.area).toBeCloseTo((n / 2) * 0.25 * Math.sin((2 * Math.PI) / n), 12)
    expect(zone.perimeter).toBeCloseTo(2 * n * 0.5 * Math.sin(Math.PI / n), 12)
    expect(Math.abs(zone.area / (Math.PI * 0.25) - 1)).toBeLessThan(1e-4)
  })

  it('that narrows in a straight line has the mean of its ends by its length', () => {
    const edge: readonly Point2[] = [
      [1, 0],
      [4, 0],
      [4, 0.5],
      [1, 1.1],
    ]
    expect(made({ edge }).area).toBeCloseTo((3 * (0.5 + 1.1)) / 2, 12)
  })

  it('counts both sides, and does not mask the seam of two halves', () => {
    expect(made({ mirrored: true })).toMatchObject({ area: 6, perimeter: 2 * (3 + 1 + 1) })
    const apart = made({ mirrored: true, edge: rectangle(3, 1).map(([x, y]): Point2 => [x, y + 0.5]) })
    expect(apart).toMatchObject({ area: 6, perimeter: 16 })
    expect(apart.edges).toHaveLength(2)
    expect(apart.edges[1]![0]).toEqual([0, -0.5])
  })

  it('is larger by its camber over its whole width, across and not along', () => {
    const half = made({ mirrored: true, camberRise: 0.1 })
    expect(half.area).toBeCloseTo(6 * camberFactor(0.1 / 2), 12)
    expect(half.perimeter).toBeCloseTo(6 + 4 * camberFactor(0.05), 12)
    const own = made({ camberRise: 0.1 })
    expect(own.area).toBeCloseTo(3 * camberFactor(0.1), 12)
  })

  it('is larger by its slope, along and not across', () => {
    const zone = made({ slope: Math.PI / 3 })
    expect(zone.area).toBeCloseTo(6, 12)
    expect(zone.perimeter).toBeCloseTo(2 * (6 + 1), 12)
  })

  it('gains what stands up along it, all round where no length is given', () => {
    expect(made({ upstand: { height: 0.2, length: 2.5 } })).toMatchObject({ area: 3.5, perimeter: 8 })
    expect(made({ upstand: { height: 0.25 } }).area).toBeCloseTo(3 + 0.25 * 8, 12)
  })

  it('may be an upstand alone, with openings in it', () => {
    const zone = made({
      edge: [],
      upstand: { height: 0.4, length: 2.5 },
      cutOuts: [{ count: 2, length: 0.5, width: 0.2 }],
    })
    expect(zone.area).toBeCloseTo(1 - 0.2, 12)
    expect(zone.perimeter).toBeCloseTo(2 * 2.9 + 2 * 2 * 0.7, 12)
  })

  it('loses its openings and is masked along them too', () => {
    const cut = made({ cutOuts: [{ count: 2, length: 0.5, width: 0.4 }] })
    expect(cut.area).toBeCloseTo(3 - 0.4, 12)
    expect(cut.perimeter).toBeCloseTo(8 + 2 * 1.8, 12)
    const hole = rectangle(0.5, 0.4).map(([x, y]): Point2 => [x + 1, y + 0.3])
    expect(made({ openings: [hole] }).area).toBeCloseTo(3 - 0.2, 12)
    expect(made({ openings: [hole], mirrored: true }).area).toBeCloseTo(6 - 0.4, 12)
  })

  it('loses an opening on the centreline once, whether its half is drawn or all of it', () => {
    const whole = rectangle(0.5, 0.4).map(([x, y]): Point2 => [x + 1, y - 0.2])
    const half = rectangle(0.5, 0.2).map(([x, y]): Point2 => [x + 1, y])
    for (const opening of [whole, half]) {
      const zone = made({ openings: [opening], mirrored: true })
      expect(zone).toMatchObject({ codes: [] })
      expect(zone.area).toBeCloseTo(6 - 0.2, 12)
      expect(zone.perimeter).toBeCloseTo(10 + 1.8, 12)
    }
  })

  it('counts pieces that are alike, and both faces of each but its edge once', () => {
    const lids = made({ count: 3, faces: 2, edge: rectangle(0.5, 0.4) })
    expect(lids.area).toBeCloseTo(3 * 2 * 0.5 * 0.4, 12)
    expect(lids.perimeter).toBeCloseTo(3 * 1.8, 12)
  })

  it('keeps its area wherever it lies, whichever way its corners run and whichever comes first', () => {
    const far = fc.double({ min: -9, max: 9, noNaN: true })
    fc.assert(
      fc.property(far, far, fc.nat(3), fc.boolean(), (dx, dy, by, back) => {
        const moved = rectangle(3, 1).map(([x, y]): Point2 => [x + dx, y + dy])
        const turned = [...moved.slice(by), ...moved.slice(0, by)]
        expect(made({ edge: back ? [...turned].reverse() : turned }).area).toBeCloseTo(3, 9)
      }),
    )
  })
})

describe('a deck zone that cannot be worked', () => {
  it('has fewer than three corners, all on one line, or an edge that crosses itself', () => {
    expect(codesOf({ edge: [] })).toEqual(['boat.deckTooFewCorners'])
    expect(codesOf({ edge: rectangle(3, 1).slice(0, 2) })).toEqual(['boat.deckTooFewCorners'])
    expect(codesOf({ edge: rectangle(3, 0) })).toEqual(['boat.deckNoArea'])
    const [a, b, c, d] = rectangle(3, 1) as [Point2, Point2, Point2, Point2]
    const { zone, notes } = deckZone(shape({ edge: [a, c, b, d] }))
    expect(zone).toBeUndefined()
    expect(notes).toEqual([
      {
        code: 'boat.deckCrosses',
        severity: 'fault',
        data: { first: 1, firstTo: 2, second: 3, secondTo: 4 },
      },
    ])
  })

  it('never throws and never has less than nothing, whatever its corners are', () => {
    const place = fc.tuple(fc.double({ min: -9, max: 9 }), fc.double({ min: -9, max: 9 }))
    fc.assert(
      fc.property(
        fc.array(place, { maxLength: 9 }),
        fc.array(place, { maxLength: 5 }),
        fc.boolean(),
        (edge, opening, mirrored) => {
          const { zone } = deckZone(shape({ edge, openings: [opening], mirrored, camberRise: 0.1 }))
          if (zone && edge.flat().every(Number.isFinite)) expect(zone.area).toBeGreaterThan(0)
        },
      ),
    )
  })
})

describe('what does not fit', () => {
  it('is not taken off: openings as large as the zone, outside it, or crossing themselves', () => {
    const large = made({ cutOuts: [{ count: 4, length: 1, width: 0.75 }] })
    expect(large).toMatchObject({ area: 3, codes: ['boat.deckOpeningTooLarge'] })
    const outside = rectangle(0.5, 0.5).map(([x, y]): Point2 => [x + 2.8, y])
    expect(made({ openings: [outside] })).toMatchObject({ area: 3, codes: ['boat.deckOpeningOutside'] })
    expect(made({ openings: [outside.slice(0, 2)] })).toMatchObject({
      area: 3,
      codes: ['boat.deckOpeningUnusable'],
    })
  })

  it('is pulled back to the centreline where half a zone reaches over it', () => {
    const over = rectangle(3, 1).map(([x, y]): Point2 => [x, y - 0.1])
    expect(made({ edge: over, mirrored: true })).toMatchObject({ codes: ['boat.deckOverCentre'] })
    expect(made({ edge: over, mirrored: true }).area).toBeCloseTo(2 * 3 * 0.9, 12)
    // A tape laid by eye is no fault.
    const near = rectangle(3, 1).map(([x, y]): Point2 => [x, y - 0.01])
    expect(made({ edge: near, mirrored: true }).codes).toEqual([])
  })

  it('is no camber of more than half the width', () => {
    expect(made({ camberRise: 0.6 })).toMatchObject({ area: 3, codes: ['boat.deckCamberTooHigh'] })
  })
})
