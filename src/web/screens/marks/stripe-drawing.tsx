/** The stripe on the side of the hull, to scale, bow right: an edge that a guess moves is dotted. */
import type { Certainty } from '#core/note'
import type { StripeMark } from '#plan'
import type { Words } from '#words'
import { classes, useWidth } from '../../parts/index.ts'
import type { ShownPlan } from '../../worker/messages.ts'

type Outline = NonNullable<ShownPlan['surfaces']['outline']>
type Point = readonly [number, number]

export type StripeDrawingProps = {
  readonly stripe: StripeMark
  readonly outline: Outline
  readonly words: Words
}

const widest = 900
const room = { left: 40, right: 12, above: 10, below: 24 }

export const StripeDrawing = ({ stripe, outline, words }: StripeDrawingProps) => {
  const { ref, width } = useWidth<HTMLDivElement>()
  const { keel, sheer, knuckles } = outline.sheerPlan
  const all = [...keel, ...sheer]
  const long = Math.max(...all.map(([x]) => x))
  const [low, high] = [Math.min(...all.map(([, z]) => z)), Math.max(...all.map(([, z]) => z))]
  const perM = (Math.min(width, widest) - room.left - room.right) / long
  if (!(perM > 0)) return <div ref={ref} />
  const place = ([x, z]: Point): Point => [room.left + x * perM, room.above + (high - z) * perM]
  const line = (points: readonly Point[]): string => `M${points.map((one) => place(one).join(' ')).join('L')}`
  const { rows } = stripe.table
  const [lower, upper] = [
    rows.map((row): Point => [row.xM, row.lowerM]),
    rows.map((row): Point => [row.xM, row.upperM]),
  ]
  const water = place([0, 0])[1]
  const bottom = room.above + (high - low) * perM
  return (
    <div ref={ref} className="stripe-drawing">
      <svg
        width={room.left + long * perM + room.right}
        height={bottom + room.below}
        role="img"
        aria-label={words.sentence('marks.drawing', { name: stripe.name, count: rows.length })}
      >
        <path className="stripe-band" d={`${line([...lower, ...[...upper].reverse()])}Z`} />
        {knuckles.map(({ kind, line: points }) => (
          <path key={kind} className="stripe-thin" d={line(points)} />
        ))}
        {[keel, sheer, endsOf(keel, sheer, 0), endsOf(keel, sheer, -1)].map((points, at) => (
          <path key={String(at)} className="stripe-thick" d={line(points)} />
        ))}
        <path className="stripe-water" d={`M4 ${water}H${place([long, 0])[0] + room.right - 2}`} />
        <path className="stripe-sign" d={`M14 ${water}l-7-10h14Z`} />
        {runsOf(
          lower,
          stripe.sure.map((one) => one.lower),
        ).map(({ points, certainty }) => (
          <path key={`l${points[0]?.[0]}`} className={edgeClass(certainty)} d={line(points)} />
        ))}
        {runsOf(
          upper,
          stripe.sure.map((one) => one.upper),
        ).map(({ points, certainty }) => (
          <path key={`u${points[0]?.[0]}`} className={edgeClass(certainty)} d={line(points)} />
        ))}
        <Ticks rows={rows} place={place} bottom={bottom} words={words} />
      </svg>
    </div>
  )
}

const endsOf = (keel: readonly Point[], sheer: readonly Point[], at: number): readonly Point[] =>
  [keel.at(at), sheer.at(at)].flatMap((one) => (one ? [one] : []))

const edgeClass = (certainty: Certainty): string =>
  classes('stripe-edge', certainty === 'assumed' && 'stripe-guess')

type Run = { readonly certainty: Certainty; readonly points: readonly Point[] }

/** Pieces of an edge that are as sure all along; each begins where the last one ended. */
export function runsOf(points: readonly Point[], sure: readonly Certainty[]): readonly Run[] {
  const runs: { certainty: Certainty; points: Point[] }[] = []
  for (let at = 1; at < points.length; at++) {
    const pair = [points[at - 1]!, points[at]!]
    const certainty = [sure[at - 1], sure[at]].includes('assumed') ? 'assumed' : 'worked'
    const last = runs.at(-1)
    if (last?.certainty === certainty) last.points.push(points[at]!)
    else runs.push({ certainty, points: pair })
  }
  return runs
}

type TicksProps = {
  readonly rows: StripeMark['table']['rows']
  readonly place: (point: Point) => Point
  readonly bottom: number
  readonly words: Words
}

/** Where the numbers of the table are struck; every so many named, as there is room. */
const Ticks = ({ rows, place, bottom, words }: TicksProps) => {
  let free = Number.NEGATIVE_INFINITY
  return rows.map(({ xM, lowerM, upperM }) => {
    const [x, low] = place([xM, lowerM])
    const [, high] = place([xM, upperM])
    const text = words.figure('xM', xM)
    const half = 4 * text.length
    const named = x - half > free
    if (named) free = x + half + 8
    return (
      <g key={xM}>
        <path className="stripe-thin" d={`M${x} ${high - 4}V${low + 4}`} />
        {named ? (
          <>
            <path className="stripe-leader" d={`M${x} ${low + 4}V${bottom + 6}`} />
            <text className="stripe-label" x={x} y={bottom + 20} textAnchor="middle">
              {text}
            </text>
          </>
        ) : null}
      </g>
    )
  })
}
