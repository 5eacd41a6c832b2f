/** How sure a result is that was worked out from others. */
import type { Certainty } from '#core/note'

const weakness: Readonly<Record<Certainty, number>> = {
  worked: 0,
  measured: 1,
  sheet: 2,
  typical: 3,
  assumed: 4,
}

/** A chain is as sure as its weakest part; an assumed part shows, the rest is simply worked out. */
export function weakest(...parts: readonly (Certainty | undefined)[]): Certainty {
  return parts.reduce<Certainty>(
    (worst, part) => (part !== undefined && weakness[part] > weakness[worst] ? part : worst),
    'worked',
  )
}
