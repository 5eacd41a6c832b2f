/** A link inside the program: a plain click goes there without loading the page; with a key held, as the browser does. */
import type { AnchorHTMLAttributes, MouseEvent } from 'react'

export type SumLinkProps = AnchorHTMLAttributes<HTMLAnchorElement> & {
  readonly href: string
  readonly go: (href: string) => void
}

export const SumLink = ({ href, go, ...rest }: SumLinkProps) => (
  <a href={href} onClick={(event) => follow(event, () => go(href))} {...rest} />
)

export function follow(event: MouseEvent, go: () => void): void {
  const { button, metaKey, ctrlKey, shiftKey, altKey } = event
  if (button !== 0 || metaKey || ctrlKey || shiftKey || altKey) return
  event.preventDefault()
  go()
}
