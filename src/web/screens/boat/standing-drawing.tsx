/** The floating waterline over the floor, from abeam and from astern, with its angle drawn larger than it is. */
import { labelOf, type Words } from '#words'
import type { ShownPlan } from '../../worker/messages.ts'

export type StandingDrawingProps = {
  readonly fit: NonNullable<ShownPlan['standing']['fit']>
  readonly words: Words
}

const size = { width: 300, height: 96, floor: 84, water: 40, half: 110 } as const
/** Angles of a few degrees would not show: drawn so many times as steep, and never steeper than 20°. */
const steeper = 4
const steepest = (20 * Math.PI) / 180

export const StandingDrawing = ({ fit, words }: StandingDrawingProps) => (
  <div className="standing-drawings">
    <Leaning angle={fit.trimRad} caption={labelOf('standing.abeam')} words={words} />
    {/* Seen from astern, port is on the left: port up leans the line down to the right. */}
    <Leaning angle={-fit.heelRad} caption={labelOf('standing.astern')} words={words} />
  </div>
)

type LeaningProps = { readonly angle: number; readonly caption: string; readonly words: Words }

const Leaning = ({ angle, caption, words }: LeaningProps) => {
  const drawn = Math.max(-steepest, Math.min(steepest, angle * steeper))
  const rise = size.half * Math.tan(drawn)
  const middle = size.width / 2
  const [left, right] = [middle - size.half, middle + size.half]
  const text = words.figure('angleRad', Math.abs(angle))
  return (
    <svg
      width={size.width}
      height={size.height + 20}
      role="img"
      aria-label={`${caption}, ${text}`}
      className="standing-drawing"
    >
      <path className="standing-floor" d={`M8 ${size.floor}H${size.width - 8}`} />
      <path className="standing-water" d={`M${left} ${size.water + rise}L${right} ${size.water - rise}`} />
      <path className="standing-level" d={`M${left} ${size.water}H${right}`} />
      <text x={middle} y={size.floor - 8} textAnchor="middle">
        {text}
      </text>
      <text x={middle} y={size.height + 14} textAnchor="middle">
        {caption}
      </text>
    </svg>
  )
}
