/** Opens a native dialog as soon as it stands there: it keeps the focus inside, closes on Escape and gives it back. */
import { type RefObject, useEffect, useLayoutEffect, useRef } from 'react'

export type ModalOptions = {
  /** Escape, a click outside, or the dialog's own close. */
  readonly onClose: () => void
  /** It stands under this element, or over it where there is no room below. */
  readonly beside?: RefObject<HTMLElement | null>
}

export function useModal({ onClose, beside }: ModalOptions): RefObject<HTMLDialogElement | null> {
  const dialog = useRef<HTMLDialogElement>(null)
  const latest = useRef(onClose)
  useEffect(() => {
    latest.current = onClose
  })
  // Before it is taken away: a dialog that is removed while open does not give the focus back.
  useLayoutEffect(() => {
    const shown = dialog.current
    if (shown === null) return
    shown.showModal()
    const stop = listen(shown, () => latest.current())
    const keepPlace = beside ? follow(shown, beside) : undefined
    return () => {
      stop()
      keepPlace?.()
      shown.close()
    }
  }, [beside])
  return dialog
}

function listen(dialog: HTMLDialogElement, onClose: () => void): () => void {
  // The event comes late: by then the dialog may have been opened anew.
  const closed = (): void => {
    if (!dialog.open) onClose()
  }
  const clicked = (event: MouseEvent): void => {
    if (event.target === dialog && isOutside(dialog, event)) dialog.close()
  }
  dialog.addEventListener('close', closed)
  dialog.addEventListener('click', clicked)
  return () => {
    dialog.removeEventListener('close', closed)
    dialog.removeEventListener('click', clicked)
  }
}

function isOutside(dialog: HTMLDialogElement, { clientX, clientY }: MouseEvent): boolean {
  const { left, right, top, bottom } = dialog.getBoundingClientRect()
  return clientX < left || clientX > right || clientY < top || clientY > bottom
}

/** What is told later makes it taller. */
function follow(dialog: HTMLDialogElement, beside: RefObject<HTMLElement | null>): () => void {
  const toAnchor = (): void => {
    if (beside.current) place(dialog, beside.current.getBoundingClientRect())
  }
  toAnchor()
  const watch = new ResizeObserver(toAnchor)
  watch.observe(dialog)
  return () => watch.disconnect()
}

const edge = 8

function place(dialog: HTMLDialogElement, anchor: DOMRect): void {
  const { width, height } = dialog.getBoundingClientRect()
  const { innerWidth, innerHeight } = window
  const left = Math.max(edge, Math.min(anchor.left, innerWidth - width - edge))
  const below = anchor.bottom + edge
  const above = Math.max(edge, anchor.top - height - edge)
  dialog.style.setProperty('--beside-left', `${left}px`)
  dialog.style.setProperty('--beside-top', `${below + height + edge <= innerHeight ? below : above}px`)
}
