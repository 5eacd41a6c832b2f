/** What is shown before each step and over the whole job, worst first. */
import type { Placed } from '#core/schedule'
import type { AirOf } from './air-at.ts'
import type { Stage } from './remember.ts'
import type {
  BuildUps,
  Caution,
  Cautions,
  Days,
  Hazard,
  Hazards,
  ResolvedSheet,
  Steps,
  WorkStep,
} from './types.ts'

export type CautionsInput = {
  readonly hazards: Hazards
  readonly steps: Steps
  readonly days: Days
  readonly buildUps: BuildUps
  readonly airOf: AirOf
}

export const cautions: Stage<CautionsInput, Cautions> = { name: 'cautions', run: gatherCautions }

const rank: Readonly<Record<Caution['severity'], number>> = { danger: 0, warning: 1, caution: 2, notice: 3 }

function gatherCautions(input: CautionsInput): Cautions {
  const setting = settingOf(input)
  const found = input.hazards.hazards.flatMap((hazard): readonly Caution[] => {
    if (hazard.job) return [asCaution(hazard, [])]
    const test = byAir[hazard.id]
    const steps = input.steps.steps.filter(
      (step) => step.hazards.includes(hazard.id) || test?.(hazard, step, setting) === true,
    )
    return steps.length > 0 ? [asCaution(hazard, ids(steps))] : []
  })
  return {
    // Among equals as the catalogue has them: what the material does before what the place does.
    cautions: [...found].sort((a, b) => rank[a.severity] - rank[b.severity]),
  }
}

const ids = (steps: readonly WorkStep[]): readonly string[] => steps.map((step) => step.id)

type Setting = {
  readonly placed: ReadonlyMap<string, Placed>
  readonly sheets: ReadonlyMap<string, ResolvedSheet>
  readonly airOf: AirOf
}

const settingOf = ({ days, buildUps, airOf }: CautionsInput): Setting => ({
  placed: new Map(days.placed.map((one) => [one.step, one])),
  sheets: new Map(buildUps.sheets.map((sheet) => [sheet.id, sheet])),
  airOf,
})

/** Hazards that the air of the hour brings, only known once the days are set: a hot day, a flash point in reach. */
const byAir: Readonly<Record<string, (hazard: Hazard, step: WorkStep, setting: Setting) => boolean>> = {
  heat: (hazard, step, setting) => hottestC(step, setting) >= Number(hazard.data.airC),
  flashPoint: (hazard, step, setting) => {
    const flashC = setting.sheets.get(step.sheet ?? '')?.flashPointC?.value
    return flashC !== undefined && hottestC(step, setting) >= flashC - Number(hazard.data.marginK)
  },
}

/** Warmest air while the step is done; nothing is warm for a step without a place in the calendar. */
function hottestC(step: WorkStep, { placed, airOf }: Setting): number {
  const pieces = placed.get(step.id)?.pieces ?? []
  const air = airOf(step.air)
  return pieces.reduce((most, piece) => Math.max(most, ...hoursOf(piece).map(air)), Number.NEGATIVE_INFINITY)
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
