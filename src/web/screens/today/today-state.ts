/** What the sheet Today shows of one date: its rows, the step in hand, its hours, and the sentence over it. */
import { describeStep, type WorkStep } from '#plan'
import type { JobView } from '../../job/job-view.ts'
import { localDate } from '../../job/local-date.ts'
import { addDays, minuteAt } from '../../job/local-days.ts'
import { sayReading } from '../../job/say-reading.ts'
import type { ShownHours, ShownPlan } from '../../worker/messages.ts'
import { hourSpans, hoursOfZone, type Minutes, openStretch } from '../hour-spans.ts'
import { type DayRow, dayRows, lastTurns, personHours, rowInHand } from './day-rows.ts'

export type TodayState = {
  readonly date: string
  readonly isToday: boolean
  readonly nowMinute: number
  readonly title: string
  readonly say: string | undefined
  readonly rows: readonly DayRow[]
  readonly hand: DayRow | undefined
  readonly begun: ReadonlySet<string>
  /** Of the zone of the next coat, or of the step in hand. */
  readonly hours: ShownHours | undefined
  readonly tape: Minutes
  readonly place: string
  readonly airMinute: number
  readonly leastK: number | undefined
  readonly reading: { readonly atMs: number; readonly text: string } | undefined
}

export function todayState(view: JobView, plan: ShownPlan, date: string): TodayState {
  const { timeZone } = view
  const at = (minuteOfDay: number): number => minuteAt(date, minuteOfDay, timeZone)
  const [fromMinute, toMinute] = [at(0), minuteAt(addDays(date, 1), 0, timeZone)]
  const nowMinute = Math.floor(view.nowMs / 60_000)
  const isToday = nowMinute >= fromMinute && nowMinute < toMinute
  const turns = lastTurns(view.log)
  // A tick shows at once; the plan follows.
  const rows = dayRows({ plan, fromMinute, toMinute }).map((row) => {
    const turn = turns.get(row.step)
    return turn === undefined ? row : { ...row, done: turn === 'done' }
  })
  const begun = new Set([...turns].flatMap(([step, kind]) => (kind === 'started' ? [step] : [])))
  const hand = rowInHand(rows, begun, isToday ? nowMinute : fromMinute)
  const step = stepOf(plan, coatOf(plan, rows)?.step ?? hand?.step)
  const zone = step?.zone
  const tape = { fromMinute: at(6 * 60), toMinute: at(20 * 60) }
  const airMinute = isToday
    ? nowMinute
    : (coatOf(plan, rows)?.startMinute ?? hand?.startMinute ?? at(12 * 60))
  const hours = hoursFor(plan, step, tape.fromMinute)
  const shown = {
    ...{ date, isToday, nowMinute, rows, hand, begun, tape, airMinute, hours },
    place: hours?.place ?? step?.air ?? 'boat',
    leastK: plan.buildUps.sheets.find(({ id }) => id === step?.sheet)?.dewMarginK.value,
    reading: isToday ? lastReading(view, date) : undefined,
  }
  const title = titleOf(view, plan, { ...shown, zone, fromMinute, toMinute })
  const say = sayOf(view, plan, { ...shown, fromMinute, toMinute })
  return { ...shown, title, say: say === title ? undefined : say }
}

export const stepOf = (plan: ShownPlan, id: string | undefined): WorkStep | undefined =>
  id === undefined ? undefined : plan.steps.steps.find((step) => step.id === id.replace(/^key:/, ''))

/** The next coat of the day: its hours are the ones that matter. */
const coatOf = (plan: ShownPlan, rows: readonly DayRow[]): DayRow | undefined =>
  rows.find((row) => !row.done && isCoat(plan, row))

export const isCoat = (plan: ShownPlan, { step }: Pick<DayRow, 'step'>): boolean =>
  !step.startsWith('key:') && stepOf(plan, step)?.hoursKey !== undefined

function hoursFor(plan: ShownPlan, step: WorkStep | undefined, fromMinute: number): ShownHours | undefined {
  const own = plan.conditions.zones.find(({ key }) => key === step?.hoursKey)
  return own ?? (step?.zone === undefined ? undefined : hoursOfZone(plan, step.zone, fromMinute))
}

type Titled = Pick<TodayState, 'date' | 'isToday' | 'nowMinute' | 'rows' | 'hours' | 'tape'> & {
  readonly zone?: string | undefined
  readonly fromMinute: number
  readonly toMinute: number
}

function titleOf({ words, timeZone }: JobView, plan: ShownPlan, day: Titled): string {
  const { date, isToday, nowMinute, rows, hours, tape, zone } = day
  const clock = (ms: number): string => words.time(ms, timeZone)
  if (rows.length === 0) return words.sentence('todayscreen.none', { date })
  if (rows.every(({ done }) => done))
    return words.sentence('todayscreen.allDone', { hours: personHours(rows, plan, { plan, ...day }) })
  const name = [...plan.surfaces.zones, ...plan.marks.zones].find(({ id }) => id === zone)?.name
  if (coatOf(plan, rows) === undefined || hours === undefined || name === undefined)
    return workSentence({ words, timeZone }, plan, day)
  const from = isToday ? nowMinute : tape.fromMinute
  const open = openStretch(hourSpans(hours, tape), from)
  if (open === undefined) return words.sentence('todayscreen.takesNot', { zone: name })
  const untilClock = clock(open.toMs)
  return isToday && open.fromMs <= nowMinute * 60_000
    ? words.sentence('todayscreen.takesUntil', { zone: name, untilClock })
    : words.sentence('todayscreen.takesFrom', { zone: name, fromClock: clock(open.fromMs), untilClock })
}

function workSentence(
  { words, timeZone }: Pick<JobView, 'words' | 'timeZone'>,
  plan: ShownPlan,
  day: Titled,
) {
  const { rows } = day
  const clock = (minute: number): string => words.time(minute * 60_000, timeZone)
  return words.sentence('todayscreen.work', {
    hours: personHours(rows, plan, { plan, ...day }),
    people: new Set(rows.flatMap(({ people }) => people)).size,
    fromClock: clock(Math.min(...rows.map(({ startMinute }) => startMinute))),
    untilClock: clock(Math.max(...rows.map(({ endMinute }) => endMinute))),
  })
}

function sayOf(view: JobView, plan: ShownPlan, day: Titled): string | undefined {
  const { rows, toMinute } = day
  if (rows.length > 0 && coatOf(plan, rows) !== undefined) return workSentence(view, plan, day)
  if (rows.some(({ done }) => !done)) return undefined
  return nextSentence(view, plan, toMinute)
}

/** What the next working day brings. */
function nextSentence({ words, timeZone }: JobView, plan: ShownPlan, fromMinute: number): string {
  const next = plan.days.days.find(({ pieces }) =>
    pieces.some(({ startMinute }) => startMinute >= fromMinute),
  )
  const first = next?.pieces[0]
  if (next === undefined || first === undefined) return words.sentence('todayscreen.nextNone')
  const { code, data } = describeStep(plan, first.step)
  const name = words.sentence(code, data)
  return words.sentence('todayscreen.next', {
    date: next.date,
    hours: next.people.reduce((sum, { minutes }) => sum + minutes / 60, 0),
    fromClock: words.time(first.startMinute * 60_000, timeZone),
    first: name.charAt(0).toLowerCase() + name.slice(1),
  })
}

function lastReading(view: JobView, date: string): TodayState['reading'] {
  const { log, timeZone } = view
  return log
    .flatMap(({ cells }) => {
      const atMs = Date.parse(String(cells.at))
      if (cells.kind !== 'reading' || Number.isNaN(atMs)) return []
      if (localDate(Math.floor(atMs / 60_000), timeZone) !== date) return []
      const text = sayReading(view, cells)
      return text === '' ? [] : [{ atMs, text }]
    })
    .sort((a, b) => b.atMs - a.atMs)[0]
}
