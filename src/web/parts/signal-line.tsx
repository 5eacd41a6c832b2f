/** A caution that was read, on one line: the signal word and its first words; one tap opens it again. */
import type { ReactNode } from 'react'
import { labelOf } from '#words'
import type { Signal } from './caution-panel.tsx'
import { classes } from './classes.ts'
import './signal-line.css'

export type SignalLineProps = {
  readonly signal: Signal
  readonly first: string
  readonly children: ReactNode
}

export const SignalLine = ({ signal, first, children }: SignalLineProps) => (
  <details className={classes('signal-line', `signal-line-${signal}`)}>
    <summary className="signal-line-head">
      <span className="signal-line-word keep-colour">{labelOf(`signal.${signal}`)}</span>
      <span className="signal-line-first">{first}</span>
    </summary>
    <div className="signal-line-text">{children}</div>
  </details>
)
