/** What is known of a deck zone that was measured as a shape. From above: x forward, y to port; metres and radians. */

import type { Polygon } from '#core/geometry'

/** Rectangles cut out, as measured on the surface. */
export type CutOut = { readonly count: number; readonly length: number; readonly width: number }

/** A strip that stands up along the zone, such as a coaming; all round the edge without a length. */
export type Upstand = { readonly height: number; readonly length?: number }

export type DeckShapeInput = {
  /** Corners in order, seen from above; empty for an upstand alone. */
  readonly edge: Polygon
  /** Made from offsets, so that it cannot cross itself. */
  readonly ordered: boolean
  /** Corners of each opening. */
  readonly openings: readonly Polygon[]
  /** The edge is one half, or one of two alike. */
  readonly mirrored: boolean
  /** Rise of the deck in the middle of the zone over its edges, where it is widest. */
  readonly camberRise: number
  /** To the level along the boat; the corners were measured level. */
  readonly slope: number
  readonly cutOuts: readonly CutOut[]
  readonly upstand?: Upstand
  /** How many alike, and how many faces of each. */
  readonly count: number
  readonly faces: number
}
