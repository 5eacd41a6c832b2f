/** What would make an hour for a coat where none comes: something over the boat, heat, a grade with other limits. */
import { heatToHold, type Limit, type Room, riseNeeded, type Shelter } from '#core/climate'
import { type PlanInput, plan } from './plan.ts'
import type { Conditions, Plan, ResolvedSheet, ZoneHours } from './types.ts'

export type MadeHour = {
  /** The first hour that would do under each of these. */
  readonly under: readonly { readonly shelter: 'cover' | 'shed'; readonly minute: number }[]
  /** Air warmed by the least that does, from this hour on for as long as the film needs. */
  readonly heat?: {
    readonly minute: number
    readonly riseK: number
    /** Absent where nobody said how large the boat is. */
    readonly tent?: Room & { readonly powerKw: number }
  }
  /** The hour that misses one limit alone, by the least. */
  readonly grade?: {
    readonly kind: 'colder' | 'warmer'
    readonly minute: number
    readonly neededC: number
    readonly hadC: number
  }
}

export type Asked = { readonly key: string; readonly fromMinute: number; readonly toMinute: number }

/**
 * A tent of one film round the boat, a metre clear of her and 3 m high. 6 W/(m² K) through the film, air changed twice an
 * hour: assumed.
 */
const CLEAR_M = 1
const tentUsual = { heightM: 3, lossWm2K: 6, airChanges: 2 }

/**
 * Asked for and no part of the plan: the job is planned again for each shelter, once for all that is asked.
 * @param now the plan of that input. @returns undefined for hours that are not judged.
 */
export function hourMaker(input: PlanInput, now: Plan): (asked: Asked) => MadeHour | undefined {
  const others = new Map<string, Conditions>()
  const conditionsUnder = (shelter: 'cover' | 'shed'): Conditions => {
    const { work, ...rest } = input
    const known = others.get(shelter)
    const made = known ?? plan({ ...rest, work: { ...work, place: { ...work.place, shelter } } }).conditions
    others.set(shelter, made)
    return made
  }
  return (asked) => {
    const hours = now.conditions.zones.find(({ key }) => key === asked.key)
    const sheet = now.buildUps.sheets.find(({ id }) => id === hours?.sheet)
    if (!hours || !sheet) return undefined
    const within = hoursWithin(hours, asked)
    const { shelter } = input.work.place
    return {
      under: hours.place === 'indoors' ? [] : underOthers({ shelter, conditionsUnder }, hours, asked),
      ...heatFor(input, now, { hours, sheet, within }),
      ...gradeFor(hours, within),
    }
  }
}

/** Places of hours in their list. */
function hoursWithin(
  { firstMinute, verdicts }: ZoneHours,
  { fromMinute, toMinute }: Asked,
): readonly number[] {
  const from = Math.max(0, Math.ceil((fromMinute - firstMinute) / 60))
  const to = Math.min(verdicts.length, Math.floor((toMinute - firstMinute) / 60))
  return Array.from({ length: Math.max(0, to - from) }, (_, at) => from + at)
}

const minuteOf = ({ firstMinute }: ZoneHours, hour: number): number => firstMinute + hour * 60

const better = { open: ['cover', 'shed'], 'open-sided shed': ['shed'], cover: ['shed'] } as const

type Others = {
  readonly shelter: Shelter
  readonly conditionsUnder: (shelter: 'cover' | 'shed') => Conditions
}

/** Only what stands over her better than now is tried; a product is judged where the whole boat is. */
function underOthers(
  { shelter, conditionsUnder }: Others,
  hours: ZoneHours,
  asked: Asked,
): MadeHour['under'] {
  if (!(shelter in better)) return []
  return better[shelter as keyof typeof better].flatMap((other) => {
    const there = conditionsUnder(other).zones.find(
      ({ sheet, place }) => sheet === hours.sheet && place !== 'indoors',
    )
    const hour = there && hoursWithin(there, asked).find((at) => there.verdicts[at] === 'go')
    return hour === undefined ? [] : [{ shelter: other, minute: minuteOf(there!, hour) }]
  })
}

type In = {
  readonly hours: ZoneHours
  readonly sheet: ResolvedSheet
  readonly within: readonly number[]
}

/** Heat and a cloth do nothing against the dark, nor against air that is too warm. */
const beyondHeat: ReadonlySet<Limit> = new Set(['dark', 'airMost', 'skinMost', 'hotSun'])
/** Of hours that ask for about as much, the first. */
const ALIKE_K = 0.5

function heatFor(
  { work }: PlanInput,
  { conditions }: Plan,
  { hours, sheet, within }: In,
): Pick<MadeHour, 'heat'> {
  const air = conditions.air.find(({ key }) => key === hours.place)
  if (!air) return {}
  const airAt = (hour: number) => ({
    airC: air.airC[hour] ?? Number.NaN,
    humidityShare: air.humidityShare[hour] ?? Number.NaN,
    dewMarginK: sheet.dewMarginK.value,
  })
  const rises = within.flatMap((hour) => {
    if (hours.failing[hour]?.some(({ limit }) => beyondHeat.has(limit))) return []
    const after = hours.hoursAfter[hour] ?? hours.hoursAfter.at(-1) ?? 0
    const now = riseNeeded({
      ...airAt(hour),
      airLeastC: sheet.airLeastC.value,
      humidityMost: sheet.humidityMost.value,
    })
    const later = Array.from({ length: after }, (_, at) => riseNeeded(airAt(hour + 1 + at)))
    const riseK = Math.max(now, ...later)
    const tooWarm = airAt(hour).airC + riseK > sheet.airMostC.value
    return Number.isNaN(riseK) || tooWarm ? [] : [{ hour, riseK }]
  })
  const least = Math.min(...rises.map(({ riseK }) => riseK))
  const first = rises.find(({ riseK }) => riseK <= least + ALIKE_K)
  // Without any rise it is the cloth that does it, and not the heat.
  if (!first || first.riseK === 0) return {}
  const { lengthOverall, beam } = work.boat
  const room = lengthOverall &&
    beam && {
      lengthM: lengthOverall.value + 2 * CLEAR_M,
      widthM: beam.value + 2 * CLEAR_M,
      ...tentUsual,
    }
  return {
    heat: {
      minute: minuteOf(hours, first.hour),
      riseK: first.riseK,
      ...(room ? { tent: { ...room, powerKw: heatToHold(room, first.riseK) / 1000 } } : {}),
    },
  }
}

const gradeOf: Partial<Readonly<Record<Limit, 'colder' | 'warmer'>>> = {
  airLeast: 'colder',
  skinLeast: 'colder',
  airMost: 'warmer',
  skinMost: 'warmer',
}

/** Hours lost by one kind of limit alone; risks do not lose an hour. */
function gradeFor(hours: ZoneHours, within: readonly number[]): Pick<MadeHour, 'grade'> {
  const near = within.flatMap((hour) => {
    const lost = (hours.failing[hour] ?? []).filter(({ effect }) => effect !== 'risky')
    const kinds = new Set(lost.map(({ limit }) => gradeOf[limit]))
    const [kind] = kinds
    const worst = lost.toSorted((a, b) => missOf(b) - missOf(a))[0]
    if (kinds.size !== 1 || kind === undefined || !worst || worst.had === null) return []
    return [{ kind, minute: minuteOf(hours, hour), neededC: worst.needed, hadC: worst.had }]
  })
  const [grade] = near.toSorted(
    (a, b) => Math.abs(a.neededC - a.hadC) - Math.abs(b.neededC - b.hadC) || a.minute - b.minute,
  )
  return grade ? { grade } : {}
}

const missOf = ({ needed, had }: { readonly needed: number; readonly had: number | null }): number =>
  had === null ? Number.POSITIVE_INFINITY : Math.abs(needed - had)
