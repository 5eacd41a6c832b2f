/** One move of the plan: how it moved, and by what. */
import type { Moved } from './how-it-moved.ts'

export type PlanMove = {
  readonly moved: Moved
  /** Of the change on this device that stood last when it moved. */
  readonly number: number
  readonly atMs: number
  /** `elsewhere`: an edit that this device did not make. */
  readonly by: 'edit' | 'elsewhere' | 'log' | 'weather'
}

/** More would be a history, which the log is. */
export const mostMoves = 4
