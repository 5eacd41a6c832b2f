/** Long work: a rule that fills, with ticks at every tenth, and what has been found so far. */
import type { ReactNode } from 'react'
import './progress.css'
import { bounded } from './time-axis.ts'

export type ProgressProps = {
  readonly label: string
  /** 0 to 1; undefined while nobody knows how long it takes. */
  readonly share?: number | undefined
  /** What it has found so far. */
  readonly found?: ReactNode
}

const tenths = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10]

export const Progress = ({ label, share, found }: ProgressProps) => {
  const done = share === undefined ? undefined : Math.round(bounded(share) * 100)
  return (
    <div className="progress">
      <p className="progress-label">{label}</p>
      <svg
        className="progress-rule"
        width="100%"
        height="18"
        role="progressbar"
        aria-label={label}
        aria-valuemin={0}
        aria-valuemax={100}
        aria-valuenow={done}
      >
        <line x1="0" x2="100%" y1="16" y2="16" stroke="var(--hair)" />
        {tenths.map((tenth) => (
          <line
            key={tenth}
            x1={`${tenth === 10 ? 99.8 : tenth === 0 ? 0.2 : tenth * 10}%`}
            x2={`${tenth === 10 ? 99.8 : tenth === 0 ? 0.2 : tenth * 10}%`}
            y1={tenth % 5 === 0 ? 4 : 9}
            y2="16"
            stroke="var(--ink)"
          />
        ))}
        {done === undefined ? (
          <line x1="0" x2="100%" y1="15" y2="15" stroke="var(--ink)" strokeWidth="3" strokeDasharray="2 8" />
        ) : (
          <rect x="0" y="12" width={`${done}%`} height="5" fill="var(--ink)" />
        )}
      </svg>
      {found === undefined ? null : <div className="progress-found">{found}</div>}
    </div>
  )
}
