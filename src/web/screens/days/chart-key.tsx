/** The key of bars and lines: only those that the drawing uses. */
import { labelOf } from '#words'
import { useHatches } from '../../parts/index.ts'
import type { ZoneDays } from './zone-days.ts'

export type ChartKeyProps = { readonly rows: readonly ZoneDays[] }

export const ChartKey = ({ rows }: ChartKeyProps) => {
  const hatches = useHatches(['wait'])
  const bars = new Set(rows.flatMap((row) => row.bars.map(({ kind }) => kind)))
  const lines = rows.flatMap((row) => row.lines)
  const used = [
    bars.has('coat'),
    bars.has('split') || bars.has('key'),
    lines.some(({ kind }) => kind === 'wait'),
    lines.some(({ kind }) => kind === 'window'),
    lines.some(({ shut }) => shut),
  ]
  return (
    <ul className="days-key">
      {used[0] ? (
        <li>
          <svg width="34" height="18" aria-hidden="true">
            <rect x="1" y="2" width="32" height="14" fill="var(--ink)" />
          </svg>
          {labelOf('daysScreen.coat')}
        </li>
      ) : null}
      {used[1] ? (
        <li>
          <svg width="34" height="18" aria-hidden="true">
            <rect
              x="1"
              y="2"
              width="32"
              height="14"
              fill="var(--raised)"
              stroke="var(--ink)"
              strokeWidth="1.5"
            />
          </svg>
          {labelOf('daysScreen.split')}
        </li>
      ) : null}
      {used[2] ? (
        <li>
          <svg width="34" height="18" aria-hidden="true">
            {hatches.defs}
            <rect
              y="3"
              width="34"
              height="12"
              fill={hatches.fill('wait')}
              stroke="var(--hair)"
              strokeWidth="0.75"
            />
          </svg>
          {labelOf('daysScreen.wait')}
        </li>
      ) : null}
      {used[3] ? (
        <li>
          <svg width="34" height="18" aria-hidden="true">
            <path d="M1 9H33M1 2V16M33 2V16" stroke="var(--ink)" strokeWidth="1.5" />
          </svg>
          {labelOf('daysScreen.windowKey')}
        </li>
      ) : null}
      {used[4] ? (
        <li>
          <svg width="34" height="18" aria-hidden="true">
            <path d="M1 9H26M1 2V16" stroke="var(--ink)" strokeWidth="1.5" />
            <path d="M26 0l4 3-7 3 7 3-7 3 7 3-4 3" fill="none" stroke="var(--fault)" strokeWidth="2" />
          </svg>
          {labelOf('daysScreen.shut')}
        </li>
      ) : null}
    </ul>
  )
}
