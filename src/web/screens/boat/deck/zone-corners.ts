/** Corners of a zone as the document has them, before any plan is made: for handles that follow at once. */
import { readCell, workFields } from '#job'
import { itemsOf, type RawItem } from '../../../fields/items.ts'
import type { JobView } from '../../../job/job-view.ts'
import type { Place } from './deck-view.ts'

export const cornersPlace = { part: 'work', section: 'corners' } as const
export const offsetsPlace = { part: 'work', section: 'offsets' } as const
export const zonesPlace = { part: 'work', section: 'zones' } as const

export type Corner = {
  readonly id: string
  /** From 1, in its own ring. */
  readonly number: number
  /** Of the opening it bounds; 0 on the edge. */
  readonly opening: number
  /** Undefined while one of its figures cannot be read. */
  readonly place: Place | undefined
  /** Which of the figures were put by eye. */
  readonly about: { readonly fromStern: boolean; readonly offCentre: boolean }
}

/** In the order of the document; the edge first, then openings by their number. */
export function cornersOf(view: Pick<JobView, 'raw'>, zone: string): readonly Corner[] {
  const own = itemsOf(view, cornersPlace).filter(({ cells }) => cells.zone === zone)
  const rings = [...new Set(own.map(openingOf))].sort((a, b) => a - b)
  return rings.flatMap((opening) =>
    own
      .filter((item) => openingOf(item) === opening)
      .map((item, at) => cornerOf(item, { opening, number: at + 1 })),
  )
}

const openingOf = ({ cells }: RawItem): number => {
  const number = Number(cells.opening ?? 0)
  return Number.isInteger(number) && number > 0 ? number : 0
}

function cornerOf({ id, cells }: RawItem, place: Pick<Corner, 'opening' | 'number'>): Corner {
  const [x, y] = [figureOf('fromStern', cells.fromStern), figureOf('offCentre', cells.offCentre)]
  return {
    id,
    ...place,
    place: x && y ? [x.value, y.value] : undefined,
    about: { fromStern: x?.about ?? false, offCentre: y?.about ?? false },
  }
}

function figureOf(key: 'fromStern' | 'offCentre', text: unknown) {
  const field = workFields.corners.fields[key]
  const reading = typeof text === 'string' ? readCell(field, text, { currency: undefined }) : undefined
  if (!reading?.ok) return undefined
  const { value, certainty } = reading.value as { readonly value: number; readonly certainty: string }
  return { value, about: certainty === 'assumed' }
}

/** Places of one ring, those that can be read. */
export const ringOf = (corners: readonly Corner[], opening: number): readonly Place[] =>
  corners.flatMap((corner) => (corner.opening === opening && corner.place ? [corner.place] : []))

/** The side that most of a mirrored zone lies on. */
export function sideOf(corners: readonly Corner[]): 'port' | 'starboard' {
  const sum = ringOf(corners, 0).reduce((total, [, y]) => total + y, 0)
  return sum < 0 ? 'starboard' : 'port'
}

/** `3`, and `2.3` for the third corner of opening 2: on its handle and before its row. */
export const markOf = ({ opening, number }: Corner): string =>
  opening > 0 ? `${opening}.${number}` : String(number)
