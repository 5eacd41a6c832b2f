/** Build-ups in the colour that is planned, and when they are few those in other colours that would hold as well. */
import {
  type BondBook,
  compareBy,
  criteria,
  grants,
  type Search,
  type Suggested,
  type Suggestion,
  suggest,
} from '#core/coating'

const MOST = 3

export type InColour = Suggested & {
  /** Suggestions whose finish is of another colour than the planned one. */
  readonly otherColours: ReadonlySet<Suggestion>
}

/** @param colour of the finish that is planned; empty where none is. */
export function suggestInColour(book: BondBook, search: Search, colour: string): InColour {
  const wish = { ...search.wish, colour }
  const has = colour !== '' && search.offers.some((offer) => grants(wish, offer))
  if (!has) return { ...suggest(book, search), otherColours: new Set() }
  const found = suggest(book, { ...search, wish })
  if (found.suggestions.length >= MOST) return { ...found, otherColours: new Set() }
  const others = suggest(book, search)
    .suggestions.filter(({ steps }) => steps.at(-1)?.offer.colour !== colour)
    .slice(0, MOST - found.suggestions.length)
  const suggestions = bestAnew([...found.suggestions, ...others])
  return { ...found, suggestions, otherColours: new Set(suggestions.slice(found.suggestions.length)) }
}

/** What each is the best by, of those that are shown; of equals the first. */
const bestAnew = (shown: readonly Suggestion[]): readonly Suggestion[] =>
  shown.map((one, at) => ({
    ...one,
    best: criteria.filter((criterion) =>
      shown.every((other, index) => {
        const order = compareBy(criterion, one.worth, other.worth)
        return index === at || order < 0 || (order === 0 && at < index)
      }),
    ),
  }))
