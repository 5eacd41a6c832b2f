// Deck zones by offsets against published waterplanes: both are half breadths every so far along to an area.
import { type DeckOffset, deckZone, edgeOfOffsets } from '#core/boat'
import { checkPublished, figure, type Given, published } from './published.ts'

type OffsetTable = {
  readonly stations: readonly number[]
  readonly hulls: readonly { readonly fractions: readonly (readonly number[])[] }[]
}

const table = published('series-60') as unknown as OffsetTable
const loadWaterline = 5

/** Both halves of a zone whose half widths are these. */
const areaOf = (offsets: readonly DeckOffset[], fair: boolean): number =>
  deckZone({
    edge: edgeOfOffsets(offsets, fair).edge,
    ordered: true,
    openings: [],
    mirrored: true,
    camberRise: 0,
    slope: 0,
    cutOuts: [],
    count: 1,
    faces: 1,
  }).zone!.area

const ordinates = (given: Given): readonly DeckOffset[] =>
  [...'abcdefg'].map((name, i) => ({
    x: i * figure(given, 'interval'),
    outer: figure(given, name),
    inner: 0,
  }))

checkPublished('deck-offsets', {
  'waterplane coefficient with a fair edge': (given) => {
    const { fractions } = table.hulls[figure(given, 'hull')]!
    const rows = table.stations.map((number, i) => ({
      x: number / 20,
      outer: fractions[i]![loadWaterline]!,
      inner: 0,
    }))
    return areaOf(rows, true) / 2
  },
  'waterplane of seven half-ordinates with a fair edge': (given) => areaOf(ordinates(given), true),
  'waterplane of seven half-ordinates with straight edges': (given) => areaOf(ordinates(given), false),
})
