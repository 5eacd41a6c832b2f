/** Taking hold of a corner with mouse or finger, moving it and letting it go. */
import { type PointerEvent, type RefObject, useRef } from 'react'
import type { DeckView, Place } from './deck-view.ts'
import type { Corner } from './zone-corners.ts'

export type Dragged = { readonly id: string; readonly place: Place }

export type HoldProps = {
  readonly corners: readonly Corner[]
  readonly view: DeckView
  /** Where a corner at hand would come to lie. */
  readonly snap: (place: Place) => Place
  readonly onChoose: (corner: Corner) => void
  /** While it is moved; undefined when that ends. */
  readonly onDrag: (dragged: Dragged | undefined) => void
  readonly onDrop: (corner: Corner, place: Place) => void
}

/** A finger that has moved no farther than this has only touched, px. */
const touchPx = 3

type Hold = { readonly corner: Corner; readonly pointer: number; readonly from: Place; moved: boolean }
type Press = PointerEvent<HTMLElement>

/** What a handle inside the holder listens to. */
export function useHold(holder: RefObject<HTMLElement | null>, props: HoldProps) {
  const { corners, view, snap } = props
  const hold = useRef<Hold>(undefined)
  const pointAt = (event: Press): Place => {
    const box = holder.current!.getBoundingClientRect()
    return [event.clientX - box.left, event.clientY - box.top]
  }
  const heldBy = (event: Press): Hold | undefined =>
    hold.current?.pointer === event.pointerId ? hold.current : undefined
  const placeOf = (held: Hold, event: Press): Place => snap(view.back(offset(held, pointAt(event), view)))
  const begin = (event: Press): void => {
    const from = pointAt(event)
    const corner = event.button === 0 ? nearest(corners, from, view) : undefined
    if (!corner) return
    event.preventDefault()
    event.currentTarget.setPointerCapture(event.pointerId)
    hold.current = { corner, pointer: event.pointerId, from, moved: false }
    props.onChoose(corner)
    holder.current?.querySelector<HTMLElement>(`[data-corner="${corner.id}"]`)?.focus({ preventScroll: true })
  }
  const move = (event: Press): void => {
    const held = heldBy(event)
    if (!held) return
    const [x, y] = pointAt(event)
    held.moved ||= Math.hypot(x - held.from[0], y - held.from[1]) > touchPx
    if (held.moved) props.onDrag({ id: held.corner.id, place: placeOf(held, event) })
  }
  const end = (event: Press): void => {
    const held = heldBy(event)
    if (!held) return
    hold.current = undefined
    props.onDrag(undefined)
    if (held.moved && event.type === 'pointerup') props.onDrop(held.corner, placeOf(held, event))
  }
  return { onPointerDown: begin, onPointerMove: move, onPointerUp: end, onPointerCancel: end }
}

/** A corner follows the finger from where it was taken hold of, not with a leap. */
function offset({ corner, from }: Hold, [x, y]: Place, view: DeckView): Place {
  const [cornerX, cornerY] = view.at(corner.place ?? view.back(from))
  return [x + cornerX - from[0], y + cornerY - from[1]]
}

/** Handles lie over each other where corners are near: the one meant is the nearest. */
function nearest(corners: readonly Corner[], [x, y]: Place, view: DeckView): Corner | undefined {
  const far = ({ place }: Corner): number => {
    if (!place) return Number.POSITIVE_INFINITY
    const [cornerX, cornerY] = view.at(place)
    return Math.hypot(cornerX - x, cornerY - y)
  }
  return corners.reduce<Corner | undefined>(
    (best, corner) => (!best || far(corner) < far(best) ? corner : best),
    undefined,
  )
}
