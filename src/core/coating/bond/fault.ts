/** What is wrong with a stack, and what puts it right. */
import type { Selector } from './material.ts'
import type { Grit } from './rule.ts'

type At = {
  /** The layer that is put on. */
  readonly layer: string
  /** What it is put on: `ground`, a repair or a layer. */
  readonly under: string
}

export type Fault =
  /** Rules say no; a tie coat between, or another remedy, may make it right. */
  | (At & {
      readonly kind: 'fails'
      readonly reason: string
      readonly tie: readonly Selector[]
      readonly clear: readonly string[]
      readonly source: string
    })
  /** Nobody knows what is there, and on something that it may be the layer fails. */
  | (At & {
      readonly kind: 'may fail'
      readonly reason: string
      readonly on: readonly string[]
      readonly tie: readonly Selector[]
      readonly clear: readonly string[]
      readonly source: string
    })
  | (At & {
      readonly kind: 'not sanded'
      readonly coarsest: Grit
      readonly finest: Grit
      readonly source: string
    })
  | (At & { readonly kind: 'between not sanded'; readonly finest: Grit; readonly source: string })
  | (At & {
      readonly kind: 'too coarse' | 'too fine'
      readonly grit: Grit
      readonly coarsest: Grit
      readonly finest: Grit
      readonly source: string
    })
  /** The longest wait is over before the shortest. */
  | (At & { readonly kind: 'window never open'; readonly leastH: number; readonly mostH: number })
  /** The last layer does not stand the weather. */
  | (At & {
      readonly kind: 'not topcoated'
      readonly reason: string
      readonly tie: readonly Selector[]
      readonly source: string
    })
  | (At & {
      readonly kind: 'film over' | 'build over'
      readonly filmM: number
      readonly mostM: number
      readonly source: string
    })
  | (At & {
      readonly kind: 'colour shows'
      readonly coats: number
      readonly wanted: number
      /** Colours over which that many are enough. */
      readonly over: readonly string[]
      readonly source: string
    })
  | (At & { readonly kind: 'out of order'; readonly reason: string; readonly source: string })
  /** No rule speaks of it. */
  | (At & { readonly kind: 'untold' })
  /** Sources contradict each other. */
  | (At & { readonly kind: 'disputed'; readonly for: string; readonly against: string })
  /** It holds under a condition. */
  | (At & { readonly kind: 'only'; readonly only: string; readonly source: string })

/** Those with which a stack does not work; the others are worth knowing. */
export const breaks = ({ kind }: Fault): boolean => breaking.has(kind)

const breaking: ReadonlySet<Fault['kind']> = new Set([
  'fails',
  'not sanded',
  'between not sanded',
  'window never open',
  'not topcoated',
  'film over',
  'build over',
  'out of order',
])
