/** How many pairs of hands there are at the boat at the same time. */
import type { Work } from '#job'

type Shift = Pick<Work['shifts'][number], 'person' | 'days' | 'from' | 'until'>

/** Most people whose shifts overlap on any day of the week; 0 without a shift. Times of day sort as texts. */
export function handsAtOnce(shifts: readonly Shift[]): number {
  const counts = shifts.flatMap((shift) =>
    shift.days.map((day) => {
      const there = shifts.filter(
        ({ days, from, until }) => days.includes(day) && from <= shift.from && shift.from < until,
      )
      return new Set(there.map(({ person }) => person)).size
    }),
  )
  return Math.max(0, ...counts)
}
