/** What is shown before each step and over the whole job, worst first. */
import type { AirAt } from '#core/schedule'
import { airAt } from './air-at.ts'
import type { Stage } from './remember.ts'
import type {
  BuildUps,
  Caution,
  Cautions,
  Conditions,
  Days,
  Hazard,
  Hazards,
  Steps,
  WorkStep,
} from './types.ts'

export type CautionsInput = {
  readonly hazards: Hazards
  readonly steps: Steps
  readonly days: Days
  readonly buildUps: BuildUps
  readonly conditions: Conditions
}

export const cautions: Stage<CautionsInput, Cautions> = { name: 'cautions', run: gatherCautions }

const rank: Readonly<Record<Caution['severity'], number>> = { danger: 0, warning: 1, caution: 2, notice: 3 }

function gatherCautions(input: CautionsInput): Cautions {
  const air = new Map(input.conditions.air.map((one) => [one.key, airAt(one)]))
  const found = input.hazards.hazards.flatMap((hazard): readonly Caution[] => {
    if (hazard.job) return [asCaution(hazard, [])]
    const steps = input.steps.steps.filter(
      (step) => step.hazards.includes(hazard.id) || inHotAir(hazard, step, { ...input, air }),
    )
    return steps.length > 0
      ? [
          asCaution(
            hazard,
            steps.map((step) => step.id),
          ),
        ]
      : []
  })
  return {
    cautions: [...found].sort((a, b) => rank[a.severity] - rank[b.severity] || (a.code < b.code ? -1 : 1)),
  }
}

type Setting = CautionsInput & { readonly air: ReadonlyMap<string, AirAt> }

/** A flash point within reach of the air of the hour, or a hot working day: only known once the days are set. */
function inHotAir(hazard: Hazard, step: WorkStep, setting: Setting): boolean {
  const placed = setting.days.placed.find((one) => one.step === step.id)
  const airOf = setting.air.get(step.air)
  if (!placed || !airOf || (hazard.id !== 'flashPoint' && hazard.id !== 'heat')) return false
  const hottestC = Math.max(...placed.pieces.flatMap((piece) => hoursOf(piece).map(airOf)))
  if (hazard.id === 'heat') return hottestC >= Number(hazard.data.airC)
  const flashC = setting.buildUps.sheets.find((sheet) => sheet.id === step.sheet)?.flashPointC?.value
  return flashC !== undefined && hottestC >= flashC - Number(hazard.data.marginK)
}

/** Hours since 1970 UTC that a stretch touches. */
function hoursOf(piece: { readonly startMinute: number; readonly endMinute: number }): readonly number[] {
  const first = Math.floor(piece.startMinute / 60)
  return Array.from({ length: Math.ceil(piece.endMinute / 60) - first }, (_, index) => first + index)
}

const asCaution = (hazard: Hazard, steps: readonly string[]): Caution => ({
  code: hazard.code,
  severity: hazard.severity,
  data: hazard.data,
  protection: hazard.protection,
  source: hazard.source,
  steps,
})
