/** Handles on the corners of the chosen zone: dragged with mouse or finger, moved by the arrow keys. */
import { type KeyboardEvent, type PointerEvent, useRef } from 'react'
import { arrowOf } from './corner-text.ts'
import type { Nudge } from './deck-edits.ts'
import type { DeckView, Place } from './deck-view.ts'
import { type Corner, markOf } from './zone-corners.ts'

export type Dragged = { readonly id: string; readonly place: Place }

export type CornerHandlesProps = {
  readonly corners: readonly Corner[]
  readonly view: DeckView
  readonly chosen: string | undefined
  readonly nameOf: (corner: Corner, place: Place) => string
  /** Where a corner at hand would come to lie. */
  readonly snap: (place: Place) => Place
  readonly onChoose: (corner: Corner) => void
  /** While it is moved; undefined when that ends. */
  readonly onDrag: (dragged: Dragged | undefined) => void
  readonly onDrop: (corner: Corner, place: Place) => void
  readonly onNudge: (corner: Corner, nudge: Nudge) => void
  readonly onAdd: (corner: Corner) => void
  readonly onRemove: (corner: Corner) => void
  readonly dragged: Dragged | undefined
}

/** A finger that has moved no farther than this has only touched, px. */
const touchPx = 3

type Hold = { readonly corner: Corner; readonly pointer: number; readonly from: Place; moved: boolean }

export const CornerHandles = (props: CornerHandlesProps) => {
  const { corners, view, chosen, nameOf, snap, dragged } = props
  const holder = useRef<HTMLDivElement>(null)
  const hold = useRef<Hold>(undefined)
  const pointAt = (event: PointerEvent): Place => {
    const box = holder.current!.getBoundingClientRect()
    return [event.clientX - box.left, event.clientY - box.top]
  }
  const begin = (event: PointerEvent<HTMLElement>): void => {
    if (event.button !== 0) return
    const from = pointAt(event)
    const corner = nearest(corners, from, view)
    if (!corner) return
    event.preventDefault()
    event.currentTarget.setPointerCapture(event.pointerId)
    hold.current = { corner, pointer: event.pointerId, from, moved: false }
    props.onChoose(corner)
    holder.current?.querySelector<HTMLElement>(`[data-corner="${corner.id}"]`)?.focus({ preventScroll: true })
  }
  const move = (event: PointerEvent<HTMLElement>): void => {
    const held = hold.current
    if (held?.pointer !== event.pointerId) return
    const [x, y] = pointAt(event)
    if (!held.moved && Math.hypot(x - held.from[0], y - held.from[1]) <= touchPx) return
    held.moved = true
    props.onDrag({ id: held.corner.id, place: snap(view.back(offset(held, [x, y], view))) })
  }
  const end = (event: PointerEvent<HTMLElement>): void => {
    const held = hold.current
    if (held?.pointer !== event.pointerId) return
    hold.current = undefined
    props.onDrag(undefined)
    if (held.moved && event.type === 'pointerup')
      props.onDrop(held.corner, snap(view.back(offset(held, pointAt(event), view))))
  }
  const press = (corner: Corner) => (event: KeyboardEvent) => {
    const arrow = arrowOf(event.key, view.upright)
    const act = { Delete: props.onRemove, Backspace: props.onRemove, Insert: props.onAdd }[event.key]
    if (event.ctrlKey || event.metaKey || (!arrow && !act)) return
    event.preventDefault()
    if (arrow) props.onNudge(corner, { ...arrow, fine: event.altKey })
    else act?.(corner)
  }
  return (
    <div className="deck-handles off-paper" ref={holder}>
      {corners.map((corner) => {
        const place = dragged?.id === corner.id ? dragged.place : corner.place
        if (!place) return null
        const [left, top] = view.at(place)
        return (
          <button
            key={corner.id}
            type="button"
            data-corner={corner.id}
            className={corner.id === chosen ? 'deck-handle deck-handle-chosen' : 'deck-handle'}
            style={{ left, top }}
            aria-label={nameOf(corner, place)}
            aria-pressed={corner.id === chosen}
            onClick={() => props.onChoose(corner)}
            onFocus={() => props.onChoose(corner)}
            onKeyDown={press(corner)}
            onPointerDown={begin}
            onPointerMove={move}
            onPointerUp={end}
            onPointerCancel={end}
          >
            <span className="deck-handle-box" aria-hidden="true">
              {markOf(corner)}
            </span>
          </button>
        )
      })}
    </div>
  )
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
