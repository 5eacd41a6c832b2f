/** Paintable hours: for each product and place the runs of go hours, and the limits that shut the rest. */
import {
  type BehindSpread,
  describeMadeHour,
  heatCaution,
  hourMaker,
  likeDaysOf,
  limitNote,
  type MadeHour,
  originOf,
  type Plan,
  type PlanInput,
  type ZoneHours,
} from '#plan'
import type { Words } from '#words'
import { section, table, wrap } from './table.ts'

/** What the air and the skin where the boat stands are taken from: assumed, or fitted from a logger. */
const shelterCodes = /^climate\./

const shelterLines = (plan: Plan, words: Words): readonly string[] =>
  section(
    words.label('heading.shelter'),
    plan.conditions.notes
      .filter(({ code }) => shelterCodes.test(code))
      .flatMap(({ code, severity, data }) => {
        const signal = severity === 'danger' || severity === 'notice'
        const said = words.sentence(code, data)
        return wrap(signal ? `${words.label(`severity.${severity}`)}: ${said}` : said, '  ')
      }),
  )

export function hoursLines(plan: Plan, words: Words, made: WouldMake): readonly string[] {
  return [
    ...horizonLines(plan, words),
    ...zoneLines(plan, words, made),
    ...cautionLines(made, words),
    ...shelterLines(plan, words),
  ]
}

/** What would make an hour, by the key of the hours that have none. */
export type WouldMake = ReadonlyMap<string, MadeHour>

const MINUTES_AHEAD = 7 * 24 * 60

/** Of the products and places that have no good hour in the week from now. */
export function wouldMake(plan: Plan, input: PlanInput): WouldMake {
  const { firstMinute, zones } = plan.conditions
  const fromMinute = Math.max(firstMinute, Math.floor(input.nowMs / 60_000))
  const within = { fromMinute, toMinute: fromMinute + MINUTES_AHEAD }
  const make = hourMaker(input, plan)
  return new Map(
    zones.flatMap((zone) => {
      const week = zone.verdicts.slice(
        Math.ceil((within.fromMinute - zone.firstMinute) / 60),
        Math.floor((within.toMinute - zone.firstMinute) / 60),
      )
      const made = week.length === 0 || week.includes('go') ? undefined : make({ key: zone.key, ...within })
      return made ? [[zone.key, made] as const] : []
    }),
  )
}

/** Where the forecast ends, before anything is counted in hours that it does not reach. */
function horizonLines({ conditions, days }: Plan, words: Words): readonly string[] {
  const { horizon, firstMinute } = conditions
  if (!horizon || horizon.forecastUntilMinute <= firstMinute) return []
  return section(words.label('heading.horizon'), [
    words.sentence('hours.horizon', {
      untilAtMs: horizon.forecastUntilMinute * 60_000,
      fromAtMs: horizon.typicalFromMinute * 60_000,
      timeZone: days.timeZone,
    }),
  ])
}

function zoneLines(plan: Plan, words: Words, made: WouldMake): readonly string[] {
  return plan.conditions.zones.flatMap((zone) => {
    const sheet = plan.buildUps.sheets.find((one) => one.id === zone.sheet)
    const runs = runsOfGo(zone)
    return section(`${sheet?.name ?? zone.sheet}, ${words.label(`place.${zone.place}`)}`, [
      words.sentence('hours.summary', {
        hours: countOf(zone, 'go'),
        ofHours: zone.verdicts.length,
        ...dryingOf(zone),
      }),
      ...table(
        runs.map((run) => [
          words.moment(run.startMinute * 60_000, plan.days.timeZone),
          words.figure('hours', run.hours),
          ...likeCell(zone, run, words),
        ]),
        ['left', 'right', 'left'],
      ),
      ...limitLines(zone, words),
      ...madeLines(plan, made.get(zone.key), words),
    ])
  })
}

/** Said of the week from now. */
const madeLines = ({ days }: Plan, made: MadeHour | undefined, words: Words): readonly string[] =>
  made
    ? [
        words.label('hours.noneThisWeek'),
        ...describeMadeHour(made, days.timeZone).flatMap(({ code, data }) =>
          wrap(words.sentence(code, data), '  '),
        ),
      ]
    : []

/** Once, however many products heat would help. */
const cautionLines = (made: WouldMake, words: Words): readonly string[] =>
  [...made.values()].some(({ heat }) => heat)
    ? section(words.label('heading.heat'), wrap(words.sentence(heatCaution.code, heatCaution.data), '  '))
    : []

/** Of a run behind the horizon, its least sure and its surest hour. */
function likeCell(zone: ZoneHours, { startMinute, hours }: Run, words: Words): readonly string[] {
  if (!zone.goOnDays) return []
  const like = likeDaysOf(zone, { fromMinute: startMinute, toMinute: startMinute + hours * 60 })
  return [like ? words.sentence('hours.likeDays', { least: like.least, most: like.most, of: like.of }) : '']
}

/** Shortest and longest time that dew and rain must stay off, over the good hours. */
function dryingOf({ verdicts, hoursAfter }: ZoneHours): {
  readonly leastHours: number
  readonly mostHours: number
} {
  const good = verdicts.flatMap((verdict, hour) =>
    verdict === 'go' ? [hoursAfter[hour] ?? hoursAfter[0] ?? 0] : [],
  )
  return { leastHours: good.length > 0 ? Math.min(...good) : 0, mostHours: Math.max(0, ...good) }
}

const countOf = (zone: ZoneHours, verdict: string): number =>
  zone.verdicts.filter((one) => one === verdict).length

type Run = { readonly startMinute: number; readonly hours: number }

/** Runs of go hours of at least this length are worth a line. */
const LEAST_RUN_HOURS = 3

export function runsOfGo(zone: ZoneHours): readonly Run[] {
  const runs: Run[] = []
  let from = 0
  for (let hour = 0; hour <= zone.verdicts.length; hour++) {
    if (zone.verdicts[hour] === 'go') continue
    if (hour - from >= LEAST_RUN_HOURS)
      runs.push({ startMinute: zone.firstMinute + from * 60, hours: hour - from })
    from = hour + 1
  }
  return runs
}

/** How many hours each limit shuts. */
function limitLines(zone: ZoneHours, words: Words): readonly string[] {
  const counts = new Map<string, number>()
  for (const failing of zone.failing) {
    for (const one of failing) counts.set(one.limit, (counts.get(one.limit) ?? 0) + 1)
  }
  const rows = [...counts]
    .sort((a, b) => b[1] - a[1])
    .map(([limit, hours]) => [words.label(`limit.${limit}`), words.figure('hours', hours)])
  return table(rows, ['left', 'right'])
}

/** What is to be said of the hours, and of the typical year in them. */
export const hoursNotes = ({ conditions, notes }: Plan) => [
  ...conditions.notes,
  ...notes.filter(
    ({ code }) => code.startsWith('conditions.') && !conditions.notes.some((one) => one.code === code),
  ),
]

export const hoursJson = (plan: Plan, behind: BehindSpread | undefined, made: WouldMake) => ({
  ...(behind ? horizonJson(plan, behind) : {}),
  firstAtMs: plan.conditions.firstMinute * 60_000,
  air: plan.conditions.air.map(({ firstMinute, ...air }) => ({ ...air, firstAtMs: firstMinute * 60_000 })),
  places: plan.conditions.zones.map((zone) => ({
    place: zone.place,
    sheet: zone.sheet,
    hoursAfter: zone.hoursAfter,
    ...(zone.warmestC ? { warmestC: zone.warmestC } : {}),
    goHours: countOf(zone, 'go'),
    verdicts: zone.verdicts,
    ...(zone.goOnDays ? { goOnDays: zone.goOnDays } : {}),
    shut: shutHours(zone),
    ...madeJson(made.get(zone.key)),
    runs: runsOfGo(zone).map((run) => ({ startAtMs: run.startMinute * 60_000, hours: run.hours })),
  })),
})

const madeJson = (made: MadeHour | undefined) => {
  if (!made) return {}
  const { under, heat, grade } = made
  const at = ({ minute }: { readonly minute: number }) => ({ startAtMs: minute * 60_000 })
  return {
    wouldMake: {
      under: under.map(({ shelter, ...rest }) => ({ shelter, ...at(rest) })),
      ...(heat ? { heat: { ...at(heat), riseK: heat.riseK, ...(heat.tent ?? {}) } } : {}),
      ...(grade
        ? { grade: { kind: grade.kind, neededC: grade.neededC, hadC: grade.hadC, ...at(grade) } }
        : {}),
    },
  }
}

/** Where each hour is from, and how far apart the like days lie. */
function horizonJson({ conditions }: Plan, behind: BehindSpread) {
  const { firstMinute: spreadMinute, forecastUntilMinute, typicalFromMinute, source, ...spread } = behind
  const { firstMinute, lastMinute } = conditions
  return {
    forecastUntilAtMs: forecastUntilMinute * 60_000,
    typicalFromAtMs: typicalFromMinute * 60_000,
    typicalSource: source,
    origins: Array.from({ length: Math.round((lastMinute - firstMinute) / 60) }, (_, hour) =>
      originOf(conditions.horizon, firstMinute + hour * 60),
    ),
    spread: { firstAtMs: spreadMinute * 60_000, ...spread },
  }
}
/** Hours in which limits fail, each limit with what it needs and what there is, the unit in the key. */
const shutHours = ({ firstMinute, failing }: ZoneHours) =>
  failing.flatMap((limits, hour) =>
    limits.length === 0
      ? []
      : [
          {
            startAtMs: (firstMinute + hour * 60) * 60_000,
            limits: limits.map((one) => ({ limit: one.limit, ...limitNote(one).data })),
          },
        ],
  )
