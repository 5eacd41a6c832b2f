/** The key of the bars and lines. */
import { labelOf } from '#words'
import { useHatches } from '../../parts/index.ts'

export const ChartKey = () => {
  const hatches = useHatches(['wait'])
  return (
    <ul className="days-key">
      <li>
        <svg width="34" height="18" aria-hidden="true">
          <rect x="1" y="2" width="32" height="14" fill="var(--ink)" />
        </svg>
        {labelOf('daysScreen.coat')}
      </li>
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
      <li>
        <svg width="34" height="18" aria-hidden="true">
          <path d="M1 9H33M1 2V16M33 2V16" stroke="var(--ink)" strokeWidth="1.5" />
        </svg>
        {labelOf('daysScreen.windowKey')}
      </li>
      <li>
        <svg width="34" height="18" aria-hidden="true">
          <path d="M1 9H26M1 2V16" stroke="var(--ink)" strokeWidth="1.5" />
          <path d="M26 0l4 3-7 3 7 3-7 3 7 3-4 3" fill="none" stroke="var(--fault)" strokeWidth="2" />
        </svg>
        {labelOf('daysScreen.shut')}
      </li>
    </ul>
  )
}
