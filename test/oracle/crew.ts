/** Who may work when: shifts less opening and closing, closures and local time, from the cells alone. */
import { catalogue } from '#catalogue'
import { clockMinutes, hours, weekdays } from './cells.ts'
import { cellsOf, itemsOf, type RawSample } from './raw-sample.ts'

export type Spell = { readonly startMinute: number; readonly endMinute: number }

const minutesOf = (rate: 'session-open' | 'session-close'): number =>
  Math.round(hours(String(catalogue.rates[rate].cells.time)) * 60)

/** Minutes since 1970 UTC of a local date and a clock. */
export function localToMinute(zone: string, date: string, clock: number): number {
  const guess = Date.parse(`${date}T00:00:00Z`) / 60_000 + clock
  return guess - offsetMinutes(zone, guess - offsetMinutes(zone, guess))
}

const formats = new Map<string, Intl.DateTimeFormat>()

export function offsetMinutes(zone: string, minute: number): number {
  let format = formats.get(zone)
  if (!format) {
    format = new Intl.DateTimeFormat('en-US', { timeZone: zone, timeZoneName: 'longOffset' })
    formats.set(zone, format)
  }
  const name = format.formatToParts(minute * 60_000).find((part) => part.type === 'timeZoneName')?.value
  const found = /GMT(?:([+-])(\d\d):(\d\d))?/.exec(name ?? '')
  const size = Number(found?.[2] ?? 0) * 60 + Number(found?.[3] ?? 0)
  return found?.[1] === '-' ? -size : size
}

const dayMs = 86_400_000
const longestDays = 400

/** Spells in which a person works on the boat, between opening and closing, for a year from the start of the job. */
export function workingSpells(raw: RawSample, person: string): readonly Spell[] {
  const zone = cellsOf(raw.work, 'place').timeZone!
  const start = Date.parse(`${cellsOf(raw.work, 'job').start}T00:00:00Z`)
  const shifts = Object.values(itemsOf(raw.work, 'shifts')).filter((shift) => shift.person === person)
  const spells: Spell[] = []
  for (let day = 0; day < longestDays; day++) {
    const at = new Date(start + day * dayMs)
    const date = at.toISOString().slice(0, 10)
    if (isClosed(raw, person, date)) continue
    for (const shift of shifts) {
      if (!weekdays(shift.days!).includes(at.getUTCDay() || 7)) continue
      spells.push({
        startMinute: localToMinute(zone, date, clockMinutes(shift.from!)) + minutesOf('session-open'),
        endMinute: localToMinute(zone, date, clockMinutes(shift.until!)) - minutesOf('session-close'),
      })
    }
  }
  return spells.sort((a, b) => a.startMinute - b.startMinute)
}

const isClosed = (raw: RawSample, person: string, date: string): boolean =>
  Object.values(itemsOf(raw.work, 'closures')).some(
    (closure) =>
      (closure.person === undefined || closure.person === person) &&
      closure.from! <= date &&
      date <= closure.until!,
  )
