/** The hours across the sheet, 06 to 20 or as far as the work goes, shared by tape, strips and readings. */
import type { Kit } from '../kit.ts'
import { measureOf } from '../page.ts'
import type { DayData } from './day-data.ts'

export type HoursAxis = {
  readonly left: number
  /** Where the names of the rows stand. */
  readonly labelX: number
  readonly labelWidth: number
  readonly from: number
  readonly to: number
  readonly right: number
  /** Sheet x of minutes since local midnight. */
  readonly x: (minutes: number) => number
}

const labels = 27
const ends = 8

export function hoursAxis(kit: Kit, { steps }: DayData): HoursAxis {
  const bars = steps.flatMap((step) => step.bars)
  const from = Math.max(0, Math.min(6, ...bars.map((bar) => Math.floor(bar.from / 60))))
  const to = Math.min(30, Math.max(20, ...bars.map((bar) => Math.ceil(bar.to / 60))))
  const { x, width } = measureOf(kit.page)
  const left = x + labels
  const right = x + width - ends
  return {
    left,
    labelX: x,
    labelWidth: labels - 2.5,
    from,
    to,
    right,
    x: (minutes) => left + ((right - left) * (minutes / 60 - from)) / (to - from),
  }
}

/** Every whole hour, both ends included. */
export const hourMarks = ({ from, to }: HoursAxis): readonly number[] =>
  Array.from({ length: to - from + 1 }, (_, index) => from + index)

export const hourLabel = ({ say }: Kit, hour: number): string =>
  say.hour12 ? String(hour % 12 || 12) : String(hour % 24).padStart(2, '0')
