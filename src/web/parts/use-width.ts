/** The width that a drawing has, in whole px; 0 until it is known. */
import { type RefObject, useLayoutEffect, useRef, useState } from 'react'

export function useWidth<E extends HTMLElement>(): {
  readonly ref: RefObject<E | null>
  readonly width: number
} {
  const ref = useRef<E>(null)
  const [width, setWidth] = useState(0)
  useLayoutEffect(() => {
    const place = ref.current
    if (!place) return
    const look = (): void => setWidth(Math.floor(place.clientWidth))
    look()
    const watch = new ResizeObserver(look)
    watch.observe(place)
    return () => watch.disconnect()
  }, [])
  return { ref, width }
}
