/** What a step is, as a code and its data: `words/` makes the sentence. */
import type { NoteData } from '#core/note'
import type { Plan, WorkStep } from './types.ts'

/** The stages of a plan that a step is described from. */
export type Described = Pick<Plan, 'steps' | 'surfaces' | 'marks' | 'buildUps' | 'repairs'>

export type StepText = { readonly code: string; readonly data: NoteData }

/** `key:<step>` steps are put in by the calendar and are described by the step they were put in for. */
export function describeStep(plan: Described, id: string): StepText {
  const keyed = id.startsWith('key:') ? id.slice('key:'.length) : undefined
  const step = plan.steps.steps.find((one) => one.id === (keyed ?? id))
  if (!step) return { code: 'step.unknown', data: { step: id } }
  const data = dataOf(plan, step)
  return { code: `step.${keyed ? 'key' : camel(step.kind)}`, data }
}

const camel = (kind: string): string =>
  kind.replace(/-([a-z])/g, (_match, letter: string) => letter.toUpperCase())

function dataOf(plan: Described, step: WorkStep): NoteData {
  const zone = [...plan.surfaces.zones, ...plan.marks.zones].find((one) => one.id === step.zone)
  const layer = plan.buildUps.layers.find((one) => one.zone === step.zone && one.layer === step.layer)
  return {
    ...(zone ? { zone: zone.name } : {}),
    ...(layer ? { layer: layer.name } : {}),
    ...subjectOf(plan, step),
    ...(step.areaM2 === undefined ? {} : { areaM2: step.areaM2 }),
    ...(step.lengthM === undefined ? {} : { lengthM: step.lengthM }),
    ...(step.tapeOffM === undefined ? {} : { tapeOffM: step.tapeOffM }),
    ...(step.grit === undefined ? {} : { grit: step.rungs?.map(({ grit }) => grit).join(', ') ?? step.grit }),
    ...(step.method === undefined ? {} : { method: step.method }),
    ...(step.coat === undefined ? {} : { coat: step.coat, coats: step.coats ?? step.coat }),
  }
}

/** The finding or the fitting a step is about. */
function subjectOf(plan: Described, step: WorkStep): NoteData {
  const repair = plan.repairs.repairs.find(
    (one) => step.kind.endsWith('repair') && one.finding === step.subject,
  )
  const fitting = plan.repairs.fittings.find((one) => one.fitting === step.subject)
  const found = repair ?? fitting
  return found ? { name: found.name, count: found.count } : {}
}
