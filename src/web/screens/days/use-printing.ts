/** Whether the page is being printed: what is drawn for paper alone is there only then. */
import { useEffect, useState } from 'react'
import { flushSync } from 'react-dom'

export function usePrinting(): boolean {
  const [printing, setPrinting] = useState(false)
  useEffect(() => {
    const media = globalThis.matchMedia('print')
    // At once: the browser lays the paper out as soon as it has told of it.
    const set = (now: boolean): void => flushSync(() => setPrinting(now))
    const before = (): void => set(true)
    const after = (): void => set(false)
    const change = (event: MediaQueryListEvent): void => set(event.matches)
    addEventListener('beforeprint', before)
    addEventListener('afterprint', after)
    media.addEventListener('change', change)
    return () => {
      removeEventListener('beforeprint', before)
      removeEventListener('afterprint', after)
      media.removeEventListener('change', change)
    }
  }, [])
  return printing
}
