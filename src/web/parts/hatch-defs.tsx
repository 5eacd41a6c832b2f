/** Hatches as SVG patterns, by the same rules as on paper: direction is the family, density the kind. */
import { hatchRule, type HatchName as PaperHatch } from '#papers'

/** The hatches of papers, and those that only screens draw. */
export type HatchName = PaperHatch | 'balsa' | 'foam'

export type HatchUnit = 'px' | 'mm'

const pxPerMm = 96 / 25.4

export type HatchDefsProps = {
  /** Unlike any other on the page: `useId()`. */
  readonly id: string
  readonly names: readonly HatchName[]
  /** What one unit of the drawing is. */
  readonly unit?: HatchUnit | undefined
}

/** Inside an `svg`; then `fill={hatchUrl(id, name)}`. */
export const HatchDefs = ({ id, names, unit = 'px' }: HatchDefsProps) => (
  <defs>
    {[...new Set(names)].map((name) => (
      <Hatch key={name} id={hatchId(id, name)} name={name} scale={unit === 'px' ? pxPerMm : 1} />
    ))}
  </defs>
)

export const hatchUrl = (id: string, name: HatchName): string => `url(#${hatchId(id, name)})`

const hatchId = (id: string, name: HatchName): string => `${id}-${name}`

type HatchProps = { readonly id: string; readonly name: HatchName; readonly scale: number }

const Hatch = ({ id, name, scale }: HatchProps) => {
  if (name === 'balsa' || name === 'foam') return <Core id={id} name={name} scale={scale} />
  const rule = hatchRule(name)
  if (rule.kind === 'weave') return <Weave id={id} scale={scale} />
  const ink = name === 'risky' ? 'var(--risky-hatch)' : 'var(--ink2)'
  const width = (name === 'risky' ? 0.42 : 0.26) * scale
  const gap = rule.gap * scale
  const side = rule.angles.length > 1 ? gap : gap * 4
  return (
    <pattern
      id={id}
      patternUnits="userSpaceOnUse"
      width={side}
      height={gap}
      patternTransform={`rotate(${-(rule.angles[0] ?? 0)})`}
    >
      {name === 'risky' ? <rect width={side} height={gap} fill="var(--risky)" fillOpacity="0.32" /> : null}
      <path d={`M0 ${gap / 2}H${side}`} stroke={ink} strokeWidth={width} />
      {rule.angles.length > 1 ? <path d={`M${gap / 2} 0V${gap}`} stroke={ink} strokeWidth={width} /> : null}
      {rule.dots ? (
        <>
          <circle cx={side / 4} cy="0" r={0.2 * scale} fill={ink} />
          <circle cx={side / 4} cy={gap} r={0.2 * scale} fill={ink} />
          <circle cx={(side * 3) / 4} cy="0" r={0.2 * scale} fill={ink} />
          <circle cx={(side * 3) / 4} cy={gap} r={0.2 * scale} fill={ink} />
        </>
      ) : null}
    </pattern>
  )
}

/** Cut yarns as lenses, and a dash for the ply between their rows. */
const Weave = ({ id, scale }: Omit<HatchProps, 'name'>) => (
  <pattern
    id={id}
    patternUnits="userSpaceOnUse"
    width={4.6 * scale}
    height={4.6 * scale}
    fill="none"
    stroke="var(--ink2)"
    strokeWidth="0.26"
  >
    <g transform={`scale(${scale})`}>
      <path d="M.2 1.15Q2.3.2 4.4 1.15 2.3 2.1.2 1.15ZM-2.1 3.45Q0 2.5 2.1 3.45 0 4.4-2.1 3.45ZM2.5 3.45Q4.6 2.5 6.7 3.45 4.6 4.4 2.5 3.45Z" />
      <path d="M.6 2.3H4M-1.7 0H1.7M2.9 0H6.3M-1.7 4.6H1.7M2.9 4.6H6.3" />
    </g>
  </pattern>
)

/** Balsa: upright grain with ticks. Foam: open rings. */
const Core = ({ id, name, scale }: HatchProps) => (
  <pattern
    id={id}
    patternUnits="userSpaceOnUse"
    width={3.2 * scale}
    height={3.2 * scale}
    fill="none"
    stroke="var(--ink2)"
    strokeWidth="0.26"
  >
    <g transform={`scale(${scale})`}>
      {name === 'balsa' ? (
        <path d="M.8 0V3.2M2.4 0V3.2M.8 .8H1.3M2.4 2.4H1.9" />
      ) : (
        <>
          <circle cx=".8" cy=".8" r=".5" />
          <circle cx="2.4" cy="2.4" r=".5" />
        </>
      )}
    </g>
  </pattern>
)
