/** Tape round a zone: put on before a layer, pulled from the last coat it was put on for. */
import type { Sure, WorkStep, ZoneArea, ZoneLayer } from '../types.ts'
import { placeOf, type StepContext } from './context.ts'
import { stepId } from './draft.ts'
import { washId } from './opening.ts'
import { below, group, isFiller, onHosts, type Spot, sandId, settled } from './spot.ts'

export const maskId = (layer: ZoneLayer): string => stepId('mask', layer.zone, layer.layer)

/** Taped once for the primers and again for the finish: tape does not stay on from one stage to the next. */
export function mask(context: StepContext, spot: Spot): void {
  const { layer, zone, previous } = spot
  if (isFiller(layer) || zone.perimeterM === 0) return
  if (previous && group(previous) === group(layer)) return
  const lengthM = tapeM(context, zone)
  const rate = maskRate(context, zone)
  context.draft.add({
    id: maskId(layer),
    kind: zone.how === 'marks' ? 'strike' : 'mask',
    phase: spot.phase,
    zone: zone.id,
    layer: layer.layer,
    lengthM,
    personHours: lengthM * rate.value,
    certainty: rate.certainty,
    crew: { least: 1, most: context.crew },
    air: placeOf(zone),
    needs: [
      sandId(layer, 1),
      settled(zone),
      washId(zone.id),
      ...below(context, spot),
      ...onHosts(context, spot),
    ],
  })
}

/** Its edge, and round what stays on it. */
const tapeM = ({ fittings }: StepContext, zone: ZoneArea): number =>
  fittings
    .filter((fitting) => fitting.zone === zone.id)
    .reduce((sum, fitting) => sum + fitting.maskM, zone.perimeterM)

/** Tape is pulled from the last coat it was put on for, while that is soft: later it tears the edge. */
export function tapeOff(
  context: StepContext,
  { layer, zone, next }: Spot,
  coat: number,
): Pick<WorkStep, 'tapeOffM'> {
  if (isFiller(layer) || zone.perimeterM === 0 || coat < layer.coats) return {}
  return next && group(next) === group(layer) ? {} : { tapeOffM: tapeM(context, zone) }
}

/** A line that is not there yet is struck before it is taped. */
function maskRate({ rates }: StepContext, zone: ZoneArea): Sure<number> {
  if (zone.how !== 'marks') return rates.maskHoursPerM
  const struck = zone.kind === 'boot stripe' ? rates.strikeHoursPerM : rates.layOutHoursPerM
  return { value: struck.value + rates.maskHoursPerM.value, certainty: 'assumed' }
}
