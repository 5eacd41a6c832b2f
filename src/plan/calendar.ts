/** Days and shifts of the place the boat stands in, as minutes since 1970 UTC; clock changes are the library's affair. */

import { Temporal } from 'temporal-polyfill'
import type { Note } from '#core/note'
import type { Interval, Person } from '#core/schedule'
import type { Work } from '#job'
import type { Rates } from './known.ts'
import { minutesOf } from './minutes.ts'
import type { Stage } from './remember.ts'

export type CalendarInput = {
  readonly place: Work['place']
  readonly people: Work['people']
  readonly shifts: Work['shifts']
  readonly closures: Work['closures']
  readonly rates: Rates
  /** Whole local day on which planning begins: the later of the job's start and today. */
  readonly fromDate: string
}

export type LocalDay = {
  readonly date: string
  /** ISO, Monday is 1. */
  readonly weekday: number
  readonly startMinute: number
  readonly endMinute: number
}
export type CalendarDays = {
  readonly timeZone: string
  readonly days: readonly LocalDay[]
  readonly people: readonly Person[]
  /** Hours round noon in which a coat may stand on an hour nobody has a forecast for. */
  readonly middays: readonly Interval[]
  readonly openMinutes: number
  readonly closeMinutes: number
  readonly notes: readonly Note[]
}

/** Far enough for the longest refit; past it a step is reported as not placed. */
const HORIZON_DAYS = 300

export const calendar: Stage<CalendarInput, CalendarDays> = { name: 'calendar', run: layOutDays }

function layOutDays(input: CalendarInput): CalendarDays {
  const zone = knownZone(input.place.timeZone)
  const days = daysFrom(input.fromDate, zone.id)
  const openMinutes = minutesOf(input.rates.sessionOpenHours.value)
  const closeMinutes = minutesOf(input.rates.sessionCloseHours.value)
  const people = input.people.map((person) => ({
    id: person.id,
    shifts: days.flatMap((day) =>
      shiftsOn(input, { day, person: person.id, timeZone: zone.id, openMinutes, closeMinutes }),
    ),
  }))
  const middays = days.map((day) => ({
    startMinute: minuteAt(day, '10:00', zone.id),
    endMinute: minuteAt(day, '16:00', zone.id),
  }))
  const idle: readonly Note[] = people.some((person) => person.shifts.length > 0)
    ? []
    : [{ code: 'calendar.nobodyWorks', severity: 'fault', data: {} }]
  return {
    timeZone: zone.id,
    days,
    people,
    middays,
    openMinutes,
    closeMinutes,
    notes: [...zone.notes, ...idle],
  }
}

function knownZone(name: string): { readonly id: string; readonly notes: readonly Note[] } {
  try {
    return { id: Temporal.PlainDate.from('2027-01-01').toZonedDateTime(name).timeZoneId, notes: [] }
  } catch {
    return {
      id: 'UTC',
      notes: [{ code: 'calendar.unknownTimeZone', severity: 'fault', data: { timeZone: name } }],
    }
  }
}

/** Days at a time for which the library is asked whether the clocks change between; they do so twice a year at most. */
const WEEK = 7

function daysFrom(fromDate: string, timeZone: string): readonly LocalDay[] {
  const first = Temporal.PlainDate.from(fromDate)
  const startOf = (index: number): number =>
    first.add({ days: index }).toZonedDateTime(timeZone).epochMilliseconds / 60_000
  const starts: number[] = [startOf(0)]
  while (starts.length <= HORIZON_DAYS) {
    const from = starts.length - 1
    const later = startOf(from + WEEK)
    const even = later - starts[from]! === WEEK * 24 * 60
    for (let day = 1; day < WEEK; day++)
      starts.push(even ? starts[from]! + day * 24 * 60 : startOf(from + day))
    starts.push(later)
  }
  const firstDay = Date.parse(`${fromDate}T00:00:00Z`) / DAY_MS
  return Array.from({ length: HORIZON_DAYS }, (_, index) => ({
    date: new Date((firstDay + index) * DAY_MS).toISOString().slice(0, 10),
    // Day 0 of 1970 was a Thursday.
    weekday: ((firstDay + index + 3) % 7) + 1,
    startMinute: starts[index]!,
    endMinute: starts[index + 1]!,
  }))
}

const DAY_MS = 86_400_000

/** A clock time on a local day; only a day on which the clocks change needs the time zone again. */
function minuteAt(day: LocalDay, time: string, timeZone: string): number {
  if (day.endMinute - day.startMinute === 24 * 60) {
    const [hour = 0, minute = 0] = time.split(':').map(Number)
    return day.startMinute + hour * 60 + minute
  }
  const plainTime = Temporal.PlainTime.from(time)
  const zoned = Temporal.PlainDate.from(day.date).toZonedDateTime({ timeZone, plainTime })
  return Math.floor(zoned.epochMilliseconds / 60_000)
}

/** The part of a shift in which work is done: a session costs time to open and to close. */
function shiftsOn(
  input: CalendarInput,
  on: {
    readonly day: LocalDay
    readonly person: string
    readonly timeZone: string
    readonly openMinutes: number
    readonly closeMinutes: number
  },
): readonly Interval[] {
  if (closed(input.closures, on.day.date, on.person)) return []
  return input.shifts
    .filter((shift) => shift.person === on.person && shift.days.includes(on.day.weekday))
    .map((shift) => ({
      startMinute: minuteAt(on.day, shift.from, on.timeZone) + on.openMinutes,
      endMinute: minuteAt(on.day, shift.until, on.timeZone) - on.closeMinutes,
    }))
    .filter((shift) => shift.endMinute > shift.startMinute)
}

const closed = (closures: Work['closures'], date: string, person: string): boolean =>
  closures.some(
    (closure) => (closure.person ?? person) === person && closure.from <= date && date <= closure.until,
  )

/** The local date a moment falls on. */
export function dateOf(ms: number, timeZone: string): string {
  try {
    return Temporal.Instant.fromEpochMilliseconds(ms).toZonedDateTimeISO(timeZone).toPlainDate().toString()
  } catch {
    return Temporal.Instant.fromEpochMilliseconds(ms).toZonedDateTimeISO('UTC').toPlainDate().toString()
  }
}
