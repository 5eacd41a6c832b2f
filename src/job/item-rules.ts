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
  closures: inOrder({ first: 'from', last: 'until', equal: true, code: 'job.closureEnds', drops: 'item' }),
}
