/** The cell that the address asks for: its item is opened, its box shown and ready to be typed in. */
import { type RefObject, useEffect, useRef } from 'react'
import { navigate, useSearch } from 'wouter/use-browser-location'
import type { CellPlace, CollectionPlace } from '../job/job-view.ts'

const query = 'set'

const textOf = ({ part, section, item, key }: CellPlace): string =>
  [part, section, item ?? '', key].map(encodeURIComponent).join('/')

/** Behind the address of the room in which the cell is. */
export const cellAddress = (place: CellPlace): string => `?${query}=${encodeURIComponent(textOf(place))}`

/** The item of a collection whose cell is asked for. */
export function useAskedItem({ part, section }: CollectionPlace): string | undefined {
  const asked = new URLSearchParams(useSearch({ ssrSearch: '' }))
    .get(query)
    ?.split('/')
    .map(decodeURIComponent)
  return asked?.[0] === part && asked[1] === section && asked[2] !== '' ? asked[2] : undefined
}

/** For what holds the box; once it is shown the address asks no more. */
export function useAskedCell(place: CellPlace): RefObject<HTMLDivElement | null> {
  const holder = useRef<HTMLDivElement>(null)
  const asked = new URLSearchParams(useSearch({ ssrSearch: '' })).get(query) === textOf(place)
  useEffect(() => {
    if (!asked || !holder.current) return
    show(holder.current)
    navigate(location.pathname, { replace: true })
  }, [asked])
  return holder
}

function show(holder: HTMLElement): void {
  for (let fold = holder.closest('details'); fold; fold = fold.parentElement?.closest('details') ?? null)
    fold.open = true
  const box = holder.querySelector<HTMLElement>('input, select, textarea')
  box?.focus({ preventScroll: true })
  box?.scrollIntoView({ block: 'center' })
}
