/** A sum as it is read: figures in the units of the reader between the signs of the four operations. */
import { labelOf } from './labels.ts'

export type FormulaTerm =
  | { readonly kind: 'part'; readonly key: string; readonly value: number }
  | { readonly kind: 'number'; readonly value: number }
  | { readonly kind: 'plus' | 'times' | 'minus' | 'over'; readonly of: readonly FormulaTerm[] }
  | { readonly kind: 'ln'; readonly of: readonly [FormulaTerm] }
  | Rounded

type Rounded = {
  readonly kind: 'up' | 'nearest'
  readonly of: readonly [FormulaTerm]
  readonly to: number
}

export type FormulaFigures = {
  /** A figure with its unit, by its key. */
  readonly figure: (key: string, value: number) => string
  /** A bare number, with all its digits. */
  readonly number: (value: number) => string
}

/** A sum that is rounded up says so at its end. */
export function writeFormula(term: FormulaTerm, figures: FormulaFigures): string {
  if (term.kind === 'up') return `${writeFormula(term.of[0], figures)}, ${labelOf('formula.up')}`
  return write(term, figures)
}

const signs = { plus: '+', minus: '−', times: '×', over: '÷' } as const

/** Sums bind least, products more; what stands alone needs no brackets. */
const binds = { plus: 1, minus: 1, times: 2, over: 2 } as const

function write(term: FormulaTerm, figures: FormulaFigures): string {
  switch (term.kind) {
    case 'part':
      return figures.figure(term.key, term.value)
    case 'number':
      return term.value === Math.PI ? 'π' : figures.number(term.value)
    case 'ln':
      return `ln(${write(term.of[0], figures)})`
    case 'up':
    case 'nearest':
      return write(term.of[0], figures)
    default:
      return term.of
        .map((each, at) => bracketed(each, { outer: term.kind, first: at === 0 }, figures))
        .join(` ${signs[term.kind]} `)
  }
}

type Outer = { readonly outer: keyof typeof binds; readonly first: boolean }

function bracketed(term: FormulaTerm, { outer, first }: Outer, figures: FormulaFigures): string {
  const inner = bare(term)
  const text = write(term, figures)
  if (inner.kind === 'part' || inner.kind === 'number' || inner.kind === 'ln') return text
  const looser = binds[inner.kind] < binds[outer]
  const turned = !first && binds[inner.kind] === binds[outer] && (outer === 'minus' || outer === 'over')
  return looser || turned ? `(${text})` : text
}

type Bare = Exclude<FormulaTerm, Rounded>

const bare = (term: FormulaTerm): Bare => (isRounded(term) ? bare(term.of[0]) : term)

const isRounded = (term: FormulaTerm): term is Rounded => term.kind === 'up' || term.kind === 'nearest'
