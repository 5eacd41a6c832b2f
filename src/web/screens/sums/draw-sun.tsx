/** A compass with the boat as it lies: lit sides carry a bright band and rays, sides in shade are plain; north is up. */
import { labelOf } from '#words'
import { givenNumber, listOf, numberOf } from './say-sum.ts'
import type { SumDrawingProps } from './sum-props.ts'

const middle = 150
const ring = 124
const rad = Math.PI / 180

/** From a bearing and a distance to the drawing: north up, east right. */
const at = (bearingDeg: number, distance: number): readonly [number, number] => [
  middle + distance * Math.sin(bearingDeg * rad),
  middle - distance * Math.cos(bearingDeg * rad),
]

export const SunCompass = ({ answer, words }: SumDrawingProps) => {
  const azimuthDeg = numberOf(answer, 'azimuthDeg')
  const altitudeDeg = numberOf(answer, 'altitudeDeg')
  const bowDeg = givenNumber(answer, 'bowDeg')
  if (azimuthDeg === undefined || altitudeDeg === undefined || bowDeg === undefined) return null
  const lit = listOf(answer, 'lit').map(String)
  const sides = lit.map((side) => labelOf(`value.${side}`)).join(', ')
  const label = words.sentence('sumscreen.sunDrawing', {
    ...{ azimuthDeg, altitudeDeg, bowDeg },
    sides: sides === '' ? labelOf('no') : sides,
  })
  return (
    <svg className="sums-drawing" viewBox="0 0 300 300" role="img" aria-label={label}>
      <circle cx={middle} cy={middle} r={ring} fill="none" stroke="var(--ink)" strokeWidth="1.5" />
      <Points />
      <g transform={`rotate(${bowDeg} ${middle} ${middle})`}>
        <Boat lit={lit} />
      </g>
      {altitudeDeg > 0 ? <Sun azimuthDeg={azimuthDeg} altitudeDeg={altitudeDeg} /> : null}
    </svg>
  )
}

const Points = () => (
  <>
    {Array.from({ length: 36 }, (_, index) => index * 10).map((bearing) => {
      const [x1, y1] = at(bearing, ring)
      const [x2, y2] = at(bearing, ring - (bearing % 90 === 0 ? 12 : bearing % 30 === 0 ? 8 : 4))
      return <line key={bearing} x1={x1} y1={y1} x2={x2} y2={y2} stroke="var(--ink)" />
    })}
    {['N', 'E', 'S', 'W'].map((name, index) => {
      const [x, y] = at(index * 90, ring + 13)
      return (
        <text key={name} x={x} y={y + 5} textAnchor="middle">
          {name}
        </text>
      )
    })}
  </>
)

/** Bow up before it is turned; port is at the left. */
const outlines: readonly (readonly [side: string, path: string, rays: string])[] = [
  ['port', 'M150 84Q122 112 122 160V208', 'M118 128l-12-4M115 148h-13M115 168h-13M115 188h-13'],
  ['starboard', 'M150 84Q178 112 178 160V208', 'M182 128l12-4M185 148h13M185 168h13M185 188h13'],
  ['transom', 'M122 208H178', 'M132 215v13M150 215v13M168 215v13'],
  ['bow', 'M142 93Q146 88 150 84 154 88 158 93', 'M150 78v-13M140 82l-6-11M160 82l6-11'],
]

const hull = 'M150 84Q178 112 178 160V208H122V160Q122 112 150 84Z'

const Boat = ({ lit }: { readonly lit: readonly string[] }) => (
  <>
    <path
      d={hull}
      fill={lit.includes('deck') ? 'var(--raised)' : 'var(--shade)'}
      stroke="var(--ink)"
      strokeWidth="2"
    />
    {lit.includes('deck') ? (
      <path
        d="M150 128v10M150 148v10M150 168v10M150 188v10M136 138v10M136 158v10M136 178v10M164 138v10M164 158v10M164 178v10"
        stroke="var(--ink2)"
      />
    ) : null}
    {outlines.map(([side, path, rays]) =>
      lit.includes(side) ? (
        <g key={side} fill="none">
          <path d={path} stroke="var(--ink)" strokeWidth="9" />
          <path d={path} stroke="var(--sun)" strokeWidth="5" />
          <path d={rays} stroke="var(--ink)" strokeWidth="1.5" />
        </g>
      ) : null,
    )}
  </>
)

/** The nearer the ring, the lower it stands. */
const Sun = ({ azimuthDeg, altitudeDeg }: { readonly azimuthDeg: number; readonly altitudeDeg: number }) => {
  const [x, y] = at(azimuthDeg, ring * (1 - Math.min(altitudeDeg, 90) / 90))
  const [fromX, fromY] = at(azimuthDeg, ring)
  return (
    <>
      <path d={`M${fromX} ${fromY}L${x} ${y}`} stroke="var(--ink)" strokeDasharray="2 3" />
      <circle cx={x} cy={y} r="10" fill="var(--sun)" stroke="var(--ink)" strokeWidth="2" />
    </>
  )
}
