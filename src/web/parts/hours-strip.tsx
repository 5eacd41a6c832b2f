/** Hours on a line: height is permission. Go stands tall with an ink top, risky lower and hatched, no is flat. */
import { labelOf } from '#words'
import './hours-strip.css'
import { percent, shareOf, type TimeSpan } from './time-axis.ts'
import { useHatches } from './use-hatches.tsx'

export type HourKind = 'go' | 'risky' | 'no' | 'unknown'

export type HourSpan = TimeSpan & { readonly kind: HourKind }

export type HoursStripProps = TimeSpan & {
  readonly spans: readonly HourSpan[]
  /** Worded, for screen readers: "Port side: can be painted 07:00 to 11:00". */
  readonly label: string
  /** Go hours stand this high; the rest in proportion. */
  readonly height?: number | undefined
}

export const HoursStrip = ({ spans, label, height = 18, ...axis }: HoursStripProps) => {
  const hatches = useHatches(['risky'])
  return (
    <svg className="hours-strip" width="100%" height={height + 1} role="img" aria-label={label}>
      {hatches.defs}
      <line x1="0" x2="100%" y1={height + 0.5} y2={height + 0.5} stroke="var(--hair)" />
      {spans
        .filter((span) => span.toMs > axis.fromMs && span.fromMs < axis.toMs)
        .map((span) => (
          <Hours key={`${span.kind} ${span.fromMs}`} span={span} axis={axis} {...{ height, hatches }} />
        ))}
    </svg>
  )
}

type HoursProps = {
  readonly span: HourSpan
  readonly axis: TimeSpan
  readonly height: number
  readonly hatches: ReturnType<typeof useHatches>
}

const Hours = ({ span, axis, height, hatches }: HoursProps) => {
  const from = shareOf(span.fromMs, axis)
  const across = { x: percent(from), width: percent(shareOf(span.toMs, axis) - from) }
  const low = Math.round((height * 2) / 3)
  switch (span.kind) {
    case 'go':
      return (
        <>
          <rect {...across} y="0" height={height} fill="var(--go)" />
          <rect {...across} y="0" height="2.5" fill="var(--ink)" />
        </>
      )
    case 'risky':
      return (
        <rect
          {...across}
          y={height - low}
          height={low}
          fill={hatches.fill('risky')}
          stroke="var(--risky-hatch)"
        />
      )
    case 'unknown':
      return (
        <rect
          {...across}
          y={height - low}
          height={low}
          fill="none"
          stroke="var(--ink)"
          strokeWidth="1.5"
          strokeDasharray="1.5 2.5"
        />
      )
    case 'no':
      return null
  }
}

const kinds: readonly HourKind[] = ['go', 'risky', 'no', 'unknown']

/** The key of the hours: only those that the drawing above it uses. */
export const HoursKey = ({ used = kinds }: { readonly used?: readonly HourKind[] | undefined }) => (
  <ul className="hours-strip-key">
    {kinds
      .filter((kind) => used.includes(kind))
      .map((kind) => (
        <li key={kind}>
          <span className="hours-strip-key-mark" aria-hidden="true">
            <HoursStrip fromMs={0} toMs={1} spans={[{ kind, fromMs: 0, toMs: 1 }]} label="" />
          </span>
          {labelOf(`hourKind.${kind}`)}
        </li>
      ))}
  </ul>
)
