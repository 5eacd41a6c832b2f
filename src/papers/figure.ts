/**
 * A figure with its unit: digits in text, unit in lettering, and under the digits the line that says how sure it is:
 * measured solid with end ticks, data sheet solid, typical dashed, assumed dotted, worked out none.
 */
import type { Certainty } from '#core/note'
import type { Setter } from './setter.ts'
import { type Align, type Drawing, line, type Point, textAt } from './shapes.ts'
import type { StyleName } from './type-styles.ts'

export type Figure = { readonly text: string; readonly certainty: Certainty }

export type FigureStyle = { readonly digits: StyleName; readonly unit: StyleName }

export const bodyFigure: FigureStyle = { digits: 'strong', unit: 'label' }
export const largeFigure: FigureStyle = { digits: 'figure', unit: 'part' }

type Piece = { readonly text: string; readonly digits: boolean }

/** `3 × 25 µm` is digits, `µm` a unit; spaces belong to what stands before them. */
export function figurePieces(text: string): readonly Piece[] {
  const parts = text.match(/[\d.,:×/+\-\u2212\u202f ]*\d[\d.,:×/+\-\u2212\u202f]*|[^\d]+/g) ?? []
  return parts.map((part) => ({ text: part, digits: /\d/.test(part) }))
}

export type FigureAt = {
  readonly at: Point
  readonly align: Align
  readonly style: FigureStyle
}

export function figureWidth(text: string, style: FigureStyle, setter: Setter): number {
  return figurePieces(text).reduce((sum, piece) => sum + setter.width(piece.text, styleFor(piece, style)), 0)
}

const styleFor = (piece: Piece, style: FigureStyle): StyleName => (piece.digits ? style.digits : style.unit)

export function figureDrawing(figure: Figure, { at, align, style }: FigureAt, setter: Setter): Drawing {
  const whole = figureWidth(figure.text, style, setter)
  let x = at[0] - whole * { left: 0, centre: 0.5, right: 1 }[align]
  const placed = figurePieces(figure.text).map((piece) => {
    const from = x
    x += setter.width(piece.text, styleFor(piece, style))
    return { piece, from, to: x }
  })
  const digits = placed.filter(({ piece }) => piece.digits)
  const [first, last] = [digits[0], digits.at(-1)]
  return [
    ...placed.map(({ piece, from }) => textAt([from, at[1]], piece.text, styleFor(piece, style))),
    ...(first && last
      ? certaintyLine(figure.certainty, { from: first.from, to: last.to, y: at[1] + 1 })
      : []),
  ]
}

export type Span = { readonly from: number; readonly to: number; readonly y: number }

export function certaintyLine(certainty: Certainty, { from, to, y }: Span): Drawing {
  if (certainty === 'worked') return []
  const rule = line(certainty, [from, y], [to, y])
  if (certainty !== 'measured') return [rule]
  return [
    rule,
    line('measured', [from, y - 0.7], [from, y + 0.7]),
    line('measured', [to, y - 0.7], [to, y + 0.7]),
  ]
}
