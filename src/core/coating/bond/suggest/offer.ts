/** What may go into a suggested build-up: the sheets at hand, with what a coat of each takes and costs. */
import { hidingOf, practiceOf } from '../film-limits.ts'
import type { Coat } from '../material.ts'
import type { BondBook } from '../rule.ts'
import type { CoatClocks, Exposed, Stack } from '../stack.ts'

export type Offer = Coat & {
  /** Id of its sheet. */
  readonly id: string
  readonly colour: string
  readonly clocks: CoatClocks
  readonly dryFilmM?: number
  /** Mixed, a coat, losses counted. */
  readonly litresPerM2: number
  /** Smallest coins a litre; nothing where no pack has a price. */
  readonly coinsPerL?: number
}

/** What the build-up is to end in. */
export type Wish = {
  readonly role: string
  readonly family?: string
  readonly sheet?: string
  readonly colour?: string
}

export type Search = {
  readonly ground: readonly Exposed[]
  readonly where: Stack['where']
  readonly areaM2: number
  readonly offers: readonly Offer[]
  readonly wish: Wish
  /** Most layers a build-up may have. */
  readonly mostLayers: number
}

/** Whether a sheet is the finish that is wanted. */
export const grants = ({ role, family, sheet, colour }: Wish, offer: Offer): boolean =>
  offer.role === role &&
  (family === undefined || offer.family === family) &&
  (sheet === undefined || offer.id === sheet) &&
  (colour === undefined || offer.colour === colour)

/** Coats as usual for its kind, more where its colour takes more to hide. */
export function coatsOf(book: BondBook, offer: Offer): number {
  const usual = practiceOf(book.practice, offer)?.coats ?? 1
  const hiding = offer.role === 'finish' ? hidingOf(book.hiding, offer)?.coats : undefined
  return Math.max(usual, hiding ?? 0)
}
