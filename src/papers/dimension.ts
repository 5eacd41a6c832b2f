/** Dimension lines: extension lines, arrowheads, the figure in a gap of the line; the line itself says how sure. */
import type { Certainty } from '#core/note'
import { type FigureStyle, figureDrawing, figureWidth } from './figure.ts'
import type { Pen } from './pens.ts'
import type { Setter } from './setter.ts'
import { type Drawing, filled, line, type Point } from './shapes.ts'

export type Dimension = {
  readonly from: number
  readonly to: number
  /** Of the dimension line: y of a level one, x of an upright one. */
  readonly at: number
  readonly text: string
  readonly certainty: Certainty
}

const style: FigureStyle = { digits: 'smallStrong', unit: 'caption' }

const penFor = (certainty: Certainty): Pen =>
  ({ measured: 'thin', sheet: 'thin', worked: 'thin', typical: 'hidden', assumed: 'ghost' })[certainty] as Pen

const arrow = (tip: Point, [dx, dy]: Point) =>
  filled(
    [
      tip,
      [tip[0] - 2 * dx - 0.45 * dy, tip[1] - 2 * dy - 0.45 * dx],
      [tip[0] - 2 * dx + 0.45 * dy, tip[1] - 2 * dy + 0.45 * dx],
    ],
    'ink',
  )

/** Level, the figure in the middle of the line. */
export function levelDimension({ from, to, at, text, certainty }: Dimension, setter: Setter): Drawing {
  const middle = (from + to) / 2
  const half = figureWidth(text, style, setter) / 2 + 1.5
  const pen = penFor(certainty)
  return [
    line(pen, [from, at], [middle - half, at]),
    line(pen, [middle + half, at], [to, at]),
    arrow([from, at], [-1, 0]),
    arrow([to, at], [1, 0]),
    ...figureDrawing(
      { text, certainty: 'worked' },
      { at: [middle, at + 1.05], align: 'centre', style },
      setter,
    ),
  ]
}

/** Upright, the figure to the left of the line. */
export function uprightDimension({ from, to, at, text, certainty }: Dimension, setter: Setter): Drawing {
  return [
    line(penFor(certainty), [at, from], [at, to]),
    arrow([at, from], [0, -1]),
    arrow([at, to], [0, 1]),
    ...figureDrawing(
      { text, certainty: 'worked' },
      { at: [at - 1.3, (from + to) / 2 + 1.05], align: 'right', style },
      setter,
    ),
  ]
}
