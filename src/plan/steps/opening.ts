/** Before any tool turns: survey, marks kept, fuel made safe, what stays guarded, hardware off, wash and dewax. */
import { layersOn, phase, placeOf, type StepContext } from './context.ts'
import { stepId } from './draft.ts'

export const ids = { survey: 'survey', references: 'references', fuel: 'fuel', guard: 'guard' } as const
export const washId = (zone: string): string => stepId('wash', zone)
export const offId = (fitting: string): string => stepId('off', fitting)

const noFuel = new Set(['none', 'electric'])

export function openingSteps(context: StepContext): void {
  const { draft, rates } = context
  draft.add({
    id: ids.survey,
    kind: 'survey',
    phase: phase.opening,
    personHours: rates.surveyHours.value,
    certainty: rates.surveyHours.certainty,
    barred: context.helpers,
    needs: [],
  })
  keepReferences(context)
  makeFuelSafe(context)
  guardWhatStays(context)
  takeFittingsOff(context)
  washZones(context)
}

/** The waterline is kept by marks below the work before anything is sanded. */
function keepReferences({ draft, rates, zones }: StepContext): void {
  if (!zones.some((zone) => ['topsides', 'transom', 'boot-top', 'boot stripe'].includes(zone.kind))) return
  draft.add({
    id: ids.references,
    kind: 'references',
    phase: phase.opening,
    personHours: rates.referenceHours.value,
    certainty: rates.referenceHours.certainty,
    needs: [ids.survey],
  })
}

/** Tank and lines mapped, battery off, bilge vented, before any saw or grinder. */
function makeFuelSafe({ draft, rates, fuel }: StepContext): void {
  if (noFuel.has(fuel)) return
  draft.add({
    id: ids.fuel,
    kind: 'fuel',
    phase: phase.opening,
    personHours: rates.fuelHours.value,
    certainty: rates.fuelHours.certainty,
    needs: [ids.survey],
  })
}

function guardWhatStays({ draft, rates, fittings }: StepContext): void {
  const alone = fittings.filter((fitting) => fitting.leaveAlone)
  if (alone.length === 0) return
  const pieces = alone.reduce((sum, fitting) => sum + fitting.count, 0)
  draft.add({
    id: ids.guard,
    kind: 'guard',
    phase: phase.opening,
    personHours: pieces * rates.guardHoursEach.value,
    certainty: rates.guardHoursEach.certainty,
    needs: [ids.survey],
  })
}

function takeFittingsOff({ draft, fittings, crew, zones }: StepContext): void {
  for (const fitting of fittings) {
    if (fitting.leaveAlone || fitting.plan === 'leave') continue
    draft.add({
      id: offId(fitting.fitting),
      kind: 'off',
      phase: phase.opening,
      zone: fitting.zone,
      subject: fitting.fitting,
      personHours: fitting.count * fitting.hoursOff.value,
      certainty: fitting.hoursOff.certainty,
      crew: { least: needsTwo(fitting.reach, crew) ? 2 : 1, most: Math.min(2, crew) },
      air: placeOf(zones.find((zone) => zone.id === fitting.zone)),
      needs: [ids.survey],
    })
  }
}

/** A bolt whose nut is out of reach of the screwdriver hand takes one above and one below. */
export const needsTwo = (reach: string, crew: number): boolean => reach !== 'free' && crew > 1

function washZones(context: StepContext): void {
  const { draft, rates } = context
  for (const zone of context.zones) {
    if (layersOn(context, zone.id).length === 0 && !context.repairs.repairs.some((r) => r.zone === zone.id))
      continue
    if (zone.how === 'marks') continue
    const off = context.fittings
      .filter((fitting) => fitting.zone === zone.id)
      .map((fitting) => offId(fitting.fitting))
    draft.add({
      id: washId(zone.id),
      kind: 'wash',
      phase: phase.opening,
      zone: zone.id,
      areaM2: zone.areaM2,
      personHours: zone.areaM2 * rates.washHoursPerM2.value,
      certainty: rates.washHoursPerM2.certainty,
      crew: { least: 1, most: context.crew },
      air: placeOf(zone),
      needs: [ids.survey, ids.references, ids.guard, ...off],
    })
  }
}
