/** Which page the address shows, and going to another one without loading anew. */
import { useCallback } from 'react'
import { useLocation } from 'wouter'

export type Page =
  | { readonly kind: 'jobs' }
  | { readonly kind: 'new' }
  | { readonly kind: 'sums'; readonly path: string }
  | { readonly kind: 'parts' }
  | { readonly kind: 'job'; readonly id: string; readonly room: string; readonly rest: string }
  | { readonly kind: 'unknown' }

/** The room a job opens with. */
export const firstRoom = 'today'

export function pageOf(path: string): Page {
  const [first = '', second = '', third = '', ...more] = path.split('/').filter((part) => part !== '')
  if (first === '') return { kind: 'jobs' }
  if (first === 'new' && second === '') return { kind: 'new' }
  if (first === 'parts' && second === '') return { kind: 'parts' }
  if (first === 'sums') return { kind: 'sums', path }
  if (first === 'job' && second !== '') {
    return { kind: 'job', id: second, room: third || firstRoom, rest: more.map(decoded).join('/') }
  }
  return { kind: 'unknown' }
}

const decoded = (part: string): string => {
  try {
    return decodeURIComponent(part)
  } catch {
    return part
  }
}

export function usePage(): { readonly page: Page; readonly go: (href: string) => void } {
  const [path, navigate] = useLocation()
  const go = useCallback(
    (href: string) => {
      navigate(href)
      scrollTo(0, 0)
    },
    [navigate],
  )
  return { page: pageOf(path), go }
}
