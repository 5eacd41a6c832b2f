/** The work as a list: hours, hands, and what must wait for what. */
import type { Note } from '#core/note'
import type { Work } from '#job'
import type { Rates } from './known.ts'
import type { Stage } from './remember.ts'
import { closingSteps } from './steps/closing.ts'
import { hostsOf, type StepContext, zoneRank } from './steps/context.ts'
import { createDraft } from './steps/draft.ts'
import { floorsOf } from './steps/floors.ts'
import { repairSteps, settleStep } from './steps/grinding.ts'
import { handsAtOnce } from './steps/hands.ts'
import { inOrder } from './steps/in-order.ts'
import { bareSanding, layerSteps } from './steps/layers.ts'
import { openingSteps } from './steps/opening.ts'
import type { BuildUps, Hazards, Marks, Repairs, Steps, Surfaces, WorkStep, ZoneLayer } from './types.ts'

export type StepsInput = {
  readonly surfaces: Surfaces
  readonly marks: Marks
  readonly repairs: Repairs
  readonly buildUps: BuildUps
  readonly hazards: Hazards
  readonly rates: Rates
  readonly people: Work['people']
  readonly shifts: Work['shifts']
  readonly boat: Work['boat']
  readonly shelter: Work['place']['shelter']
}

export const steps: Stage<StepsInput, Steps> = { name: 'steps', run: drawUpSteps }

function drawUpSteps(input: StepsInput): Steps {
  const context = contextOf(input)
  const zones = [...context.zones].sort((a, b) => zoneRank(a) - zoneRank(b))
  const laidOn = (zone: (typeof zones)[number]) => hostsOf(context, zone).length > 0 || zone.how === 'marks'
  const own = zones.filter((zone) => !laidOn(zone))
  const onTop = zones
    .filter(laidOn)
    .sort((a, b) => Number(a.kind === 'boot stripe') - Number(b.kind === 'boot stripe'))
  openingSteps(context)
  repairSteps(context)
  for (const zone of own) layerSteps(context, zone, { fill: true })
  for (const zone of own) bareSanding(context, zone)
  settleStep(context)
  for (const zone of [...own, ...onTop]) layerSteps(context, zone, { fill: false })
  closingSteps(context)
  const { ordered, ring } = inOrder(context.draft.all())
  return { steps: ordered, notes: [...ring.map(ringNote), ...borrowedHands(context)] }
}

/** What this step can do to whom: by the product in hand, by the kind of work, by the zone it is on. */
export function hazardsOf(
  step: Pick<WorkStep, 'kind' | 'zone' | 'sheet'>,
  { hazards }: Hazards,
): readonly string[] {
  return hazards
    .filter((hazard) => {
      const byKind =
        hazard.kinds.includes(step.kind) && (hazard.zones === 'any' || hazard.zones.includes(step.zone ?? ''))
      return byKind || (step.sheet !== undefined && hazard.sheets.includes(step.sheet))
    })
    .map((hazard) => hazard.id)
}

const ringNote = (step: { readonly id: string }): Note => ({
  code: 'steps.ring',
  severity: 'fault',
  data: { step: step.id },
})

/** What takes a hand on either side of the skin is planned for one all the same: somebody is borrowed for it. */
function borrowedHands({ crew, fittings }: StepContext): readonly Note[] {
  if (crew > 1) return []
  return fittings
    .filter(({ reach, plan, leaveAlone }) => reach !== 'free' && plan !== 'leave' && !leaveAlone)
    .map(({ fitting, name, reach }) => ({
      code: 'steps.secondHand',
      severity: 'notice',
      data: { fitting, name, reach },
    }))
}

/** Nobody where there is no lead: then whoever is there does it. */
const helpersOf = (people: Work['people']): readonly string[] =>
  people.some(({ role }) => role === 'lead')
    ? people.filter(({ role }) => role === 'helper').map(({ id }) => id)
    : []

function byZone(layers: readonly ZoneLayer[]): ReadonlyMap<string, readonly ZoneLayer[]> {
  const found = new Map<string, ZoneLayer[]>()
  for (const layer of layers) {
    const own = found.get(layer.zone)
    if (own) own.push(layer)
    else found.set(layer.zone, [layer])
  }
  return found
}

function contextOf(input: StepsInput): StepContext {
  const zones = [...input.surfaces.zones, ...input.marks.zones]
  return {
    draft: createDraft({
      hazardsOf: (step) => hazardsOf(step, input.hazards),
      floorsUnder: floorsOf(zones),
    }),
    rates: input.rates,
    zones,
    shelter: input.shelter,
    marks: input.marks,
    repairs: input.repairs,
    sheets: new Map(input.buildUps.sheets.map((sheet) => [sheet.id, sheet])),
    layers: byZone(input.buildUps.layers),
    fittings: input.repairs.fittings,
    crew: Math.max(1, Math.min(3, handsAtOnce(input.shifts))),
    helpers: helpersOf(input.people),
    sensitised: input.people.filter((person) => person.sensitised).map((person) => person.id),
    fuel: input.boat.fuel ?? 'unknown',
  }
}
