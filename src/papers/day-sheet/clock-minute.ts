/** From a time on the wall clock of a day to a minute since 1970, on days of clock changes too. */
import type { Kit } from '../kit.ts'
import type { DayData } from './day-data.ts'

export function minuteAt({ say }: Kit, { date, day }: DayData, clock: number): number {
  const midnight = day?.startMinute ?? Date.parse(`${date}T00:00:00Z`) / 60_000
  const guess = midnight + clock
  const off = (clock % 1440) - say.clockOf(guess)
  const shift = Math.abs(off) > 720 ? off - Math.sign(off) * 1440 : off
  return guess + shift
}
