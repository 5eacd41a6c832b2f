/** After the last coat: hardware bedded and refitted, snags, handover. */
import { hostsOf, lastCoat, phase, placeOf, type StepContext, sheetOf } from './context.ts'
import { stepId } from './draft.ts'
import { needsTwo, offId } from './opening.ts'
import { dryNeeds } from './waits.ts'

export const onId = (fitting: string): string => stepId('on', fitting)

export function closingSteps(context: StepContext): void {
  for (const fitting of context.fittings) {
    if (fitting.plan !== 'refit' || fitting.leaveAlone) continue
    const zone = context.zones.find((other) => other.id === fitting.zone)
    context.draft.add({
      id: onId(fitting.fitting),
      kind: 'on',
      phase: phase.refit,
      zone: fitting.zone,
      subject: fitting.fitting,
      personHours: fitting.count * fitting.hoursOn.value,
      certainty: fitting.hoursOn.certainty,
      crew: { least: needsTwo(fitting.reach, context.crew) ? 2 : 1, most: Math.min(2, context.crew) },
      air: placeOf(zone),
      needs: [offId(fitting.fitting), ...paintRoundIt(context, fitting.zone)],
    })
  }
  const before = context.draft.all().map((step) => step.id)
  add(context, 'snag', context.rates.snagHours, before)
  add(context, 'handover', context.rates.handoverHours, ['snag'])
}

/** Hard enough for hardware: the zone itself and whatever stripe or panel lies on it. */
function paintRoundIt(context: StepContext, zoneId: string) {
  const onIt = context.zones.filter((zone) => hostsOf(context, zone).some((host) => host.id === zoneId))
  return [zoneId, ...onIt.map((zone) => zone.id)].flatMap((id) => {
    const last = lastCoat(context, id)
    return last ? dryNeeds(last.id, sheetOf(context, last.layer.sheet), 'dryToFit') : []
  })
}

function add(
  context: StepContext,
  id: 'snag' | 'handover',
  hours: StepContext['rates']['snagHours'],
  needs: readonly string[],
): void {
  context.draft.add({
    id,
    kind: id,
    phase: phase.closing,
    personHours: hours.value,
    certainty: hours.certainty,
    barred: context.helpers,
    needs,
  })
}
