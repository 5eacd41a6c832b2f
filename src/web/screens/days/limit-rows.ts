/** The limits of a bar or an hour as rows: the worst of its hours beside what its product needs, and its place in the window. */
import { type CoatWindow, type FigureRef, skinLimits } from '#plan'
import { labelOf } from '#words'
import type { JobView } from '../../job/job-view.ts'
import type { ShownHours, ShownPlan } from '../../worker/messages.ts'
import { type AirThen, airThen } from '../air-now.ts'
import type { Minutes } from '../hour-spans.ts'
import { stepOf } from '../today/today-state.ts'
import { weatherHours } from './weather-hours.ts'
import type { Bar } from './zone-days.ts'

export type LimitRow = {
  readonly id: string
  readonly limit: string
  readonly had: string
  /** The figure that it had, where it can be told how it came about. */
  readonly of?: FigureRef
  readonly needed: string
  /** By how much it fails; empty where it does not, or nobody knows. */
  readonly by?: string
  readonly so: 'ok' | 'not' | 'risky' | 'notKnown'
}

export type LimitRowsInput = {
  readonly view: Pick<JobView, 'words' | 'timeZone'>
  readonly plan: ShownPlan
  readonly windows: readonly CoatWindow[]
  readonly bar: Bar
}

export function limitRows(input: LimitRowsInput): readonly LimitRow[] {
  const { view, plan, bar } = input
  const step = bar.kind === 'key' ? undefined : stepOf(plan, bar.step)
  const hours = plan.conditions.zones.find(({ key }) => key === step?.hoursKey)
  return [...(hours === undefined ? [] : hourRows({ view, plan, hours, of: bar })), ...windowRows(input)]
}

/** Minutes for which dew and rain must stay off after a coat that ends at a minute. */
export function afterMinutes({ hoursAfter, firstMinute }: ShownHours, minute: number): number {
  const hour = Math.floor((minute - firstMinute) / 60)
  return (hoursAfter[hour] ?? hoursAfter.at(-1) ?? 0) * 60
}

export type HourRowsInput = Pick<LimitRowsInput, 'view' | 'plan'> & {
  readonly hours: ShownHours
  readonly of: Minutes
}

/** What the product asks of these hours, and of those until dew and rain do no harm. */
export function hourRows({ view, plan, hours, of }: HourRowsInput): readonly LimitRow[] {
  const { words, timeZone } = view
  const sheet = plan.buildUps.sheets.find(({ id }) => id === hours.sheet)
  const [during, whole] = [airOver(plan, hours.place, of), airOver(plan, hours.place, untilDry(hours, of))]
  if (!sheet || during.known.length === 0) return []
  const temperatures = during.known.map(({ airC }) => airC)
  const [coldest, warmest] = [Math.min(...temperatures), Math.max(...temperatures)]
  const dampest = during.known.reduce((worst, air) => (air.humidityShare > worst.humidityShare ? air : worst))
  const nearest = whole.known.reduce((worst, air) => (air.marginK < worst.marginK ? air : worst))
  const { place } = hours
  const [leastC, mostC] = [sheet.airLeastC.value, sheet.airMostC.value]
  const so = (good: boolean, all: boolean): LimitRow['so'] => (good ? (all ? 'ok' : 'notKnown') : 'not')
  return [
    {
      id: 'air',
      limit: labelOf('daysScreen.airLimit'),
      had:
        coldest === warmest
          ? words.figure('airC', coldest)
          : words.sentence('daysscreen.between', { leastC: coldest, mostC: warmest }),
      needed: words.sentence('daysscreen.between', { leastC, mostC }),
      ...byOf(words, 'missedK', Math.max(leastC - coldest, warmest - mostC)),
      so: so(coldest >= leastC && warmest <= mostC, during.all),
    },
    skinRow(words, { sheet, hours }, during),
    {
      id: 'humidity',
      limit: labelOf('daysScreen.humidityLimit'),
      had: words.figure('humidityShare', dampest.humidityShare),
      of: { kind: 'air', place, minute: dampest.minute, of: 'humidity' },
      needed: words.sentence('daysscreen.atMost', { mostShare: sheet.humidityMost.value }),
      ...byOf(words, 'missedShare', dampest.humidityShare - sheet.humidityMost.value),
      so: so(dampest.humidityShare <= sheet.humidityMost.value, during.all),
    },
    {
      id: 'dew',
      limit:
        nearest.minute < of.toMinute
          ? labelOf('daysScreen.dewLimit')
          : words.sentence('daysscreen.dewAt', { atClock: words.time(nearest.minute * 60_000, timeZone) }),
      had: words.figure('marginK', nearest.marginK),
      of: { kind: 'air', place, minute: nearest.minute, of: 'margin' },
      needed: words.sentence('daysscreen.atLeast', { leastK: sheet.dewMarginK.value }),
      ...byOf(words, 'missedK', sheet.dewMarginK.value - nearest.marginK),
      so: so(nearest.marginK >= sheet.dewMarginK.value, whole.all),
    },
    ...rainRow({ view, plan, hours, of }),
  ]
}

/** The surface itself: cold by its coldest hour and side, hot by its warmest, in the colour of the product. */
function skinRow(
  words: JobView['words'],
  { sheet, hours }: { readonly sheet: ShownPlan['buildUps']['sheets'][number]; readonly hours: ShownHours },
  { known, all }: ReturnType<typeof airOver>,
): LimitRow {
  const coldest = Math.min(...known.map(({ surfaceC }) => surfaceC))
  const inColour = (minute: number) => hours.warmestC?.[Math.floor((minute - hours.firstMinute) / 60)]
  const warmest = Math.max(...known.map(({ minute, warmestC }) => inColour(minute) ?? warmestC))
  const { skinLeastC, skinCoolC, skinWarmC, skinMostC } = skinLimits({
    airLeastC: sheet.airLeastC.value,
    airMostC: sheet.airMostC.value,
    skinLeastC: sheet.skinLeastC?.value,
    skinMostC: sheet.skinMostC?.value,
  })
  const lost = coldest < skinLeastC || warmest > skinMostC
  return {
    id: 'skin',
    limit: labelOf(hours.warmestC ? 'daysScreen.skinInColour' : 'daysScreen.skinLimit'),
    had:
      coldest === warmest
        ? words.figure('surfaceC', coldest)
        : words.sentence('daysscreen.between', { leastC: coldest, mostC: warmest }),
    needed: words.sentence('daysscreen.between', { leastC: skinCoolC, mostC: skinWarmC }),
    ...byOf(words, 'missedK', Math.max(skinCoolC - coldest, warmest - skinWarmC)),
    so: lost ? 'not' : coldest < skinCoolC || warmest > skinWarmC ? 'risky' : all ? 'ok' : 'notKnown',
  }
}

const byOf = (words: JobView['words'], key: string, missed: number): Pick<LimitRow, 'by'> =>
  missed > 1e-9 ? { by: words.figure(key, missed) } : {}

const untilDry = (hours: ShownHours, { fromMinute, toMinute }: Minutes): Minutes => ({
  fromMinute,
  toMinute: Math.max(toMinute, fromMinute + afterMinutes(hours, fromMinute)),
})

function airOver(plan: ShownPlan, place: string, { fromMinute, toMinute }: Minutes) {
  const found: ((AirThen & { readonly minute: number }) | undefined)[] = []
  for (let minute = fromMinute; minute < toMinute; minute += 60) {
    const air = airThen(plan, place, minute)
    found.push(air && { ...air, minute })
  }
  const known = found.filter((air) => air !== undefined)
  return { known, all: known.length === found.length }
}

/** Only where rain reaches the hull; the first rain until it does no harm any more. */
function rainRow({ view: { words, timeZone }, plan, hours, of }: HourRowsInput): readonly LimitRow[] {
  const shelter = plan.conditions.air.find(({ key }) => key === hours.place)?.shelter
  if (shelter !== 'open') return []
  const until = untilDry(hours, of)
  const begin = Math.floor(until.fromMinute / 60) * 60
  const over = weatherHours(plan, { fromMinute: begin, toMinute: until.toMinute })
  const order = ['fell', 'unknown', 'chance', 'dry'] as const
  const worst = order
    .map((kind) => over.find(({ rain }) => rain.kind === kind))
    .find((hour) => hour !== undefined)
  if (worst === undefined) return []
  const { rain, minute } = worst
  return [
    {
      id: 'rain',
      limit: labelOf('daysScreen.rain'),
      had: words.sentence('daysscreen.rainHad', {
        kind: rain.kind,
        atMs: minute * 60_000,
        chanceShare: rain.kind === 'chance' ? rain.share : 0,
        timeZone,
      }),
      needed: words.sentence('daysscreen.rainNeeded', { untilAtMs: until.toMinute * 60_000, timeZone }),
      so: ({ fell: 'not', unknown: 'notKnown', chance: 'risky', dry: 'ok' } as const)[rain.kind],
    },
  ]
}

function windowRows({ view: { words, timeZone }, windows, bar }: LimitRowsInput): readonly LimitRow[] {
  if (bar.kind !== 'coat') return []
  return windows
    .filter(({ step }) => step === bar.step)
    .flatMap(({ openMinute, shutMinute, after }): readonly LimitRow[] => {
      const had = words.sentence('daysscreen.begins', { fromAtMs: bar.fromMinute * 60_000, timeZone })
      const open: LimitRow = {
        id: `open ${after}`,
        limit: labelOf('daysScreen.waits'),
        had,
        needed: words.sentence('daysscreen.from', { fromAtMs: openMinute * 60_000, timeZone }),
        so: bar.fromMinute >= openMinute ? 'ok' : 'not',
      }
      if (shutMinute === undefined) return [open]
      const shut: LimitRow = {
        id: `shut ${after}`,
        limit: labelOf('daysScreen.window'),
        had,
        needed: words.sentence('daysscreen.until', { untilAtMs: shutMinute * 60_000, timeZone }),
        so: bar.fromMinute <= shutMinute ? 'ok' : 'not',
      }
      return [open, shut]
    })
}
