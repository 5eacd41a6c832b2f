/** Turning by hand: a finger or the mouse turns her, two fingers or the wheel bring her nearer, a tap points at her. */
import { type PointerEvent, type RefObject, useEffect, useMemo, useRef } from 'react'
import { moved, turned, type View, zoomed } from './view.ts'

type Place = readonly [x: number, y: number]

export type HandsInput = {
  readonly box: RefObject<HTMLElement | null>
  readonly change: (next: (view: View) => View) => void
  readonly tapped: (at: Place) => void
  /** With a mouse; nothing once it has left. */
  readonly pointed: (at: Place | undefined) => void
}

/** A radian for so many px. */
const pxPerRad = 180
/** A finger that moved less has tapped. */
const tapPx = 8
/** A wheel that began to turn outside scrolls the page on over the picture for so long, ms. */
const scrollingMs = 400

export function useHands(input: HandsInput) {
  const now = useRef(input)
  now.current = input
  useWheel(now)
  return useMemo(() => handsOf(now), [])
}

function handsOf(now: RefObject<HandsInput>) {
  const down = new Map<number, Place>()
  let walked = 0
  const placeIn = ({ clientX, clientY, currentTarget }: PointerEvent<HTMLElement>): Place => {
    const { left, top } = currentTarget.getBoundingClientRect()
    return [clientX - left, clientY - top]
  }
  const lifted = (event: PointerEvent<HTMLElement>): void => void down.delete(event.pointerId)
  return {
    onPointerDown: (event: PointerEvent<HTMLElement>) => {
      if (event.button !== 0) return
      if (down.size === 0) walked = 0
      down.set(event.pointerId, placeIn(event))
      event.currentTarget.setPointerCapture(event.pointerId)
    },
    onPointerMove: (event: PointerEvent<HTMLElement>) => {
      const at = placeIn(event)
      const from = down.get(event.pointerId)
      if (!from) {
        if (event.pointerType === 'mouse') now.current.pointed(at)
        return
      }
      const other = [...down].find(([id]) => id !== event.pointerId)?.[1]
      walked += Math.hypot(at[0] - from[0], at[1] - from[1])
      down.set(event.pointerId, at)
      if (other) now.current.change(pinched(event.currentTarget, other, from, at))
      else if (walked >= tapPx)
        now.current.change((view) => turned(view, (from[0] - at[0]) / pxPerRad, (at[1] - from[1]) / pxPerRad))
    },
    onPointerUp: (event: PointerEvent<HTMLElement>) => {
      if (down.has(event.pointerId) && down.size === 1 && walked < tapPx) now.current.tapped(placeIn(event))
      lifted(event)
    },
    onPointerCancel: lifted,
    onPointerLeave: () => now.current.pointed(undefined),
  }
}

/** What lay under the two fingers stays under them. */
function pinched(box: HTMLElement, other: Place, from: Place, to: Place): (view: View) => View {
  const apart = (a: Place): number => Math.max(1, Math.hypot(a[0] - other[0], a[1] - other[1]))
  const { width, height } = box.getBoundingClientRect()
  const middle: Place = [(to[0] + other[0] - width) / 2, (to[1] + other[1] - height) / 2]
  const by = apart(to) / apart(from)
  return (view) => zoomed(moved(view, [(to[0] - from[0]) / 2, (to[1] - from[1]) / 2]), by, middle)
}

/** Listened to by hand, for only then the page can be kept from scrolling. */
function useWheel(now: RefObject<HandsInput>): void {
  useEffect(() => {
    const box = now.current.box.current
    if (!box) return
    let elsewhereAt = Number.NEGATIVE_INFINITY
    const anywhere = (event: WheelEvent): void => {
      const scrolling = event.timeStamp - elsewhereAt < scrollingMs
      if (!box.contains(event.target as Node) || scrolling) elsewhereAt = event.timeStamp
    }
    const turnedWheel = (event: WheelEvent): void => {
      if (event.timeStamp === elsewhereAt && !event.ctrlKey) return
      const { left, top, width, height } = box.getBoundingClientRect()
      const at: Place = [event.clientX - left - width / 2, event.clientY - top - height / 2]
      const lines = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? 16 : 1
      event.preventDefault()
      now.current.change((view) => zoomed(view, Math.exp((-event.deltaY * lines) / 400), at))
    }
    addEventListener('wheel', anywhere, { capture: true, passive: true })
    box.addEventListener('wheel', turnedWheel, { passive: false })
    return () => {
      removeEventListener('wheel', anywhere, { capture: true })
      box.removeEventListener('wheel', turnedWheel)
    }
  }, [now])
}
