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
  /** Time runs down, beside an `UprightTape`; its parent gives the height. */
  readonly upright?: boolean | undefined
}

export const HoursStrip = ({ spans, label, height = 18, upright = false, ...axis }: HoursStripProps) => {
  const hatches = useHatches(['risky'])
  const size = upright ? { width: height + 1, height: '100%' } : { width: '100%', height: height + 1 }
  const foot = upright
    ? { x1: 0.5, x2: 0.5, y1: 0, y2: '100%' }
    : { x1: 0, x2: '100%', y1: height + 0.5, y2: height + 0.5 }
  return (
    <svg className="hours-strip" {...size} role="img" aria-label={label}>
      {hatches.defs}
      <line {...foot} stroke="var(--hair)" />
      {spans
        .filter((span) => span.toMs > axis.fromMs && span.fromMs < axis.toMs)
        .map((span) => (
          <Hours key={`${span.kind} ${span.fromMs}`} {...{ span, axis, height, upright, hatches }} />
        ))}
    </svg>
  )
}

type HoursProps = {
  readonly span: HourSpan
  readonly axis: TimeSpan
  readonly height: number
  readonly upright: boolean
  readonly hatches: ReturnType<typeof useHatches>
}

const Hours = ({ span, axis, height, upright, hatches }: HoursProps) => {
  const from = shareOf(span.fromMs, axis)
  const [at, long] = [percent(from), percent(shareOf(span.toMs, axis) - from)]
  /** So high, its foot on the line; of an upright strip so wide. */
  const box = (high: number, above = 0) =>
    upright
      ? { x: above, y: at, width: high, height: long }
      : { x: at, y: height - above - high, width: long, height: high }
  const low = Math.round((height * 2) / 3)
  switch (span.kind) {
    case 'go':
      return (
        <>
          <rect {...box(height)} fill="var(--go)" />
          <rect {...box(2.5, height - 2.5)} fill="var(--ink)" />
        </>
      )
    case 'risky':
      return <rect {...box(low)} fill={hatches.fill('risky')} stroke="var(--risky-hatch)" />
    case 'unknown':
      return (
        <rect {...box(low)} fill="none" stroke="var(--ink)" strokeWidth="1.5" strokeDasharray="1.5 2.5" />
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
