/**
 * What went wrong, by the log, turned into work: a lost coat is sanded or wiped off and put on again, and whatever
 * had been done on top of it with it; a coat that stands with faults is sanded where they are before the next.
 */
import type { Note } from '#core/note'
import type { Interval, Need } from '#core/schedule'
import type { Log } from '#job'
import { happened, type Mishap } from './happened.ts'
import type { Rates } from './known.ts'
import { minutesOf } from './minutes.ts'
import type { Stage } from './remember.ts'
import { evenPaces, lostId, mendId } from './steps/draft.ts'
import { sandRate } from './steps/sand-rate.ts'
import { dryNeeds } from './steps/waits.ts'
import { hazardsOf } from './steps.ts'
import type { BuildUps, Hazards, Steps, WorkStep } from './types.ts'

export type MendedInput = {
  readonly steps: Steps
  readonly log: Log
  readonly buildUps: BuildUps
  readonly hazards: Hazards
  readonly rates: Rates
}

export type Mended = {
  /** The very same steps when nothing went wrong. */
  readonly steps: Steps
  readonly done: ReadonlyMap<string, Interval>
  /** Coats that were lost and how often: their paint is gone. */
  readonly lost: readonly { readonly zone: string; readonly layer: string; readonly times: number }[]
}

// Never compared with the last one: it holds a map, and its steps are the same object when they may be.
export const mended: Stage<MendedInput, Mended> = { name: 'mended', run: putRight, fresh: true }

function putRight(input: MendedInput): Mended {
  const { done, mishaps } = happened(input.log)
  const known = new Map(input.steps.steps.map((step) => [step.id, step]))
  const met = mishaps.filter((mishap) => known.has(mishap.step))
  if (met.length === 0) return { steps: input.steps, done, lost: [] }
  const kept = new Map(done)
  for (const mishap of met) {
    const step = known.get(mishap.step)!
    if (mishap.film === 'stands' || mishap.over) continue
    for (const id of laidOver(step, input.steps.steps)) {
      if ((kept.get(id)?.endMinute ?? Number.POSITIVE_INFINITY) <= mishap.endMinute) kept.delete(id)
    }
  }
  const mending = met.map((mishap) => mendingOf(input, { mishap, step: known.get(mishap.step)!, done: kept }))
  for (const { lost, mishap } of mending) {
    if (lost) kept.set(lost.id, { startMinute: mishap.startMinute, endMinute: mishap.endMinute })
  }
  return {
    steps: {
      steps: woven(input.steps.steps, mending),
      notes: [...input.steps.notes, ...mending.flatMap(notesOf)],
    },
    done: kept,
    lost: met.flatMap((mishap) => lostOf(known.get(mishap.step)!, mishap)),
  }
}

/** What waits for the step, directly or not, on the same zone: a later coat cannot stay when the one below goes. */
function laidOver(step: WorkStep, steps: readonly WorkStep[]): ReadonlySet<string> {
  const over = new Set<string>()
  for (const other of steps) {
    if (other.zone !== step.zone || step.zone === undefined) continue
    if (other.needs.some((need) => need.step === step.id || over.has(need.step))) over.add(other.id)
  }
  return over
}

type Mending = {
  readonly mishap: Mishap
  readonly step: WorkStep
  readonly lost?: WorkStep
  readonly mend?: WorkStep
}
type Broken = {
  readonly mishap: Mishap
  readonly step: WorkStep
  readonly done: ReadonlyMap<string, Interval>
}

/** Work to do, or done: what was put right without a word of the sanding in the log needs none any more. */
function mendingOf(input: MendedInput, { mishap, step, done }: Broken): Mending {
  const base = { mishap, step }
  if (!isFilm(step)) return base
  const unspoken = !done.has(mendId(step.id)) && isPast(input, { mishap, step, done })
  if (unspoken) return base
  const lies = mishap.film === 'stands' ? step.id : lostId(step.id)
  const mend = mendStep(input, { mishap, step, lies })
  if (mishap.film === 'stands') return { ...base, mend }
  const lost: WorkStep = { ...without(step), id: lies, kind: 'lost', needs: [], hours: 0, hazards: [] }
  return mishap.film === 'wiped off' ? { ...base, lost } : { ...base, lost, mend }
}

/** The coat was done again, or the next one put on it. */
function isPast({ steps }: MendedInput, { mishap, step, done }: Broken): boolean {
  if (mishap.film !== 'stands') return mishap.over
  const over = laidOver(step, steps.steps)
  return steps.steps.some(
    (one) => isFilm(one) && over.has(one.id) && (done.get(one.id)?.endMinute ?? 0) > mishap.atMinute,
  )
}

const isFilm = (step: WorkStep): boolean => ['coat', 'fill', 'fill-repair'].includes(step.kind)

/** A coat that is past needs no hours of its own to be judged by. */
function without(step: WorkStep): WorkStep {
  const { hoursKey: _hours, coat: _coat, coats: _coats, wet: _wet, ...rest } = step
  return { ...rest, dust: 'neither' }
}

type Lying = { readonly mishap: Mishap; readonly step: WorkStep; readonly lies: string }

function mendStep(input: MendedInput, { mishap, step, lies }: Lying): WorkStep {
  const grit = mishap.grit ?? gritFor(input, step)
  const rate = sandRate(input.rates, grit)
  const areaM2 = (step.areaM2 ?? 0) * mishap.sandedShare
  const hours = areaM2 * rate.value
  const own = { kind: 'mend', ...(step.zone === undefined ? {} : { zone: step.zone }) }
  return {
    id: mendId(step.id),
    ...own,
    phase: step.phase,
    ...(step.layer === undefined ? {} : { layer: step.layer }),
    ...(step.subject === undefined ? {} : { subject: step.subject }),
    grit,
    areaM2,
    hours,
    certainty: 'assumed',
    paces: evenPaces(hours, { least: 1, most: step.paces.at(-1)?.crew ?? 1 }),
    inOneGo: false,
    setUpMinutes: 0,
    cleanUpMinutes: 0,
    air: step.air,
    dust: 'makes',
    barred: step.barred,
    standsOn: step.standsOn,
    hazards: hazardsOf(own, input.hazards),
    needs: [
      ...dryNeeds(
        lies,
        input.buildUps.sheets.find((sheet) => sheet.id === step.sheet),
        'dryToSand',
      ),
      afterwards(lies, mishap),
    ],
  }
}

/** As between its coats, or before it; P320 when neither says, assumed. */
function gritFor({ buildUps }: MendedInput, { zone, layer }: WorkStep): string {
  const own = buildUps.layers.find((one) => one.zone === zone && one.layer === layer)
  const named = [own?.sandBetween, own?.sandBefore].find((grit) => /\d/.test(grit ?? ''))
  return named ?? 'P320'
}

const afterwards = (lies: string, { waitHours }: Mishap): Need => ({
  step: lies,
  wait: { kind: 'fixed', minutes: minutesOf(waitHours) },
})

/** The mending put in where it is waited for: before the coat that is put on again, or behind the one that stands. */
function woven(steps: readonly WorkStep[], mending: readonly Mending[]): readonly WorkStep[] {
  return steps.flatMap((step) => {
    const needing = mending.reduce((made, one) => waiting(made, one), step)
    const own = mending.find((one) => one.step.id === step.id)
    const extra = [own?.lost, own?.mend].flatMap((one) => (one ? [one] : []))
    return own?.mishap.film === 'stands' ? [needing, ...extra] : [...extra, needing]
  })
}

function waiting(step: WorkStep, { mishap, step: broken, lost, mend }: Mending): WorkStep {
  const needs = (more: readonly Need[], unsanded: boolean): WorkStep => ({
    ...step,
    needs: [...(unsanded ? step.needs : step.needs.map(sandedAnyway)), ...more],
  })
  const first = mend && { step: mend.id, wait: { kind: 'none' as const } }
  if (step.id === broken.id && lost) return needs([first ?? afterwards(lost.id, mishap)], first === undefined)
  const next = step.kind === 'snag' || step.needs.some((need) => need.step === broken.id)
  if (first && next && mishap.film === 'stands') return needs([first], mishap.sandedShare < 1)
  return step.kind === 'snag' && first ? needs([first], true) : step
}

/** No window shuts on a surface that is sanded in any case. */
const sandedAnyway = ({ window: _window, ...need }: Need): Need => need

const notesOf = ({ mishap, step, lost }: Mending): readonly Note[] =>
  lost && !mishap.over
    ? [
        {
          code: 'steps.coatAgain',
          severity: 'caution',
          data: { step: step.id, wiped: mishap.film === 'wiped off' },
        },
      ]
    : []

const lostOf = ({ zone, layer, kind }: WorkStep, { lost }: Mishap): Mended['lost'] =>
  zone === undefined || layer === undefined || lost === 0 || kind === 'fill-repair'
    ? []
    : [{ zone, layer, times: lost }]
