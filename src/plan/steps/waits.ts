/** Waits by the clocks of a product's sheet. */
import type { Need, Wait } from '#core/schedule'
import type { ClockName, ResolvedSheet } from '../types.ts'

/** Until this clock has run out; no wait when the sheet does not have it. */
export function waitFor(sheet: ResolvedSheet | undefined, clock: ClockName): Wait {
  const table = sheet?.clocks[clock]?.value
  return table ? { kind: 'clock', clock, table } : { kind: 'none' }
}

/**
 * Until a film is dry enough for something, which is never before it is dry to touch: a clock of one row runs on in
 * the cold that stops one of several.
 */
export const dryNeeds = (
  step: string,
  sheet: ResolvedSheet | undefined,
  clock: 'dryToSand' | 'dryToTape' | 'dryToFit',
): readonly Need[] => [
  { step, wait: waitFor(sheet, clock) },
  ...(sheet?.clocks.touchDry ? [{ step, wait: waitFor(sheet, 'touchDry') }] : []),
]
