/** The taper in section with the discs of cloth stepped in it, smallest at the ground; widths to scale, depth is not. */
import { Dimension } from '../../parts/index.ts'
import { useHatches } from '../../parts/use-hatches.tsx'
import { resultText } from './result-text.ts'
import { givenNumber, listOf, numberOf } from './say-sum.ts'
import type { SumDrawingProps } from './sum-props.ts'

const wide = 340
const middle = wide / 2
/** Half of the drawing that the taper takes; laminate stands at both ends of it. */
const reach = 130
const top = 30
const deep = 150
const lettered = 9

export const BevelSection = ({ answer, words }: SumDrawingProps) => {
  const hatches = useHatches(['glass', 'wait'])
  const discs = listOf(answer, 'discsMm').map(Number)
  const across = numberOf(answer, 'outerDiameterMm') ?? 0
  const hole = givenNumber(answer, 'holeMm') ?? 0
  if (discs.length === 0 || across <= 0) return null
  const half = (diameterMm: number): number => (diameterMm / across) * reach
  const step = deep / discs.length
  const bottom = top + deep
  const length = (value: number): string => resultText({ key: 'discMm', value, dimension: 'length' }, words)
  const label = words.sentence('sumscreen.bevelDrawing', { discs: discs.length, outerDiameterMm: across })
  const every = Math.ceil(discs.length / lettered)
  return (
    <svg className="sums-drawing" viewBox={`0 0 ${wide} 250`} role="img" aria-label={label}>
      {hatches.defs}
      {[-1, 1].map((side) => (
        <path
          key={side}
          d={`M${middle + side * reach} ${top}H${middle + side * (middle - 2)}V${bottom}H${middle + side * half(hole)}Z`}
          fill={hatches.fill('glass')}
          stroke="var(--ink)"
          strokeWidth="2"
        />
      ))}
      {discs.map((disc, index) => (
        <rect
          key={disc}
          x={middle - half(disc)}
          y={bottom - (index + 1) * step}
          width={2 * half(disc)}
          height={step}
          fill="var(--raised)"
          stroke="var(--ink)"
          strokeWidth={discs.length > 30 ? 0.5 : 1.2}
        />
      ))}
      {discs.map((disc, index) =>
        index % every === 0 ? (
          <text
            key={disc}
            x={middle}
            y={bottom - (index + 0.5) * step + 5}
            textAnchor="middle"
            className={step * every < 15 ? 'sums-disc-small' : undefined}
          >
            {length(disc)}
          </text>
        ) : null,
      )}
      <path d={`M2 ${bottom}H${wide - 2}`} stroke="var(--ink)" strokeWidth="2.5" />
      <Dimension
        from={middle - reach}
        to={middle + reach}
        at={220}
        extendFrom={bottom + 6}
        text={length(across)}
        certainty="worked"
      />
    </svg>
  )
}
