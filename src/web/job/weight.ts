/** What counts for more: a day, a litre or money are made one figure, only to put guesses in order. */
import type { Candidate, Effect } from '../worker/messages.ts'

export type Weighed = { readonly candidate: Candidate; readonly effect: Effect }

/** COMMON PRACTICE: a day of the shop is worth about 300 of the currency, a litre of paint about 60. */
const coinsOf = { day: 30_000, litre: 6_000 }

export const weightOf = ({ effect: { days, litres, coins } }: Weighed): number =>
  days * coinsOf.day + (coins ?? litres * coinsOf.litre)
