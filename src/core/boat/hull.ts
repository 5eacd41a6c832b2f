/**
 * A hull as one smooth surface of its port half, and its particulars. Boat frame: x forward from the aftmost point,
 * y to port, z up from the floating waterline; metres. The starboard half is its mirror image. Arrays belong to the
 * hull and are never changed.
 */

import type { BandIntegral, Contour, Loft } from '#core/geometry'
import type { Station } from './station.ts'
import type { StripEdge } from './station-strips.ts'

export type Side = 'port' | 'starboard'

export type HullParticulars = {
  readonly lengthOverall: number
  /** Length of the hull where it crosses z = 0; 0 when it does not. */
  readonly lengthWaterline: number
  readonly beamOverall: number
  readonly beamWaterline: number
  /** Depth of the lowest point below z = 0, 0 when none is. */
  readonly draft: number
  readonly freeboardStem: number
  readonly freeboardMid: number
  readonly freeboardStern: number
  /** Volume of the hull below z = 0, m³. */
  readonly displacedVolume: number
  /** Length of one sheer line. */
  readonly sheerLength: number
  /** Plan area inside the sheer, m². */
  readonly sheerPlanArea: number
}

/** The surface and what its strips are. */
export type HullSkin = {
  readonly surface: Loft
  /** Upper edge of each strip of the surface, keel to sheer. */
  readonly edges: readonly StripEdge[]
}

/** What the floating waterline parts; whatever speaks of it reads it here. */
export type HullWater = {
  /** One side's integrals below and above z = 0. */
  readonly below: BandIntegral
  readonly above: BandIntegral
  /** Port line at z = 0. */
  readonly contour: Contour
}

export type Hull = HullSkin & {
  readonly stations: readonly Station[]
  readonly water: HullWater
  readonly particulars: HullParticulars
}
