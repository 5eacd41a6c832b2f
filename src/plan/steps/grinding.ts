/** Repairs and the dust they make: all of it in one block, then a night for the dust to settle. */
import { phase, placeOf, type StepContext, sheetOf } from './context.ts'
import { stepId } from './draft.ts'
import { ids, washId } from './opening.ts'

export const repairId = (finding: string): string => stepId('repair', finding)
export const settleId = 'settle'

/** Old pattern and sharp texture go before anything is laminated; then the rest in the order of the survey. */
const patternFirst = (kind: string): number => (kind.endsWith('non-skid') ? 0 : 1)

export function repairSteps(context: StepContext): void {
  const { draft } = context
  const ordered = [...context.repairs.repairs].sort((a, b) => patternFirst(a.kind) - patternFirst(b.kind))
  for (const repair of ordered) {
    const zone = context.zones.find((other) => other.id === repair.zone)
    const patterns = ordered
      .filter((other) => other.zone === repair.zone && patternFirst(other.kind) < patternFirst(repair.kind))
      .map((other) => repairId(other.finding))
    draft.add({
      id: repairId(repair.finding),
      kind: 'repair',
      dust: 'makes',
      phase: phase.grind,
      zone: repair.zone,
      subject: repair.finding,
      ...(repair.sheet === undefined ? {} : { sheet: repair.sheet }),
      personHours: repair.hours,
      certainty: repair.certainty,
      crew: { least: 1, most: context.crew },
      air: placeOf(zone),
      needs: [washId(repair.zone), ids.fuel, ...patterns],
    })
  }
}

/** What a layer on the zone must wait for: every repair there, its filler dry enough to sand. */
export function repairsDone(context: StepContext, zone: string) {
  return context.repairs.repairs
    .filter((repair) => repair.zone === zone)
    .map((repair) => {
      const table =
        repair.sheet === undefined ? undefined : sheetOf(context, repair.sheet)?.clocks.dryToSand?.value
      return {
        step: repairId(repair.finding),
        wait: table ? { kind: 'clock' as const, clock: 'dryToSand', table } : { kind: 'none' as const },
      }
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
