/** Parts a figure as words write it into digits and units; a fraction of an inch stands apart from its whole number. */
import { figurePieces } from '#papers'

export type FigureRun =
  | { readonly kind: 'digits'; readonly at: number; readonly text: string; readonly fraction?: string }
  | { readonly kind: 'unit'; readonly at: number; readonly text: string }

/** Spaces at the ends belong to the unit, so that the rule under the digits is as long as they are. */
const parted = /^(\s*)(.*?)(\s*)$/s
const fraction = /^(?:(.*\d)[\s\u00a0])?(\d+\/\d+)$/

export function figureRuns(text: string): readonly FigureRun[] {
  return figurePieces(text).flatMap((piece, at): readonly FigureRun[] => {
    if (!piece.digits) return [{ kind: 'unit', at: at * 3, text: piece.text }]
    const [, before = '', digits = '', after = ''] = parted.exec(piece.text) ?? []
    return [
      ...unit(before, at * 3),
      { kind: 'digits', at: at * 3 + 1, ...wholeAndFraction(digits) },
      ...unit(after, at * 3 + 2),
    ]
  })
}

const unit = (text: string, at: number): readonly FigureRun[] =>
  text === '' ? [] : [{ kind: 'unit', at, text }]

function wholeAndFraction(digits: string): { readonly text: string; readonly fraction?: string } {
  const found = fraction.exec(digits)
  return found?.[2] === undefined ? { text: digits } : { text: found[1] ?? '', fraction: found[2] }
}
