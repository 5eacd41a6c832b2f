/** Repairs and the dust they make: all of it in one block, then a night for the dust to settle. */
import type { Need } from '#core/schedule'
import type { Repair, ResolvedSheet } from '../types.ts'
import { hoursKeyOf, phase, placeOf, type StepContext, sheetOf } from './context.ts'
import { type StepSpec, stepId } from './draft.ts'
import { ids, washId } from './opening.ts'
import { dryNeeds } from './waits.ts'

export const repairId = (finding: string): string => stepId('repair', finding)
export const filledId = (finding: string): string => stepId('filled', finding)
export const settleId = 'settle'

/** Old pattern and sharp texture go before anything is laminated; then the rest in the order of the survey. */
const patternFirst = (kind: string): number => (kind.endsWith('non-skid') ? 0 : 1)

/** How much of a repair's hours is filling and laminating, the rest opening and grinding; assumed. */
const FILLING_SHARE = 0.5

export function repairSteps(context: StepContext): void {
  const ordered = [...context.repairs.repairs].sort((a, b) => patternFirst(a.kind) - patternFirst(b.kind))
  for (const repair of ordered) {
    const patterns = ordered
      .filter((other) => other.zone === repair.zone && patternFirst(other.kind) < patternFirst(repair.kind))
      .map((other) => repairId(other.finding))
    const fills = fillerOf(context, repair) !== undefined
    draftRepair(context, repair, {
      id: repairId(repair.finding),
      kind: 'repair',
      dust: 'makes',
      personHours: repair.hours * (fills ? 1 - FILLING_SHARE : 1),
      needs: [washId(repair.zone), ids.fuel, ...patterns],
    })
    if (fills) fillRepair(context, repair)
  }
}

const fillerOf = (context: StepContext, repair: Repair): ResolvedSheet | undefined =>
  repair.sheet === undefined ? undefined : sheetOf(context, repair.sheet)

/** What is laminated or filled wants the hours its product can take; opening it up does not. */
function fillRepair(context: StepContext, repair: Repair): void {
  const zone = context.zones.find((other) => other.id === repair.zone)
  draftRepair(context, repair, {
    id: filledId(repair.finding),
    kind: 'fill-repair',
    personHours: repair.hours * FILLING_SHARE,
    hoursKey: hoursKeyOf(context, zone, repair.sheet),
    ...(repair.sheet === undefined ? {} : { sheet: repair.sheet }),
    needs: [repairId(repair.finding)],
  })
}

function draftRepair(
  context: StepContext,
  repair: Repair,
  own: Pick<StepSpec, 'id' | 'kind' | 'personHours' | 'needs'> & Partial<StepSpec>,
): void {
  context.draft.add({
    phase: phase.grind,
    zone: repair.zone,
    subject: repair.finding,
    certainty: repair.certainty,
    crew: { least: 1, most: context.crew },
    air: placeOf(context.zones.find((other) => other.id === repair.zone)),
    ...own,
  })
}

/** What a layer on the zone must wait for: every repair there, its filler dry enough to sand. */
export function repairsDone(context: StepContext, zone: string): readonly Need[] {
  return context.repairs.repairs
    .filter((repair) => repair.zone === zone)
    .flatMap((repair) => {
      const filler = fillerOf(context, repair)
      return dryNeeds((filler ? filledId : repairId)(repair.finding), filler, 'dryToSand')
    })
}

/** Vacuum, then a night: after the last step of the grinding block on the boat itself. */
export function settleStep(context: StepContext): void {
  const grinding = context.draft.all().filter((step) => step.phase === phase.grind && step.air === 'boat')
  if (grinding.length === 0) return
  context.draft.add({
    id: settleId,
    kind: 'settle',
    phase: phase.settle,
    personHours: context.rates.clearUpHours.value,
    certainty: context.rates.clearUpHours.certainty,
    crew: { least: 1, most: context.crew },
    needs: grinding.map((step) => step.id),
  })
}
