/**
 * A drawing as plain data: lines, areas, circles, hatches and text, in millimetres from the top left corner, y down.
 * Whatever writes a file (PDF now) reads only this.
 */
import type { HatchName } from './hatches.ts'
import type { Ink } from './inks.ts'
import type { Pen } from './pens.ts'
import type { StyleName } from './type-styles.ts'

export type Point = readonly [x: number, y: number]
export type Align = 'left' | 'centre' | 'right'

/** An open line through its points. */
export type LineShape = {
  readonly kind: 'line'
  readonly points: readonly Point[]
  readonly pen: Pen
  readonly ink: Ink
}
/** A closed polygon, filled, outlined or both; the outline is drawn over the fill. */
export type AreaShape = {
  readonly kind: 'area'
  readonly points: readonly Point[]
  readonly fill?: Ink
  readonly pen?: Pen
  readonly ink?: Ink
}
export type CircleShape = {
  readonly kind: 'circle'
  readonly at: Point
  readonly radius: number
  readonly fill?: Ink
  readonly pen?: Pen
  readonly ink?: Ink
}
export type HatchShape = {
  readonly kind: 'hatch'
  readonly within: readonly Point[]
  readonly hatch: HatchName
  readonly ink: Ink
}
/** One line of text on its baseline. */
export type TextShape = {
  readonly kind: 'text'
  readonly at: Point
  readonly text: string
  readonly style: StyleName
  readonly align: Align
  readonly ink: Ink
}
export type Shape = LineShape | AreaShape | CircleShape | HatchShape | TextShape
export type Drawing = readonly Shape[]

export const line = (pen: Pen, ...points: readonly Point[]): LineShape => ({
  kind: 'line',
  points,
  pen,
  ink: 'ink',
})

export const inked = <S extends Shape>(shape: S, ink: Ink): S => ({ ...shape, ink })

export type Box = { readonly x: number; readonly y: number; readonly width: number; readonly height: number }

export const corners = ({ x, y, width, height }: Box): readonly Point[] => [
  [x, y],
  [x + width, y],
  [x + width, y + height],
  [x, y + height],
]

/** An outlined box; with `fill`, filled too. */
export const box = (of: Box, pen: Pen, fill?: Ink): AreaShape => ({
  kind: 'area',
  points: corners(of),
  pen,
  ink: 'ink',
  ...(fill ? { fill } : {}),
})

export const filled = (points: readonly Point[], fill: Ink): AreaShape => ({ kind: 'area', points, fill })

export const dot = (at: Point, radius: number, fill: Ink): CircleShape => ({
  kind: 'circle',
  at,
  radius,
  fill,
})

export const hatched = (within: readonly Point[], hatch: HatchName, ink: Ink = 'ink2'): HatchShape => ({
  kind: 'hatch',
  within,
  hatch,
  ink,
})

export type TextOptions = { readonly align?: Align; readonly ink?: Ink }

export const textAt = (at: Point, text: string, style: StyleName, options: TextOptions = {}): TextShape => {
  const { align = 'left', ink = 'ink' } = options
  return { kind: 'text', at, text, style, align, ink }
}

/** The same drawing, shifted. */
export const moved = (drawing: Drawing, [dx, dy]: Point): Drawing =>
  drawing.map((shape) => shifted(shape, [dx, dy]))

function shifted(shape: Shape, by: Point): Shape {
  const shift = ([x, y]: Point): Point => [x + by[0], y + by[1]]
  switch (shape.kind) {
    case 'line':
    case 'area':
      return { ...shape, points: shape.points.map(shift) }
    case 'hatch':
      return { ...shape, within: shape.within.map(shift) }
    case 'circle':
    case 'text':
      return { ...shape, at: shift(shape.at) }
  }
}
