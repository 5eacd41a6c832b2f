/** Text as strips: paragraphs, headings, sentences, a line each so that a long one can go on over the page. */
import type { Setter } from './setter.ts'
import { type Align, type Drawing, type TextOptions, textAt } from './shapes.ts'
import { type Strip, stacked } from './strips.ts'
import { capHeight, type StyleName, typeStyle } from './type-styles.ts'

export type Measure = { readonly x: number; readonly width: number }

/** Baseline of a line whose upper edge is at `top`, capitals in the middle of the line height. */
export const baseline = (top: number, style: StyleName): number =>
  top + (typeStyle(style).lead + capHeight(style)) / 2

export function lineStrip(
  text: string,
  style: StyleName,
  { x, width }: Measure,
  options: TextOptions = {},
): Strip {
  const at = { left: x, centre: x + width / 2, right: x + width }[options.align ?? 'left']
  return {
    height: typeStyle(style).lead,
    draw: (top) => (text === '' ? [] : [textAt([at, baseline(top, style)], text, style, options)]),
  }
}

export function paragraph(
  text: string,
  style: StyleName,
  of: Measure & { readonly setter: Setter },
  options: TextOptions = {},
): readonly Strip[] {
  return of.setter.wrap(text, style, of.width).map((line) => lineStrip(line, style, of, options))
}

export type Fitted = {
  readonly text: string
  readonly style: StyleName
  readonly width: number
  readonly most: number
}

/** At most so many lines, the last cut with an ellipsis. */
export function fittedLines(setter: Setter, { text, style, width, most }: Fitted): readonly string[] {
  const lines = setter.wrap(text, style, width)
  if (lines.length <= most) return lines
  return [...lines.slice(0, most - 1), setter.fit(lines.slice(most - 1).join(' '), style, width)]
}

/** Title of a part, with a little space under it. */
export const heading = (text: string, of: Measure & { readonly setter: Setter }): Strip =>
  stacked([...paragraph(text, 'part', of), { height: 1, draw: (): Drawing => [] }])

export type { Align }
