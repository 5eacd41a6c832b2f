/** The view as it stands, and the way to another: at once while one turns her, in a moment where a view was named. */
import { useCallback, useEffect, useRef, useState } from 'react'
import { between, firstView, type View } from './view.ts'

export type ViewState = {
  readonly view: View
  readonly change: (next: (view: View) => View) => void
  readonly goTo: (view: View) => void
}

/** A few times what else moves its place: a whole boat comes round. */
const times = 3

export function useView(): ViewState {
  const [view, setView] = useState(firstView)
  const frame = useRef(0)
  const stop = (): void => cancelAnimationFrame(frame.current)
  useEffect(() => stop, [])
  const change = useCallback((next: (view: View) => View): void => {
    stop()
    setView(next)
  }, [])
  const goTo = useCallback((to: View): void => {
    stop()
    const whole = times * moveMs()
    if (whole === 0) {
      setView(to)
      return
    }
    const start = performance.now()
    let from: View | undefined
    const step = (now: number): void => {
      const share = Math.min((now - start) / whole, 1)
      setView((view) => {
        from ??= view
        return between(from, to, share * share * (3 - 2 * share))
      })
      if (share < 1) frame.current = requestAnimationFrame(step)
      else setView(to)
    }
    frame.current = requestAnimationFrame(step)
  }, [])
  return { view, change, goTo }
}

/** Nothing where motion is reduced. */
const moveMs = (): number =>
  Number.parseFloat(getComputedStyle(document.documentElement).getPropertyValue('--move')) || 0
