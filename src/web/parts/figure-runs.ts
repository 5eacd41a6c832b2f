/** Parts a figure as words write it into digits and units; a fraction of an inch stands apart from its whole number. */
import { figurePieces } from '#papers'

export type FigureRun =
  | { readonly kind: 'count'; readonly at: number; readonly text: string }
  | { readonly kind: 'digits'; readonly at: number; readonly text: string; readonly fraction?: string }
  | { readonly kind: 'unit'; readonly at: number; readonly text: string }

/** `3 × ` says how often and is not part of the figure. Spaces at the ends belong to the unit, so that the rule under the digits is as long as they are. */
const parted = /^(\s*(?:\d+\s*×\s*)?)(.*?)(\s*)$/s
const fraction = /^(?:(.*\d)[\s\u00a0])?(\d+\/\d+)$/

export function figureRuns(text: string): readonly FigureRun[] {
  // A no-break space between whole number and fraction is part of the digits; nothing of a figure ever breaks anyway.
  return figurePieces(text.replaceAll('\u00a0', ' ')).flatMap((piece, at): readonly FigureRun[] => {
    if (!piece.digits) return [{ kind: 'unit', at: at * 3, text: piece.text }]
    const [, before = '', digits = '', after = ''] = parted.exec(piece.text) ?? []
    return [
      ...count(before, at * 3),
      { kind: 'digits', at: at * 3 + 1, ...wholeAndFraction(digits) },
      ...unit(after, at * 3 + 2),
    ]
  })
}

const unit = (text: string, at: number): readonly FigureRun[] =>
  text === '' ? [] : [{ kind: 'unit', at, text }]

const count = (text: string, at: number): readonly FigureRun[] =>
  text === '' ? [] : [{ kind: 'count', at, text }]

function wholeAndFraction(digits: string): { readonly text: string; readonly fraction?: string } {
  const found = fraction.exec(digits)
  return found?.[2] === undefined ? { text: digits } : { text: found[1] ?? '', fraction: found[2] }
}
