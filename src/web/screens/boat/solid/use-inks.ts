/** The colours of the look as they are on this page now: by day, by night, by contrast, or forced on the system. */
import { useEffect, useState } from 'react'
import { type Inks, inkNames } from './picture.ts'

const queries = [
  '(prefers-color-scheme: dark)',
  '(prefers-contrast: more)',
  '(forced-colors: active)',
  'print',
]

export function useInks(): Inks {
  const [inks, setInks] = useState(readInks)
  useEffect(() => {
    const look = (): void => setInks(readInks())
    const lists = queries.map((query) => matchMedia(query))
    for (const list of lists) list.addEventListener('change', look)
    const watch = new MutationObserver(look)
    watch.observe(document.documentElement, { attributes: true, attributeFilter: ['data-theme'] })
    return () => {
      for (const list of lists) list.removeEventListener('change', look)
      watch.disconnect()
    }
  }, [])
  return inks
}

/** Through an element that wears them: only then a colour of the system is a colour. */
function readInks(): Inks {
  const probe = document.createElement('span')
  probe.hidden = true
  document.body.append(probe)
  const read = (name: string): string => {
    probe.style.color = `var(--${name})`
    return getComputedStyle(probe).color
  }
  const inks = Object.fromEntries(inkNames.map((name) => [name, read(name)])) as Inks
  probe.remove()
  return inks
}
