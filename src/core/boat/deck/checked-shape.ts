/** What of a measured deck shape can be worked with, and notes on what cannot. */

import {
  distance2,
  holdsPlaces,
  type Point2,
  type Polygon,
  type PolygonCrossing,
  polygonArea,
  polygonCrossing,
} from '#core/geometry'
import type { Note } from '#core/note'
import { fault } from '../fault.ts'
import { camberFactor } from './camber.ts'
import type { CutOut, DeckShapeInput } from './deck-shape.ts'
import { onCentre } from './mirror.ts'

export type CheckedShape = {
  readonly edge: Polygon
  readonly openings: readonly Polygon[]
  readonly cutOuts: readonly CutOut[]
  readonly camberFactor: number
}

export type Checked = { readonly shape?: CheckedShape; readonly notes: readonly Note[] }

/** Smaller than this is no zone, m². */
const leastArea = 1e-6
/** A hand's breadth of a tape laid by eye, m. */
const slack = 0.02
const fewest = 3

/** An upstand may stand alone; then there is no edge. */
export const checkedShape = (input: DeckShapeInput): Checked => {
  const standsAlone = input.edge.length === 0 && input.upstand?.length !== undefined
  const edge = overCentre(input)
  const faults = standsAlone ? [] : faultsOf(edge.polygon, input.ordered)
  if (faults.length > 0) return { notes: [...edge.notes, ...faults] }
  const camber = camberOf(input, edge.polygon)
  const openings = fittingOpenings(input, edge.polygon)
  return {
    shape: { edge: edge.polygon, ...openings.fit, camberFactor: camber.factor },
    notes: [...edge.notes, ...camber.notes, ...openings.notes],
  }
}

/** Offsets in their order cannot cross each other. */
const faultsOf = (edge: Polygon, ordered: boolean): readonly Note[] => {
  if (edge.length < fewest) {
    const data = { count: edge.length, needed: fewest }
    return [{ code: 'boat.deckTooFewCorners', severity: 'missing', data }]
  }
  if (isLine(edge)) return [fault('boat.deckNoArea', { count: edge.length })]
  const crossing = ordered ? undefined : polygonCrossing(edge)
  return crossing ? [crossed(crossing, edge.length)] : []
}

/** All corners on one line. */
const isLine = (edge: Polygon): boolean => {
  const [first = [0, 0]] = edge
  const far = edge.reduce((best, corner) =>
    distance2(first, corner) > distance2(first, best) ? corner : best,
  )
  return edge.every((corner) => polygonArea([first, far, corner]) < leastArea)
}

/** Sides are named by the numbers of the corners at their ends, from 1. */
const crossed = ({ first, second }: PolygonCrossing, corners: number): Note =>
  fault('boat.deckCrosses', {
    first: first + 1,
    firstTo: ((first + 1) % corners) + 1,
    second: second + 1,
    secondTo: ((second + 1) % corners) + 1,
  })

/** The side that a half lies on: 1 is port. */
const sideOf = (edge: Polygon): 1 | -1 => (edge.reduce((sum, [, y]) => sum + y, 0) < 0 ? -1 : 1)

const pulledBack = (polygon: Polygon, side: 1 | -1): Polygon =>
  polygon.map(([x, y]): Point2 => [x, y * side < 0 ? 0 : y])

/** Half a zone lies on one side: what reaches over the centreline would count twice and is pulled back to it. */
const overCentre = ({ edge, mirrored }: DeckShapeInput) => {
  const side = sideOf(edge)
  const over = edge.map(([, y]) => -y * side)
  const worst = over.reduce((most, each) => Math.max(most, each), 0)
  if (!mirrored || worst < onCentre) return { polygon: edge, notes: [] }
  const note = fault('boat.deckOverCentre', { corner: over.indexOf(worst) + 1, byM: worst })
  return { polygon: pulledBack(edge, side), notes: worst > slack ? [note] : [] }
}

/** A rise of half the width is a half circle: more than that is no deck. */
const mostCamber = 0.5

const camberOf = ({ camberRise, mirrored }: DeckShapeInput, edge: Polygon) => {
  if (camberRise === 0 || edge.length === 0) return { factor: 1, notes: [] }
  const ys = edge.map(([, y]) => y)
  const [least, most] = [Math.min(...ys), Math.max(...ys)]
  const joined = mirrored && Math.min(Math.abs(least), Math.abs(most)) < onCentre
  const width = joined ? 2 * Math.max(most, -least) : most - least
  if (camberRise > mostCamber * width) {
    return { factor: 1, notes: [fault('boat.deckCamberTooHigh', { riseM: camberRise, widthM: width })] }
  }
  return { factor: camberFactor(camberRise / width), notes: [] }
}

const none = { openings: [], cutOuts: [] } as const

/** All openings, or none where they would leave nothing of the zone. */
const fittingOpenings = (input: DeckShapeInput, edge: Polygon) => {
  const { cutOuts, mirrored, upstand } = input
  // One on the centreline is drawn whole as often as by its half: its own mirror image is no second one.
  const openings = mirrored ? input.openings.map((one) => pulledBack(one, sideOf(edge))) : input.openings
  const sound = openings.map((one) => faultsOf(one, false))
  const good = openings.filter((_, at) => sound[at]!.length === 0)
  const notes = openings.flatMap((_, at) => sound[at]!.map((note) => ofOpening(note, at)))
  const outside = good.flatMap((one, at) => (holdsPlaces(edge, one, slack) ? [] : [at]))
  const sides = mirrored ? 2 : 1
  const openM2 =
    sides * good.reduce((sum, one) => sum + polygonArea(one), 0) +
    cutOuts.reduce((sum, { count, length, width }) => sum + count * length * width, 0)
  const areaM2 = sides * polygonArea(edge) + (upstand?.length ?? 0) * (upstand?.height ?? 0)
  if (openM2 > 0 && openM2 >= areaM2)
    return { fit: none, notes: [...notes, fault('boat.deckOpeningTooLarge', { openM2, areaM2 })] }
  return {
    fit: { openings: good.filter((_, at) => !outside.includes(at)), cutOuts },
    notes: [...notes, ...outside.map((at) => fault('boat.deckOpeningOutside', { opening: at + 1 }))],
  }
}

const ofOpening = (note: Note, at: number): Note => ({
  ...note,
  code: 'boat.deckOpeningUnusable',
  data: { ...note.data, opening: at + 1 },
})
