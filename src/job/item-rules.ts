/** Rules between the cells of one map: what must come after what. */
import type { ProblemData } from './problem.ts'

type Cells = Readonly<Record<string, unknown>>

export type RuleFault = {
  readonly code: string
  /** The cell that is wrong. */
  readonly cell: string
  /** Whether the plan goes on without the cell or without the whole item. */
  readonly drops: 'cell' | 'item'
  readonly data: ProblemData
}

type Rule = (cells: Cells) => RuleFault | undefined

type Order = {
  readonly first: string
  readonly last: string
  readonly equal: boolean
  readonly code: string
  readonly drops: 'cell' | 'item'
}

/** Dates and times of day are texts that sort as what they stand for. */
const inOrder =
  ({ first, last, equal, code, drops }: Order): Rule =>
  (cells) => {
    const from = cells[first]
    const until = cells[last]
    if (typeof from !== 'string' || typeof until !== 'string') return undefined
    if (until > from || (equal && until === from)) return undefined
    return { code, cell: last, drops, data: { found: until, from } }
  }

const figureOf = (value: unknown): number | undefined =>
  typeof value === 'object' && value !== null && 'value' in value ? Number(value.value) : undefined

/** A pair of figures of which the second may not be the smaller; what cannot be meant is left out whole. */
const rising =
  ({ first, last, equal, code }: Omit<Order, 'drops'>): Rule =>
  (cells) => {
    const from = figureOf(cells[first])
    const until = figureOf(cells[last])
    if (from === undefined || until === undefined || until > from || (equal && until === from))
      return undefined
    return {
      code,
      cell: last,
      drops: 'item',
      data: { found: textOf(cells[last]), from: textOf(cells[first]) },
    }
  }

const textOf = (value: unknown): string => (value as { readonly text: string }).text

const firstFault =
  (...rules: readonly Rule[]): Rule =>
  (cells) => {
    for (const rule of rules) {
      const fault = rule(cells)
      if (fault) return fault
    }
    return undefined
  }

/** By section. A shift over midnight is refused: it is two shifts. */
export const itemRules: Readonly<Record<string, Rule>> = {
  job: inOrder({
    first: 'start',
    last: 'launch',
    equal: true,
    code: 'job.launchBeforeStart',
    drops: 'cell',
  }),
  shifts: inOrder({ first: 'from', last: 'until', equal: false, code: 'job.shiftEnds', drops: 'item' }),
  windows: rising({ first: 'from', last: 'until', equal: false, code: 'job.windowEnds' }),
  thinners: firstFault(
    rising({ first: 'least', last: 'most', equal: true, code: 'job.thinnerRange' }),
    rising({ first: 'airFrom', last: 'airUntil', equal: true, code: 'job.thinnerAir' }),
  ),
  closures: inOrder({ first: 'from', last: 'until', equal: true, code: 'job.closureEnds', drops: 'item' }),
}
