/** How many times the paint of a smooth surface a layer takes, by what it lies on and what it leaves. */
import { meanTexture } from '#core/coating'
import type { Work } from '#job'
import type { Known } from '../known.ts'
import type { Sure, ZoneArea } from '../types.ts'
import { COVERS_FROM } from './covers-from.ts'

type LayerItem = Work['layers'][number]

export type LaidOn = {
  readonly zone: Pick<ZoneArea, 'texture' | 'how'>
  /** On the same zone, from the boat outward. */
  readonly below: readonly LayerItem[]
  readonly roleOf: (layer: LayerItem) => string
  /** Its old pattern goes before anything comes on. */
  readonly isGroundOff: boolean
}

const smooth: Sure<number> = { value: 1, certainty: 'worked' }

/** Mean over the coats: the first lies on what is below, the later ones on the bead of the layer itself. */
export function textureOf(
  layer: Pick<LayerItem, 'coats' | 'additive' | 'broadcast'>,
  on: LaidOn,
  { textures }: Pick<Known, 'textures'>,
): Sure<number> {
  const { coats } = layer
  const under = roughnessUnder(on)
  const beaded = isBeaded(layer)
  if (under === 'smooth' && !(beaded && coats > 1)) return smooth
  const below = { smooth, grit: textures.grit, moulded: textures.moulded }[under]
  const own = beaded ? textures.grit : smooth
  return {
    value: meanTexture({ coats, under: below.value, own: own.value }),
    certainty: beaded || under === 'grit' ? textures.grit.certainty : textures.moulded.certainty,
  }
}

const isBeaded = ({ additive, broadcast }: Pick<LayerItem, 'additive' | 'broadcast'>): boolean =>
  (additive?.value ?? 0) > 0 || (broadcast?.value ?? 0) > 0

/** Bead below; or the old pattern, where nothing ground it off and nothing was faired over it. */
function roughnessUnder({ zone, below, roleOf, isGroundOff }: LaidOn): 'smooth' | 'grit' | 'moulded' {
  if (below.some((layer) => isBeaded(layer) || roleOf(layer) === 'non-skid')) return 'grit'
  if (zone.texture === 'smooth' || zone.how === 'marks') return 'smooth'
  const faired = below.some(
    (layer) => ['filler', 'fairing'].includes(roleOf(layer)) && (layer.coverShare?.value ?? 1) >= COVERS_FROM,
  )
  if (faired || isGroundOff) return 'smooth'
  return zone.texture === 'bonded grit' ? 'grit' : 'moulded'
}
