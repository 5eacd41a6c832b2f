/** The pot life of a mix as a bar: what is used hatched, now as a line, the last tenth risky. */
import { bounded, percent } from './time-axis.ts'
import { useHatches } from './use-hatches.tsx'

export type PotBarProps = {
  /** 0 to 1 of the pot life. */
  readonly usedShare: number
  /** Worded: "38 min left of 70". */
  readonly label: string
}

const lastShare = 0.1

export const PotBar = ({ usedShare, label }: PotBarProps) => {
  const hatches = useHatches(['wait', 'risky'])
  const used = bounded(usedShare)
  return (
    <svg className="pot-bar" width="100%" height="20" role="img" aria-label={label}>
      {hatches.defs}
      <rect
        x={percent(1 - lastShare)}
        y="1"
        width={percent(lastShare)}
        height="18"
        fill={hatches.fill('risky')}
      />
      <rect x="0" y="1" width={percent(used)} height="18" fill={hatches.fill('wait')} />
      <svg x={percent(1 - lastShare)} overflow="visible" aria-hidden="true">
        <path d="M0 1V19" stroke="var(--ink)" strokeWidth="1.5" />
      </svg>
      <rect
        x="1"
        y="1"
        height="18"
        fill="none"
        stroke="var(--ink)"
        strokeWidth="2"
        style={{ width: 'calc(100% - 2px)' }}
      />
      <svg x={percent(used)} overflow="visible" aria-hidden="true">
        <path d="M0 0V20" stroke="var(--act)" strokeWidth="4" />
      </svg>
    </svg>
  )
}
