/** The section of a scan at a place along the boat: both sides averaged, from keel to sheer, without the deck. */

import { planeSection, planeThrough, type TriangleMesh } from '#core/geometry'
import {
  between,
  bySide,
  gapOf,
  girthOf,
  type HalfLine,
  inSteps,
  joinedLine,
  type Spot,
} from './half-section.ts'
import { sharpened, turnAt } from './section-corner.ts'

export type ScanSides = 'both' | 'port' | 'starboard'

export type ScanSection = {
  readonly x: number
  /** Evenly spaced from keel to sheer. */
  readonly spots: readonly Spot[]
  readonly girth: number
  readonly widestGap: number
}

/** Steps of a section that is looked at closely. */
export const sectionSteps = 200
/** Two sides that lie farther apart than this share of the girth are not averaged there: one of them lacks it. */
const mostApart = 0.04
/** Where the line has turned inward so far it is a deck and no side, rad; sides tumble home less. */
const deckHeading = (140 * Math.PI) / 180

export type SectionAsked = { readonly sides: ScanSides; readonly hasDeck: boolean }

export const scanSection = (
  mesh: TriangleMesh,
  x: number,
  { sides, hasDeck }: SectionAsked,
): ScanSection | undefined => {
  const halves = halfSections(mesh, x, sides).map((half) => (hasDeck ? withoutDeck(half) : half))
  const [longer, shorter] = halves.toSorted((a, b) => girthOf(b.points) - girthOf(a.points))
  if (longer === undefined || girthOf(longer.points) < leastGirth) return undefined
  const spots = inSteps(fromCentre(longer.points), sectionSteps)
  const mean = shorter ? averaged(spots, fromCentre(shorter.points)) : spots
  const even = inSteps(mean, sectionSteps)
  return {
    x,
    spots: even,
    girth: girthOf(even),
    widestGap: Math.max(...halves.map(({ widestGap }) => widestGap)),
  }
}

/** Whether a scan has a deck at a place. */
export const hasDeckAt = (mesh: TriangleMesh, x: number, sides: ScanSides): boolean =>
  halfSections(mesh, x, sides).some((half) => withoutDeck(half) !== half)

const halfSections = (mesh: TriangleMesh, x: number, sides: ScanSides): readonly HalfLine[] => {
  const cut = planeSection(mesh, planeThrough({ x, y: 0, z: 0 }, { x: 1, y: 0, z: 0 }))
  const { port, starboard } = bySide(cut.map(({ points }) => points.map(({ y, z }) => ({ y, z }))))
  const asked = [sides === 'starboard' ? [] : port, sides === 'port' ? [] : starboard]
  return asked.flatMap((pieces) => joinedLine(pieces) ?? [])
}

/** Less than this is no section, m. */
const leastGirth = 0.02

const withoutDeck = (half: HalfLine): HalfLine => {
  const steps = inSteps(half.points, sectionSteps)
  const reach = Math.round(sectionSteps / 50)
  const past = steps.findIndex((spot, i) => {
    const ahead = steps[i + reach]
    if (i < sectionSteps / 4 || ahead === undefined) return false
    const heading = Math.atan2(ahead.z - spot.z, ahead.y - spot.y)
    // Straight down, behind a toe rail or into an inner skin, is past the sheer as well.
    return heading > deckHeading || heading < -Math.PI / 4
  })
  if (past < 0) return half
  const near = Array.from({ length: 3 * reach }, (_, k) => past - reach + k)
  const turns = near.map((at) => turnAt(steps, at, reach))
  const edge = near[turns.indexOf(Math.max(...turns))]!
  return { ...half, points: [...steps.slice(0, edge - Math.round(reach / 2)), sharpened(steps, edge, reach)] }
}

/** The line from the centreline on: what the scan lacks of a keel is bridged straight on as the bottom runs. */
const fromCentre = (line: readonly Spot[]): readonly Spot[] => {
  const [first, ahead] = [line[0]!, inSteps(line, 20)[1]!]
  if (first.y < 1e-9) return line
  const slope = ahead.y - first.y > 1e-9 ? (ahead.z - first.z) / (ahead.y - first.y) : 0
  return [{ y: 0, z: first.z - Math.min(Math.max(slope, 0), 1) * first.y }, ...line]
}

/** Each spot and the nearest one of the other side, halfway; where the other side lacks it, the spot alone. */
const averaged = (spots: readonly Spot[], other: readonly Spot[]): readonly Spot[] => {
  const fine = inSteps(other, 4 * sectionSteps)
  const limit = Math.max(mostApart * girthOf(spots), 0.02)
  const mean = spots.map((spot) => {
    const twin = nearest(fine, spot)
    return gapOf(spot, twin) > limit ? spot : between(spot, twin, 0.5)
  })
  return [{ y: 0, z: mean[0]!.z }, ...mean.slice(1)]
}

const nearest = (line: readonly Spot[], spot: Spot): Spot =>
  line.reduce((best, one) => (gapOf(one, spot) < gapOf(best, spot) ? one : best))
