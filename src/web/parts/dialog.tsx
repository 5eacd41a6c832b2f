/** A dialog over the sheet: a question with its buttons, or a form. Escape and the outside close it; focus comes back. */
import { type ReactNode, useId } from 'react'
import { createPortal } from 'react-dom'
import './dialog.css'
import { useModal } from './use-modal.ts'

export type DialogProps = {
  readonly title: ReactNode
  readonly onClose: () => void
  readonly children?: ReactNode
  /** Buttons, the next thing to do last. */
  readonly actions?: ReactNode
  /** A form of several columns. */
  readonly wide?: boolean | undefined
}

/** Stands there while it is rendered: `{asking ? <Dialog …/> : null}`. */
export const Dialog = ({ title, onClose, children, actions, wide = false }: DialogProps) => {
  const dialog = useModal({ onClose })
  const heading = useId()
  return createPortal(
    <dialog ref={dialog} className={wide ? 'dialog dialog-wide' : 'dialog'} aria-labelledby={heading}>
      <div className="dialog-body">
        <h2 className="dialog-title" id={heading}>
          {title}
        </h2>
        <div className="dialog-text">{children}</div>
        {actions === undefined ? null : <div className="dialog-actions">{actions}</div>}
      </div>
    </dialog>,
    document.body,
  )
}
