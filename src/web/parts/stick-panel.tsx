/** The whole stick stood up over the screen of a phone. */
import type { ReactNode } from 'react'
import { labelOf } from '#words'
import './stick-panel.css'
import { Button } from './button.tsx'
import { useModal } from './use-modal.ts'

export type StickPanelProps = {
  readonly onClose: () => void
  readonly more?: ReactNode
  readonly children: ReactNode
}

export const StickPanel = ({ onClose, more, children }: StickPanelProps) => {
  const dialog = useModal({ onClose })
  return (
    <dialog ref={dialog} className="stick-panel" aria-label={labelOf('screenPart.rooms')}>
      <div className="stick-panel-stick">{children}</div>
      <div className="stick-panel-more">
        {more}
        <Button onClick={onClose}>{labelOf('screenPart.close')}</Button>
      </div>
    </dialog>
  )
}
