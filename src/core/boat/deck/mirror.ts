/** A shape and its mirror image on the other side of the boat. From above: x forward, y to port; metres. */

import { distance2, type Point2, type Polygon } from '#core/geometry'

/** Nearer to the centreline than this is on it, m. */
export const onCentre = 1e-4

/** The shape, and its mirror image where there is one. */
export const onBothSides = (edge: Polygon, mirrored: boolean): readonly Polygon[] => {
  if (edge.length === 0) return []
  return mirrored ? [edge, edge.map(([x, y]): Point2 => [x, -y])] : [edge]
}

export type MaskedEdge = {
  /** How much longer lines are on the surface than from above, along the boat and across it. */
  readonly stretch: { readonly along: number; readonly across: number }
  readonly mirrored: boolean
}

/** Length of the edge of one side in metres, without what lies on the centreline of a mirrored shape. */
export const maskedEdge = (edge: Polygon, { stretch, mirrored }: MaskedEdge): number =>
  edge.reduce((total, from, i) => {
    const to = edge[(i + 1) % edge.length]!
    const joins = mirrored && Math.abs(from[1]) < onCentre && Math.abs(to[1]) < onCentre
    return joins ? total : total + distance2(onSurface(from, stretch), onSurface(to, stretch))
  }, 0)

const onSurface = ([x, y]: Point2, { along, across }: MaskedEdge['stretch']): Point2 => [
  x * along,
  y * across,
]
