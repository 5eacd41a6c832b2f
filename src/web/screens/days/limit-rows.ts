/** The limits of a bar as rows: the worst of its hours beside what its product needs, and its place in the window. */
import type { CoatWindow } from '#plan'
import { labelOf } from '#words'
import type { JobView } from '../../job/job-view.ts'
import type { ShownPlan } from '../../worker/messages.ts'
import { type AirThen, airThen } from '../air-now.ts'
import { stepOf } from '../today/today-state.ts'
import type { Bar } from './zone-days.ts'

export type LimitRow = {
  readonly id: string
  readonly limit: string
  readonly had: string
  readonly needed: string
  readonly ok: boolean
}

export type LimitRowsInput = {
  readonly view: Pick<JobView, 'words' | 'timeZone'>
  readonly plan: ShownPlan
  readonly windows: readonly CoatWindow[]
  readonly bar: Bar
}

export function limitRows(input: LimitRowsInput): readonly LimitRow[] {
  return [...airRows(input), ...windowRows(input)]
}

function airRows({ view: { words }, plan, bar }: LimitRowsInput): readonly LimitRow[] {
  const step = bar.kind === 'key' ? undefined : stepOf(plan, bar.step)
  const sheet = plan.buildUps.sheets.find(({ id }) => id === step?.sheet)
  const hours = step?.hoursKey === undefined ? [] : hoursOf(plan, step.air, bar)
  if (!sheet || hours.length === 0) return []
  const of = (key: keyof AirThen): readonly number[] => hours.map((hour) => hour[key])
  const [coldest, warmest] = [Math.min(...of('airC')), Math.max(...of('airC'))]
  const dampest = Math.max(...of('humidityShare'))
  const margin = Math.min(...of('marginK'))
  const [leastC, mostC] = [sheet.airLeastC.value, sheet.airMostC.value]
  return [
    {
      id: 'air',
      limit: labelOf('daysScreen.airLimit'),
      had: words.sentence('daysscreen.between', { leastC: coldest, mostC: warmest }),
      needed: words.sentence('daysscreen.between', { leastC, mostC }),
      ok: coldest >= leastC && warmest <= mostC,
    },
    {
      id: 'humidity',
      limit: labelOf('daysScreen.humidityLimit'),
      had: words.figure('humidityShare', dampest),
      needed: words.sentence('daysscreen.atMost', { mostShare: sheet.humidityMost.value }),
      ok: dampest <= sheet.humidityMost.value,
    },
    {
      id: 'dew',
      limit: labelOf('daysScreen.dewLimit'),
      had: words.figure('marginK', margin),
      needed: words.sentence('daysscreen.atLeast', { leastK: sheet.dewMarginK.value }),
      ok: margin >= sheet.dewMarginK.value,
    },
  ]
}

const hoursOf = (plan: ShownPlan, place: string, { fromMinute, toMinute }: Bar): readonly AirThen[] => {
  const found: AirThen[] = []
  for (let minute = fromMinute; minute < toMinute; minute += 60) {
    const air = airThen(plan, place, minute)
    if (air) found.push(air)
  }
  return found
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
        ok: bar.fromMinute >= openMinute,
      }
      if (shutMinute === undefined) return [open]
      const shut: LimitRow = {
        id: `shut ${after}`,
        limit: labelOf('daysScreen.window'),
        had,
        needed: words.sentence('daysscreen.until', { untilAtMs: shutMinute * 60_000, timeZone }),
        ok: bar.fromMinute <= shutMinute,
      }
      return [open, shut]
    })
}
