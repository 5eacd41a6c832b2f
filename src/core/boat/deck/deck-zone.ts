/**
 * A part of the deck as a measured shape: its edge seen from above, camber, slope, upstands, openings and mirror image,
 * to the area that is painted and the edge that is masked. Boat frame: x forward, y to port; metres and radians.
 */

import { type Polygon, polygonArea } from '#core/geometry'
import type { Note } from '#core/note'
import { checkedShape } from './checked-shape.ts'
import type { DeckShapeInput } from './deck-shape.ts'
import { maskedEdge, onBothSides } from './mirror.ts'

/** What an area was put together from. */
export type DeckTerms = {
  /** Inside the edge and inside the openings, one side, seen from above, m². */
  readonly outline: number
  readonly openings: number
  readonly sides: 1 | 2
  readonly camberFactor: number
  readonly slopeFactor: number
  /** All openings given by length and width, m². */
  readonly cutOuts: number
  /** m². */
  readonly upstand: number
  readonly upstandLength: number
  readonly count: number
  readonly faces: number
}

export type DeckZone = {
  /** m². */
  readonly area: number
  /** All edges to mask, those of openings too, m. */
  readonly perimeter: number
  readonly terms: DeckTerms
  /** As seen from above, on both sides where it is mirrored. */
  readonly edges: readonly Polygon[]
  readonly openings: readonly Polygon[]
}

export type DeckZoneResult = { readonly zone?: DeckZone; readonly notes: readonly Note[] }

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0)

/**
 * Area and masked edge of a deck zone:
 *
 *     area = count × faces × (sides × (outline − openings) × camber × slope − cut-outs + upstand)
 *
 * Outline and openings by the shoelace formula; camber is the length of a parabola over its chord, slope 1 ÷ cos of the
 * angle. Camber is taken across the widest place for the whole zone: where it narrows, one beam mould rises less, so the
 * area comes out too large by less than the factor itself, a few thousandths. An edge on the centreline of a mirrored
 * zone joins its halves and is not masked; nor is the foot of an upstand, whose top is masked in its place. A shape that
 * crosses itself or has too few corners gives no zone; openings that do not fit are not taken off. Notes say why.
 */
export const deckZone = (input: DeckShapeInput): DeckZoneResult => {
  const { shape, notes } = checkedShape(input)
  if (!shape) return { notes }
  const { edge, openings, cutOuts, camberFactor: camber } = shape
  const slopeFactor = 1 / Math.cos(input.slope)
  const stretch = { along: slopeFactor, across: camber }
  const sides = input.mirrored && edge.length > 0 ? 2 : 1
  const around = sides * maskedEdge(edge, { stretch, mirrored: input.mirrored })
  const upstandLength = input.upstand ? (input.upstand.length ?? around) : 0
  const terms: DeckTerms = {
    outline: polygonArea(edge),
    openings: sum(openings.map(polygonArea)),
    sides,
    camberFactor: camber,
    slopeFactor,
    cutOuts: sum(cutOuts.map(({ count, length, width }) => count * length * width)),
    upstand: (input.upstand?.height ?? 0) * upstandLength,
    upstandLength,
    count: input.count,
    faces: input.faces,
  }
  const insides =
    sides * sum(openings.map((one) => maskedEdge(one, { stretch, mirrored: input.mirrored }))) +
    sum(cutOuts.map(({ count, length, width }) => 2 * count * (length + width)))
  const standing = edge.length === 0 ? 2 * (upstandLength + (input.upstand?.height ?? 0)) : 0
  return {
    zone: {
      area: areaOf(terms),
      perimeter: input.count * (around + insides + standing),
      terms,
      edges: onBothSides(edge, input.mirrored),
      openings: openings.flatMap((one) => onBothSides(one, input.mirrored)),
    },
    notes,
  }
}

const areaOf = (terms: DeckTerms): number => {
  const { count, faces, sides, outline, openings, cutOuts, upstand } = terms
  const flat = sides * (outline - openings) * terms.camberFactor * terms.slopeFactor
  return count * faces * (flat - cutOuts + upstand)
}
