/** A cup in section, filled in the order of pouring, with a level line for each part and its leader to a row of figures. */
import type { ReactNode } from 'react'
import { FigureText } from '../../parts/index.ts'
import { type Hatches, useHatches } from '../../parts/use-hatches.tsx'
import './cup.css'
import { type CupLevel, cupWidth } from './cup-levels.ts'

const rowHigh = 76
const cup = { middle: 64, half: 52, top: 8, wide: 150 }

const letters: Readonly<Record<string, string>> = { base: 'A', hardener: 'B' }

export type CupRow = {
  readonly level: CupLevel
  readonly name: string
  /** As it is set; a text is set as a figure. */
  readonly amount: ReactNode
  /** Poured with everything below it. */
  readonly to: string
  readonly mass?: string | undefined
}

/** Rows from the bottom up, as they are poured. */
export const Cup = ({ rows, label }: { readonly rows: readonly CupRow[]; readonly label: string }) => {
  const hatches = useHatches(['twoPart-finish', 'wait'])
  const high = Math.max(3, rows.length) * rowHigh
  return (
    <div className="cup">
      <svg width={cup.wide} height={high} role="img" aria-label={label}>
        {hatches.defs}
        {rows.map(({ level }, index) => (
          <Filled
            key={level.key}
            level={level}
            from={rows[index - 1]?.level.height ?? 0}
            high={high}
            hatches={hatches}
          />
        ))}
        <Outline high={high} />
        {rows.toReversed().map(({ level }, index) => (
          <path
            key={level.key}
            d={leader(level, { high, row: index })}
            fill="none"
            stroke="var(--ink)"
            strokeWidth="1.5"
          />
        ))}
      </svg>
      <ul className="cup-rows">
        {rows.toReversed().map(({ level, name, amount, to, mass }) => (
          <li key={level.key} className="cup-row" style={{ height: rowHigh }}>
            <span>{name}</span>
            <span className="cup-aside">{mass}</span>
            {typeof amount === 'string' ? <FigureText text={amount} certainty="worked" size="mix" /> : amount}
            <span className="cup-aside">{to}</span>
          </li>
        ))}
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
          <text x={middle} y={(low + up) / 2 + 9} textAnchor="middle" className="cup-letter">
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
