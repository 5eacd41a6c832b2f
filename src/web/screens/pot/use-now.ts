/** The clock on the wall, each second while it is wanted, and at once when the page comes back to the front. */
import { useEffect, useState } from 'react'

export function useNow(wanted: boolean): number {
  const [now, setNow] = useState(() => Date.now())
  useEffect(() => {
    if (!wanted) return
    const look = (): void => setNow(Date.now())
    look()
    const timer = setInterval(look, 1000)
    document.addEventListener('visibilitychange', look)
    return () => {
      clearInterval(timer)
      document.removeEventListener('visibilitychange', look)
    }
  }, [wanted])
  return now
}
