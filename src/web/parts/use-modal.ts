/** Opens a native dialog as soon as it stands there: it keeps the focus inside, closes on Escape and gives it back. */
import { type RefObject, useEffect, useRef } from 'react'

export type ModalBeside = { readonly beside?: RefObject<HTMLElement | null> }

/** With `beside`, it stands under that element, or over it where there is no room below. */
export function useModal({ beside }: ModalBeside = {}): RefObject<HTMLDialogElement | null> {
  const dialog = useRef<HTMLDialogElement>(null)
  useEffect(() => {
    const shown = dialog.current
    if (shown === null) return
    if (!shown.open) shown.showModal()
    const anchor = beside?.current
    if (anchor) place(shown, anchor.getBoundingClientRect())
    return () => shown.close()
  }, [beside])
  return dialog
}

const edge = 8

function place(dialog: HTMLDialogElement, anchor: DOMRect): void {
  const { width, height } = dialog.getBoundingClientRect()
  const { innerWidth, innerHeight } = window
  const left = Math.max(edge, Math.min(anchor.left, innerWidth - width - edge))
  const below = anchor.bottom + edge
  const top = below + height + edge <= innerHeight ? below : Math.max(edge, anchor.top - height - edge)
  dialog.style.setProperty('--beside-left', `${left}px`)
  dialog.style.setProperty('--beside-top', `${Math.min(top, Math.max(edge, innerHeight - height - edge))}px`)
}
