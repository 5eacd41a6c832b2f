/** Handles on the corners of the chosen zone: dragged with mouse or finger, moved by the arrow keys. */
import { type KeyboardEvent, useRef } from 'react'
import { arrowOf } from './corner-text.ts'
import type { Nudge } from './deck-edits.ts'
import type { Place } from './deck-view.ts'
import { type Dragged, type HoldProps, useHold } from './use-hold.ts'
import { type Corner, markOf } from './zone-corners.ts'

export type CornerHandlesProps = HoldProps & {
  readonly chosen: string | undefined
  readonly dragged: Dragged | undefined
  readonly nameOf: (corner: Corner, place: Place) => string
  readonly onNudge: (corner: Corner, nudge: Nudge) => void
  readonly onAdd: (corner: Corner) => void
  readonly onRemove: (corner: Corner) => void
}

export const CornerHandles = (props: CornerHandlesProps) => {
  const { corners, view, chosen, nameOf, dragged, onChoose } = props
  const holder = useRef<HTMLDivElement>(null)
  const hands = useHold(holder, props)
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
            onFocus={() => onChoose(corner)}
            onKeyDown={(event) => press(event, corner, props)}
            {...hands}
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

function press(event: KeyboardEvent, corner: Corner, { view, ...to }: CornerHandlesProps): void {
  const arrow = arrowOf(event.key, view.upright)
  const act = { Delete: to.onRemove, Backspace: to.onRemove, Insert: to.onAdd }[event.key]
  if (event.ctrlKey || event.metaKey || (!arrow && !act)) return
  event.preventDefault()
  if (arrow) to.onNudge(corner, { ...arrow, fine: event.altKey })
  else act?.(corner)
}
