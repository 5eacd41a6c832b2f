/** A cup in section with a level line for each part, poured in order, and a leader to its figures. */
import { labelOf } from '#words'
import { FigureText } from '../../parts/index.ts'
import { type Hatches, useHatches } from '../../parts/use-hatches.tsx'
import { type CupLevel, cupLevels, cupWidth } from './cup-levels.ts'
import { resultText } from './result-text.ts'
import { numberOf } from './say-sum.ts'
import type { SumDrawingProps } from './sum-props.ts'

const rowHigh = 76
const cup = { middle: 64, half: 52, top: 8, wide: 150 }

const letters: Readonly<Record<string, string>> = { base: 'A', hardener: 'B' }

export const MixCup = ({ answer, words }: SumDrawingProps) => {
  const hatches = useHatches(['twoPart-finish', 'wait'])
  const levels = cupLevels(
    ['base', 'hardener', 'thinner', 'additive'].map((key) => ({
      key,
      volumeMl: numberOf(answer, `${key}Ml`) ?? 0,
    })),
  )
  const high = Math.max(3, levels.length) * rowHigh
  const ml = (key: string, value: number): string => resultText({ key, value, dimension: 'volume' }, words)
  const rows = levels.toReversed()
  const label = words.sentence('sumscreen.cupDrawing', {
    levels: levels.map(({ key, toMl }) => `${labelOf(`result.${key}Ml`)} ${ml('levelMl', toMl)}`).join(', '),
  })
  return (
    <div className="sums-cup">
      <svg width={cup.wide} height={high} role="img" aria-label={label}>
        {hatches.defs}
        {levels.map((level, index) => (
          <Filled
            key={level.key}
            level={level}
            from={levels[index - 1]?.height ?? 0}
            high={high}
            hatches={hatches}
          />
        ))}
        <Outline high={high} />
        {rows.map((level, index) => (
          <path
            key={level.key}
            d={leader(level, { high, row: index })}
            fill="none"
            stroke="var(--ink)"
            strokeWidth="1.5"
          />
        ))}
      </svg>
      <ul className="sums-cup-rows">
        {rows.map(({ key, volumeMl, toMl }) => {
          const mass = numberOf(answer, `${key}G`)
          return (
            <li key={key} className="sums-cup-row" style={{ height: rowHigh }}>
              <span>{labelOf(`result.${key}Ml`)}</span>
              <span className="sums-cup-aside">
                {mass === undefined
                  ? ''
                  : resultText({ key: `${key}G`, value: mass, dimension: 'mass' }, words)}
              </span>
              <FigureText text={ml(`${key}Ml`, volumeMl)} certainty="worked" size="mix" />
              <span className="sums-cup-aside">{words.sentence('sumscreen.levelTo', { levelMl: toMl })}</span>
            </li>
          )
        })}
      </ul>
    </div>
  )
}

const yOf = (height: number, high: number): number => high - 6 - height * (high - 6 - cup.top)

type FilledProps = {
  readonly level: CupLevel
  /** Height of the level below. */
  readonly from: number
  readonly high: number
  readonly hatches: Hatches
}

const Filled = ({ level, from, high, hatches }: FilledProps) => {
  const [low, up] = [yOf(from, high), yOf(level.height, high)]
  const [narrow, wide] = [cupWidth(from) * cup.half, cupWidth(level.height) * cup.half]
  const { middle } = cup
  const letter = letters[level.key]
  const shape = `M${middle - narrow} ${low}H${middle + narrow}L${middle + wide} ${up}H${middle - wide}Z`
  return (
    <>
      <path d={shape} {...fillOf(level.key, hatches)} />
      <path d={`M${middle - wide - 6} ${up}H${middle + wide + 6}`} stroke="var(--ink)" strokeWidth="1.5" />
      {letter === undefined || low - up < 30 ? null : (
        <>
          <rect x={middle - 12} y={(low + up) / 2 - 14} width="24" height="28" fill="var(--paper)" />
          <text x={middle} y={(low + up) / 2 + 9} textAnchor="middle" className="sums-cup-letter">
            {letter}
          </text>
        </>
      )}
    </>
  )
}

function fillOf(key: string, hatches: Hatches) {
  if (key === 'base') return { fill: hatches.fill('twoPart-finish') }
  if (key === 'hardener') return { fill: hatches.fill('wait') }
  return key === 'thinner' ? { fill: 'var(--water)', fillOpacity: 0.3 } : { fill: 'var(--inset)' }
}

const Outline = ({ high }: { readonly high: number }) => {
  const { middle, half, top } = cup
  const foot = cupWidth(0) * half
  return (
    <path
      d={`M${middle - half} ${top}L${middle - foot} ${high - 6}H${middle + foot}L${middle + half} ${top}`}
      fill="none"
      stroke="var(--ink)"
      strokeWidth="2.5"
    />
  )
}

/** From the level at the right of the cup to the middle of its row. */
function leader(
  { height }: CupLevel,
  { high, row }: { readonly high: number; readonly row: number },
): string {
  const from = cup.middle + cupWidth(height) * cup.half + 6
  return `M${from} ${yOf(height, high)}L${cup.wide - 10} ${row * rowHigh + 44}H${cup.wide}`
}
