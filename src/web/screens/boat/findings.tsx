/** Findings on the lines plan, drawn as they look, each with its balloon; dashed where nobody said where it lies. */
import { labelOf } from '#words'
import { useHatches } from '../../parts/index.ts'
import type { Point } from './boat-layout.ts'
import { balloon, balloonsOf, type FindingPlace } from './finding-places.ts'
import './findings.css'

export type FindingsProps = {
  readonly places: readonly FindingPlace[]
  readonly width: number
  /** Px a metre. */
  readonly perM: number
  readonly chosen: string | undefined
  readonly onChoose: (zone: string) => void
}

export const Findings = ({ places, width, perM, chosen, onChoose }: FindingsProps) => {
  const hatches = useHatches(['balsa', 'wait'])
  const balloons = new Map(balloonsOf(places, width).map(({ mark, at }) => [mark, at]))
  return (
    <g className="findings">
      {hatches.defs}
      {places.map((place) => (
        <g
          key={place.mark}
          className={place.finding.zone === chosen ? 'finding finding-chosen' : 'finding'}
          onClick={() => onChoose(place.finding.zone)}
        >
          <Mark place={place} perM={perM} fill={(name) => hatches.fill(name)} />
          <Balloon place={place} at={balloons.get(place.mark) ?? place.at} />
        </g>
      ))}
    </g>
  )
}

const Balloon = ({ place, at: [x, y] }: { readonly place: FindingPlace; readonly at: Point }) => {
  const { mark, at, guessed, hidden, finding } = place
  const [fromX, fromY] = at
  const far = Math.hypot(x - fromX, y - fromY)
  const share = far === 0 ? 0 : (far - balloon.radius) / far
  return (
    <g className={guessed ? 'finding-guessed' : undefined}>
      <title>{`${mark}: ${finding.name}${guessed ? `, ${labelOf('finding.somewhere')}` : ''}`}</title>
      <path
        className={hidden ? 'finding-leader finding-hidden' : 'finding-leader'}
        d={`M${fromX} ${fromY}L${fromX + (x - fromX) * share} ${fromY + (y - fromY) * share}`}
      />
      <circle className="finding-dot" cx={fromX} cy={fromY} r="2.5" />
      <circle className="finding-balloon" cx={x} cy={y} r={balloon.radius} />
      <text x={x} y={y + 5} textAnchor="middle">
        {mark}
      </text>
    </g>
  )
}

type MarkProps = {
  readonly place: FindingPlace
  readonly perM: number
  readonly fill: (name: 'balsa' | 'wait') => string
}

/** No more than three of many alike. */
const mostMarks = 3

const Mark = ({ place, perM, fill }: MarkProps) => {
  const { finding, at } = place
  const { kind, count, areaM2, sizeM } = finding
  if (kind === 'soft core' || kind === 'worn non-skid' || kind === 'harsh non-skid') {
    const side = clamp(Math.sqrt(areaM2 ?? 0.2) * perM, 18, 90)
    return (
      <rect
        className="finding-bound"
        x={at[0] - side * 0.65}
        y={at[1] - side * 0.36}
        width={side * 1.3}
        height={side * 0.72}
        fill={fill(kind === 'soft core' ? 'balsa' : 'wait')}
      />
    )
  }
  const radius = clamp(((sizeM ?? Math.sqrt(areaM2 ?? 0)) * perM) / 2, 5, 11)
  const many = Math.min(mostMarks, kind === 'crazing' ? mostMarks : count)
  const spots = Array.from({ length: many }, (_, k): Point => spotOf(at, k, radius))
  return (
    <>
      {spots.map(([x, y]) => (
        <path key={`${x} ${y}`} className="finding-mark" d={signOf(kind, [x, y], radius)} />
      ))}
    </>
  )
}

const clamp = (value: number, least: number, most: number): number => Math.max(least, Math.min(most, value))

/** Side by side, the middle one a little lower. */
const spotOf = ([x, y]: Point, k: number, radius: number): Point => [
  x + [0, -2.2, 2.2][k]! * radius,
  y + (k === 0 ? 2 : -2),
]

function signOf(kind: string, at: Point, radius: number): string {
  if (kind === 'crack' || kind === 'crazing') return star(at, radius)
  if (kind === 'hole') return `${ring(at, radius * 0.6)}${cross(at, radius)}`
  if (kind === 'blister') return `${ring(at, radius * 0.5)}${ring([at[0] + radius, at[1] - 3], radius * 0.3)}`
  if (kind === 'old silicone') return wave(at, radius)
  return `${ring(at, radius * 0.5)}`
}

/** Arms that break off to one side, as cracks run from a point that was hit. */
const star = ([x, y]: Point, radius: number): string =>
  Array.from({ length: 6 }, (_, k) => {
    const turn = (k * Math.PI) / 3 + 0.3
    const [cos, sin] = [Math.cos(turn), Math.sin(turn)]
    const knee: Point = [x + cos * radius * 0.6, y + sin * radius * 0.6]
    const end: Point = [x + Math.cos(turn + 0.35) * radius, y + Math.sin(turn + 0.35) * radius]
    return `M${x} ${y}L${knee[0]} ${knee[1]}L${end[0]} ${end[1]}`
  }).join('')

const ring = ([x, y]: Point, radius: number): string =>
  `M${x - radius} ${y}a${radius} ${radius} 0 1 0 ${2 * radius} 0a${radius} ${radius} 0 1 0 ${-2 * radius} 0`

const cross = ([x, y]: Point, radius: number): string =>
  `M${x - radius} ${y}H${x + radius}M${x} ${y - radius}V${y + radius}`

const wave = ([x, y]: Point, radius: number): string =>
  `M${x - 2 * radius} ${y}q${radius / 2} ${-radius} ${radius} 0t${radius} 0t${radius} 0t${radius} 0`
