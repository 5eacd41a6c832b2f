/** Lines of a mishap that are done, kept on the device for as long as it can be the same one. */

export type TickShelf = Pick<Storage, 'getItem' | 'setItem'>

/** Whoever opens the sheet again next day has another mishap. */
const oldestMs = 12 * 3_600_000

export type MishapPlace = { readonly job: string; readonly mishap: string }

const keyOf = ({ job, mishap }: MishapPlace): string => `hardstand.ticks.${job}.${mishap}`

/** Reading is total: what is no list of lines is none. */
export function readTicks(
  shelf: TickShelf | undefined,
  place: MishapPlace,
  nowMs: number,
): readonly string[] {
  try {
    const kept: unknown = JSON.parse(shelf?.getItem(keyOf(place)) ?? '{}')
    const { atMs, done } = kept as Readonly<Record<string, unknown>>
    if (typeof atMs !== 'number' || !Array.isArray(done) || nowMs - atMs > oldestMs) return []
    return done.filter((code): code is string => typeof code === 'string')
  } catch {
    return []
  }
}

export function writeTicks(
  shelf: TickShelf | undefined,
  place: MishapPlace,
  { done, nowMs }: { readonly done: readonly string[]; readonly nowMs: number },
): void {
  try {
    shelf?.setItem(keyOf(place), JSON.stringify({ atMs: nowMs, done }))
  } catch {
    // They stand on the open sheet all the same.
  }
}
