/** Cautions that were read today, kept on the device: tomorrow they stand open again. */
import type { Caution } from '#plan'

export type CautionShelf = Pick<Storage, 'getItem' | 'setItem'>

/** The date of the boat's place. */
export type CautionDay = { readonly job: string; readonly date: string }

const placeOf = (job: string): string => `hardstand.cautions.${job}`

/** One that says something else, of another product or a hotter day, has not been read. */
export const cautionKey = ({ code, severity, data }: Caution): string =>
  [severity, code, ...Object.entries(data).map(([key, value]) => `${key} ${value}`)].join('|')

/** Reading is total: what is no list of today is none. */
export function readCautions(
  shelf: CautionShelf | undefined,
  { job, date }: CautionDay,
): ReadonlySet<string> {
  try {
    const kept: unknown = JSON.parse(shelf?.getItem(placeOf(job)) ?? '{}')
    const { date: on, read } = kept as Readonly<Record<string, unknown>>
    if (on !== date || !Array.isArray(read)) return new Set()
    return new Set(read.filter((key): key is string => typeof key === 'string'))
  } catch {
    return new Set()
  }
}

export function writeCautions(
  shelf: CautionShelf | undefined,
  { job, date }: CautionDay,
  read: ReadonlySet<string>,
): void {
  try {
    shelf?.setItem(placeOf(job), JSON.stringify({ date, read: [...read] }))
  } catch {
    // They stay folded on the open sheet all the same.
  }
}
