/** Which entries of the log count: one that a later entry takes the place of stays written, and counts no more. */

type Line = { readonly id: string; readonly corrects?: unknown }

/** Ids of entries that others take the place of. */
export const correctedIds = (lines: readonly Line[]): ReadonlySet<string> =>
  new Set(
    lines.flatMap(({ id, corrects }) =>
      typeof corrects === 'string'
        ? corrects
            .split(',')
            .map((one) => one.trim())
            // An entry cannot take its own place.
            .filter((one) => one !== '' && one !== id)
        : [],
    ),
  )

/** The same list when nothing was corrected. */
export function inForce<Entry extends Line>(log: readonly Entry[]): readonly Entry[] {
  const corrected = correctedIds(log)
  return corrected.size === 0 ? log : log.filter(({ id }) => !corrected.has(id))
}
