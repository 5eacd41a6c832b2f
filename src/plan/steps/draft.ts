/** The list of steps while it is being drawn up: ids are derived from what a step is about, never counted. */

import type { Certainty } from '#core/note'
import type { Need, Pace } from '#core/schedule'
import { minutesOf } from '../minutes.ts'
import type { WorkStep } from '../types.ts'

/** `kind` and the ids of what it is about: stable under every edit that keeps those. */
export const stepId = (kind: string, ...about: readonly (string | number)[]): string =>
  [kind, ...about].join(':')

/** Of the sanding that puts a coat right which went wrong. */
export const mendId = (coat: string): string => stepId('mend', coat)
/** Of the coat that was lost, as it lies there until it is sanded or wiped off. */
export const lostId = (coat: string): string => stepId('lost', coat)

export type Draft = {
  readonly add: (step: StepSpec) => string
  readonly has: (id: string) => boolean
  readonly all: () => readonly WorkStep[]
}

/** What differs from a step that one person can do, at any hour, in pieces. */
export type StepSpec = Pick<WorkStep, 'id' | 'kind' | 'phase'> &
  Partial<Omit<WorkStep, 'needs' | 'hours' | 'paces'>> & {
    readonly personHours: number
    readonly certainty: Certainty
    readonly crew?: { readonly least: number; readonly most: number }
    readonly paces?: readonly Pace[]
    readonly needs: readonly (Need | string | undefined)[]
    readonly hoursKey?: string
  }

export type DraftRules = {
  readonly hazardsOf: (step: Pick<StepSpec, 'kind' | 'zone' | 'sheet'>) => readonly string[]
  /** Floors one stands on to work on a zone. */
  readonly floorsUnder: (zone: string) => readonly string[]
}

/** A draft drops needs on steps that are not there: a zone without a wash has nothing to wait for. */
export function createDraft({ hazardsOf, floorsUnder }: DraftRules): Draft {
  const steps = new Map<string, WorkStep>()
  const add = (spec: StepSpec): string => {
    const standsOn = spec.zone === undefined ? [] : floorsUnder(spec.zone)
    steps.set(spec.id, complete(spec, { known: steps, hazards: hazardsOf(spec), standsOn }))
    return spec.id
  }
  return { add, has: (id) => steps.has(id), all: () => [...steps.values()] }
}

type Around = {
  readonly known: ReadonlyMap<string, WorkStep>
  readonly hazards: readonly string[]
  readonly standsOn: readonly string[]
}

function complete(spec: StepSpec, { known, hazards, standsOn }: Around): WorkStep {
  const { personHours, crew, needs, hoursKey, paces, ...rest } = spec
  return {
    inOneGo: false,
    setUpMinutes: 0,
    cleanUpMinutes: 0,
    air: 'boat',
    dust: 'neither',
    barred: [],
    ...rest,
    hazards,
    standsOn,
    hours: personHours,
    paces: paces ?? evenPaces(personHours, crew ?? { least: 1, most: 1 }),
    needs: needs.flatMap((need) => asNeed(need, known)),
    ...(hoursKey === undefined ? {} : { hoursKey }),
  }
}

/** Work that any number of hands shares evenly. */
export function evenPaces(
  personHours: number,
  crew: { readonly least: number; readonly most: number },
): readonly Pace[] {
  const personMinutes = Math.max(1, minutesOf(personHours))
  return Array.from({ length: crew.most - crew.least + 1 }, (_, index) => ({
    crew: crew.least + index,
    personMinutes,
  }))
}

function asNeed(need: Need | string | undefined, known: ReadonlyMap<string, WorkStep>): readonly Need[] {
  const full = typeof need === 'string' ? { step: need, wait: { kind: 'none' as const } } : need
  return full && known.has(full.step) ? [full] : []
}
