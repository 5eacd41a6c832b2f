/** A layer among those of its zone, and what anything done for it waits for. */
import type { Need } from '#core/schedule'
import { fills } from '../sheets/fillers.ts'
import type { ResolvedSheet, ZoneArea, ZoneLayer } from '../types.ts'
import { coatId, hostsOf, lastCoat, type StepContext, sheetOf } from './context.ts'
import { stepId } from './draft.ts'
import { settleId } from './grinding.ts'
import { dryNeeds } from './waits.ts'

export const isFiller = (layer: ZoneLayer): boolean => fills(layer.role)

export const group = (layer: ZoneLayer): 'fill' | 'prime' | 'finish' | 'nonSkid' => {
  if (isFiller(layer)) return 'fill'
  if (layer.role === 'non-skid') return 'nonSkid'
  return layer.role === 'finish' ? 'finish' : 'prime'
}

/** Where the layer stands among those of its zone. */
export type Spot = {
  readonly zone: ZoneArea
  readonly layer: ZoneLayer
  readonly sheet: ResolvedSheet
  readonly previous: ZoneLayer | undefined
  readonly next: ZoneLayer | undefined
  readonly phase: number
  /** Nothing liquid is on the zone yet: sanding here belongs to the grinding block. */
  readonly bare: boolean
}

export const sandId = (layer: ZoneLayer, coat: number): string =>
  stepId('sand', layer.zone, layer.layer, coat)

/** The last coat below this layer, dry enough to sand. */
export function below(context: StepContext, { previous }: Spot): readonly Need[] {
  return previous
    ? dryNeeds(coatId(previous, previous.coats), sheetOf(context, previous.sheet), 'dryToSand')
    : []
}

/** A stripe or a panel is taped on the fresh paint of its neighbours. */
export function onHosts(context: StepContext, spot: Spot): readonly Need[] {
  return hostsOf(context, spot.zone).flatMap((host) => {
    const last = lastCoat(context, host.id)
    return last ? dryNeeds(last.id, sheetOf(context, last.layer.sheet), 'dryToTape') : []
  })
}

export const settled = (zone: ZoneArea): string | undefined => (zone.indoors ? undefined : settleId)
