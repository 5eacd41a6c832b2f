/** Keeps the screen awake while it is wanted; taken again when the page comes back to the front. */
import { useEffect, useState } from 'react'

export type WakeLock = 'off' | 'on' | 'cannot'

/** The part of the browser that is used; not every one has it. */
type Sentinel = { readonly release: () => Promise<void> }
type Wakeful = { readonly wakeLock?: { readonly request: (type: 'screen') => Promise<Sentinel> } }

export function useWakeLock(wanted: boolean): WakeLock {
  const [state, setState] = useState<WakeLock>('off')
  useEffect(() => {
    if (!wanted) return setState('off')
    const { wakeLock } = navigator as Wakeful
    if (wakeLock === undefined) return setState('cannot')
    let held: Sentinel | undefined
    let over = false
    const take = async (): Promise<void> => {
      if (over || document.visibilityState !== 'visible') return
      try {
        const sentinel = await wakeLock.request('screen')
        if (over) return void sentinel.release().catch(nothing)
        held = sentinel
        setState('on')
      } catch {
        // Refused while hidden or to save the battery: said, and tried again when the page comes back.
        if (!over) setState('cannot')
      }
    }
    const again = (): void => void take()
    document.addEventListener('visibilitychange', again)
    again()
    return () => {
      over = true
      document.removeEventListener('visibilitychange', again)
      void held?.release().catch(nothing)
    }
  }, [wanted])
  return state
}

const nothing = (): undefined => undefined
