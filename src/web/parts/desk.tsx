/** The board with the stick at its left and the sheet on it; on a phone the sheet fills it and the stick lies below. */
import type { ReactNode } from 'react'
import './desk.css'

export type DeskProps = {
  readonly stick: ReactNode
  /** Banners, over the sheet. */
  readonly banner?: ReactNode
  readonly children: ReactNode
}

export const Desk = ({ stick, banner, children }: DeskProps) => (
  <div className="desk">
    {stick}
    <div className="desk-sheet">
      {banner}
      {children}
    </div>
  </div>
)
