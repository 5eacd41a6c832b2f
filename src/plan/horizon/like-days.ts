/**
 * How often an hour behind the horizon is good: the typical year is judged by itself, whole, and each hour is told on how
 * many of the days like it, ten to each side, the same hour is a go.
 */
import {
  countOfLikeDays,
  type HourlySeries,
  hourMs,
  hourOfYear,
  hoursOfYear,
  laidFrom,
  likeDayCount,
} from '#core/climate'
import type { Runner, Stage } from '../remember.ts'
import type { Conditions, Horizon, ZoneHours } from '../types.ts'

/** Before the first hour, so that shed, skin and wet are as they are in January and not as at a start; and after the last, longer than a coat dries, h. */
const marginHours = { before: 48, after: 72 } as const

/** A typical year as a ring that was cut, with its own hours at both ends once more. */
export const yearRound: Stage<{ readonly year: HourlySeries }, HourlySeries> = {
  name: 'like days year',
  run: ({ year }) =>
    laidFrom(year, {
      startMs: year.startMs - marginHours.before * hourMs,
      hours: marginHours.before + hoursOfYear + marginHours.after,
    }),
  fresh: true,
}

/** A column of `yearRound`, or of what was worked from it, as the hours of the typical year. */
export const ofYear = <T>(column: readonly T[]): readonly T[] =>
  column.slice(marginHours.before, marginHours.before + hoursOfYear)

/** The same stages over other weather, remembered beside those of the plan. */
export const besides =
  (run: Runner): Runner =>
  (stage, inputs) =>
    run({ ...stage, name: `like days ${stage.name}` }, inputs)

export type BehindHorizon = {
  readonly conditions: Conditions
  /** The same questions over `yearRound`. */
  readonly likeYear: Conditions
  readonly year: HourlySeries
  readonly horizon: Horizon
}

/** Hours with the count of like days; the same hours where nothing is counted. */
export function withLikeDays(run: Runner, of: BehindHorizon): Conditions {
  const { conditions, likeYear, year, horizon } = of
  const zones = conditions.zones.map((hours) => {
    const like = likeYear.zones.find(({ key }) => key === hours.key)
    if (!like) return hours
    const counts = run(counted(hours.key), { like })
    const { forecastUntilMinute } = horizon
    return run(likeHours(hours.key), { hours, counts, yearStartMs: year.startMs, forecastUntilMinute })
  })
  const byKey = zones.map((zone) => [`zone ${zone.key}`, zone] as const)
  return run(behind, { conditions, horizon, ...Object.fromEntries(byKey) })
}

const counted = (key: string): Stage<{ readonly like: ZoneHours }, Uint8Array> => ({
  name: `like days count ${key}`,
  run: ({ like }) => {
    const verdicts = ofYear(like.verdicts)
    return countOfLikeDays((hour) => verdicts[hour] === 'go')
  },
  fresh: true,
})

type LikeInput = {
  readonly hours: ZoneHours
  readonly counts: Uint8Array
  readonly yearStartMs: number
  readonly forecastUntilMinute: number
}

const likeHours = (key: string): Stage<LikeInput, ZoneHours> => ({
  name: `like days hours ${key}`,
  run: ({ hours, counts, yearStartMs, forecastUntilMinute }) => {
    const hourOf = hourOfYear(yearStartMs)
    const goOnDays = hours.verdicts.map((_, hour) => {
      const minute = hours.firstMinute + hour * 60
      return minute < forecastUntilMinute ? Number.NaN : counts[hourOf(minute * 60_000)]!
    })
    return { ...hours, goOnDays }
  },
  fresh: true,
})

type Behind = { readonly conditions: Conditions; readonly horizon: Horizon } & Readonly<
  Record<string, unknown>
>

const behind: Stage<Behind, Conditions> = {
  name: 'conditions behind horizon',
  run: ({ conditions, horizon, ...zones }) => ({
    ...conditions,
    zones: Object.values(zones) as readonly ZoneHours[],
    horizon,
  }),
  fresh: true,
}

export type LikeDays = {
  /** Days on which its least sure and its surest hour would be a go, of so many. */
  readonly least: number
  readonly most: number
  readonly of: number
}

type JudgedHours = Pick<ZoneHours, 'firstMinute' | 'goOnDays' | 'verdicts'>

/**
 * Of the hours from one minute to another, each by itself: which days are good is not the same from hour to hour.
 * @returns undefined where they lie before the horizon, or nobody judged.
 */
export function likeDaysOf(
  { firstMinute, goOnDays, verdicts }: JudgedHours,
  { fromMinute, toMinute }: { readonly fromMinute: number; readonly toMinute: number },
): LikeDays | undefined {
  if (goOnDays === undefined) return undefined
  const first = Math.max(0, Math.floor((fromMinute - firstMinute) / 60))
  const end = Math.max(first + 1, Math.ceil((toMinute - firstMinute) / 60))
  const judged = goOnDays
    .slice(first, end)
    .map((days, index) => ({ days, verdict: verdicts[first + index] }))
    .filter(({ days }) => !Number.isNaN(days))
  if (judged.length === 0) return undefined
  // Setting up and cleaning may lie in hours that take no coat.
  const good = judged.filter(({ verdict }) => verdict !== 'no')
  const known = (good.length === 0 ? judged : good).map(({ days }) => days)
  return { least: Math.min(...known), most: Math.max(...known), of: likeDayCount }
}

/** Of all the pieces of a step, by the hours that are asked of it. */
export function likeDaysOfWork(of: {
  readonly zones: readonly (Pick<ZoneHours, 'key'> & JudgedHours)[]
  readonly hoursKey: string | undefined
  readonly pieces: readonly { readonly startMinute: number; readonly endMinute: number }[]
}): LikeDays | undefined {
  const hours = of.zones.find(({ key }) => key === of.hoursKey)
  const found = of.pieces.flatMap(({ startMinute, endMinute }) => {
    const like = hours && likeDaysOf(hours, { fromMinute: startMinute, toMinute: endMinute })
    return like ? [like] : []
  })
  if (found.length === 0) return undefined
  return {
    least: Math.min(...found.map(({ least }) => least)),
    most: Math.max(...found.map(({ most }) => most)),
    of: likeDayCount,
  }
}
