/** How much of sun and sky reaches a boat under what stands over it. */
import type { Shelter } from '../shelter.ts'

export type ShelterLight = {
  /** Share of the sun, and of the bright ring about it, that is let through. */
  readonly beamShare: number
  /** Share of the light of sky and ground that is kept. */
  readonly diffuseShare: number
}

const walls: ShelterLight = { beamShare: 0, diffuseShare: 0 }

/**
 * Assumed, from common practice: a tarpaulin lets a tenth of the daylight through and no sun, an open-sided shed keeps
 * the low third of the sky, walls keep it all out.
 */
export const shelterLight: Readonly<Record<Shelter, ShelterLight>> = {
  open: { beamShare: 1, diffuseShare: 1 },
  cover: { beamShare: 0, diffuseShare: 0.1 },
  'open-sided shed': { beamShare: 0, diffuseShare: 0.3 },
  shed: walls,
  'heated shed': walls,
}
