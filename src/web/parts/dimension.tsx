/** A dimension line inside an SVG in px: arrowheads, the figure in a gap, and the line itself says how sure. */
import type { Certainty } from '#core/note'
import { labelOf } from '#words'
import './dimension.css'
import { figureRuns } from './figure-runs.ts'

export type DimensionProps = {
  /** Ends along the line, x of a level one and y of an upright one. */
  readonly from: number
  readonly to: number
  /** Where the line lies: y of a level one, x of an upright one. */
  readonly at: number
  readonly upright?: boolean | undefined
  /** Extension lines begin here and end just past the line; none when left out. */
  readonly extendFrom?: number | undefined
  readonly text: string
  readonly certainty: Certainty
}

const dashes: Readonly<Record<Certainty, string | undefined>> = {
  measured: undefined,
  sheet: undefined,
  worked: undefined,
  typical: '6 4',
  assumed: '2 2',
}

const perSign = 8.2

export const Dimension = ({ from, to, at, upright, extendFrom, text, certainty }: DimensionProps) => {
  const middle = (from + to) / 2
  const half = (text.length * perSign) / 2 + 5
  const fits = to - from > 2 * half + 20
  const dash = dashes[certainty]
  const lines = fits ? `M${from} 0H${middle - half}M${middle + half} 0H${to}` : `M${from} 0H${to}`
  const turn = upright ? `translate(${at} 0) rotate(90) scale(1 -1)` : `translate(0 ${at})`
  return (
    <g className="dimension">
      <title>{`${text}, ${labelOf(`certainty.${certainty}`)}`}</title>
      <g transform={turn}>
        {extendFrom === undefined ? null : (
          <path
            className="dimension-extension"
            d={[from, to].map((x) => `M${x} ${extendFrom - at}V${extendFrom < at ? 6 : -6}`).join('')}
          />
        )}
        <path className="dimension-line" d={lines} strokeDasharray={dash} />
        <path className="dimension-arrow" d={`M${from} 0l9-3v6ZM${to} 0l-9-3v6Z`} />
      </g>
      <text
        textAnchor="middle"
        transform={
          upright
            ? `translate(${fits ? at + 5 : at - 8} ${middle}) rotate(-90)`
            : `translate(${middle} ${fits ? at + 5 : at - 8})`
        }
      >
        {figureRuns(text).map((run) =>
          run.kind !== 'digits' ? (
            <tspan key={run.at} className="dimension-unit">
              {run.text}
            </tspan>
          ) : (
            <tspan key={run.at} className="dimension-digits">
              {run.fraction === undefined ? run.text : `${run.text}\u2009${run.fraction}`}
            </tspan>
          ),
        )}
      </text>
    </g>
  )
}
