/** A drawing of the papers, in millimetres, as SVG in the inks of the screen. */
import type { Drawing, Ink, Pen, Point, Shape } from '#papers'
import { mmPerPt, penRule, typeStyle } from '#papers'
import './shapes-svg.css'
import { type Hatches, useHatches } from './use-hatches.tsx'

export type ShapesSvgProps = {
  readonly drawing: Drawing
  readonly width: number
  readonly height: number
  /** What it shows, for those who do not see it; its table twin tells the rest. */
  readonly label: string
}

/** Width and height in millimetres of the drawing; on screen it fills the place it is given. */
export const ShapesSvg = ({ drawing, width, height, label }: ShapesSvgProps) => {
  const hatches = useHatches(
    drawing.flatMap((shape) => (shape.kind === 'hatch' ? [shape.hatch] : [])),
    'mm',
  )
  return (
    <svg
      className="shapes-svg"
      viewBox={`0 0 ${width} ${height}`}
      role="img"
      aria-label={label}
      style={{ maxWidth: `${width * mostScale}mm` }}
    >
      {hatches.defs}
      {drawing.map((shape, index) => (
        // A drawing is made anew as a whole: the place in it is the only name a shape has.
        <ShapeSvg key={index} shape={shape} hatches={hatches} />
      ))}
    </svg>
  )
}

/** Larger, and its letters would shout beside the text of the screen. */
const mostScale = 1.4

const ShapeSvg = ({ shape, hatches }: { readonly shape: Shape; readonly hatches: Hatches }) => {
  switch (shape.kind) {
    case 'line':
      return <polyline points={listOf(shape.points)} fill="none" {...stroke(shape.pen, shape.ink)} />
    case 'area':
      return <polygon points={listOf(shape.points)} {...outline(shape)} />
    case 'circle':
      return <circle cx={shape.at[0]} cy={shape.at[1]} r={shape.radius} {...outline(shape)} />
    case 'hatch':
      return <polygon points={listOf(shape.within)} fill={hatches.fill(shape.hatch)} />
    case 'text':
      return <TextSvg shape={shape} />
  }
}

const listOf = (points: readonly Point[]): string => points.map(([x, y]) => `${x},${y}`).join(' ')

/** Inks of paper by the token of the screen; the token follows day and night. */
const tokens: Readonly<Record<Ink, string>> = {
  ink: 'var(--ink)',
  ink2: 'var(--ink2)',
  hair: 'var(--hair)',
  rule: 'var(--rule)',
  go: 'var(--go)',
  shade: 'var(--shade)',
  paper: 'var(--paper)',
  fault: 'var(--fault)',
  black: 'var(--mark)',
  danger: 'var(--danger)',
  warning: 'var(--warning)',
  caution: 'var(--caution)',
  notice: 'var(--notice)',
}

export const inkToken = (ink: Ink): string => tokens[ink]

function stroke(pen: Pen, ink: Ink) {
  const { width, dash } = penRule(pen)
  return {
    stroke: pen === 'waterline' ? 'var(--water)' : tokens[ink],
    strokeWidth: width,
    strokeDasharray: dash?.join(' '),
  }
}

type Outlined = { readonly fill?: Ink; readonly pen?: Pen; readonly ink?: Ink }

const outline = ({ fill, pen, ink = 'ink' }: Outlined) => ({
  fill: fill === undefined ? 'none' : tokens[fill],
  ...(pen === undefined ? {} : stroke(pen, ink)),
})

const anchors = { left: 'start', centre: 'middle', right: 'end' } as const

const TextSvg = ({ shape }: { readonly shape: Extract<Shape, { readonly kind: 'text' }> }) => {
  const { face, sizePt } = typeStyle(shape.style)
  return (
    <text
      x={shape.at[0]}
      y={shape.at[1]}
      textAnchor={anchors[shape.align]}
      className={`shapes-svg-${face}`}
      style={{ fill: tokens[shape.ink], fontSize: sizePt * mmPerPt }}
    >
      {shape.text}
    </text>
  )
}
