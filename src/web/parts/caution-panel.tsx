/** A signal panel after ANSI Z535: head with triangle and word, body in ink, and the disc of what must be worn. */
import type { ReactNode } from 'react'
import { labelOf } from '#words'
import './caution-panel.css'
import { classes } from './classes.ts'
import { Disc, type DiscKind } from './disc.tsx'

export type Signal = 'danger' | 'warning' | 'caution' | 'notice'

export type CautionPanelProps = {
  readonly signal: Signal
  /** What must be worn or done, as white figures on blue. */
  readonly discs?: readonly DiscKind[]
  /** Ends by deferring to the product's own safety sheet. */
  readonly children: ReactNode
}

export const CautionPanel = ({ signal, discs = [], children }: CautionPanelProps) => (
  <div className={classes('caution-panel', `caution-panel-${signal}`)} role="note">
    <p className="caution-panel-head keep-colour">
      {signal === 'notice' ? null : <Triangle />}
      {labelOf(`signal.${signal}`)}
    </p>
    <div className="caution-panel-body">
      {discs.length === 0 ? null : (
        <div className="caution-panel-discs">
          {discs.map((kind) => (
            <Disc key={kind} kind={kind} />
          ))}
        </div>
      )}
      <div className="caution-panel-text">{children}</div>
    </div>
  </div>
)

/** The safety alert sign. */
const Triangle = () => (
  <svg width="26" height="24" viewBox="0 0 26 24" aria-hidden="true">
    <path d="M13 1 25.5 23H.5Z" fill="var(--caution-panel-on)" />
    <path d="M11.4 8h3.2l-.7 8.2h-1.8Z" fill="var(--caution-panel-fill)" />
    <circle cx="13" cy="19.3" r="1.6" fill="var(--caution-panel-fill)" />
  </svg>
)
