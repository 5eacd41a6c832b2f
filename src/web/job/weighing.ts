/**
 * Which guesses move the plan most: each is tried in the worker, one after the other, so that an edit meanwhile is
 * planned between two of them. Also the worker's practice: until its engine has been through the ways of a plan a few
 * times, an edit takes half as long again.
 */
import { createListeners, type Listeners } from '../device/listeners.ts'
import type { PlanClient } from '../worker/plan-client.ts'
import { type Weighed, weightOf } from './weight.ts'

export type Weighing = Pick<Listeners, 'listen'> & {
  readonly now: () => Weighings
  /** Tries them all, unless that is under way. */
  readonly start: () => void
  readonly close: () => void
}

export type Weighings = {
  /** Those that move anything, the heaviest first. */
  readonly list: readonly Weighed[]
  /** How much is tried: 1 when all are. */
  readonly share: number
}

export type WeighingOptions = { readonly ask: PlanClient['ask']; readonly nowMs: () => number }

export function openWeighing({ ask, nowMs }: WeighingOptions): Weighing {
  const listeners = createListeners()
  let now: Weighings = { list: [], share: 0 }
  let running = false
  let closed = false
  const set = (next: Weighings): void => {
    if (closed) return
    now = next
    listeners.tell()
  }
  const weigh = async (): Promise<void> => {
    const candidates = await ask({ kind: 'candidates' })
    let list: readonly Weighed[] = []
    for (const [at, candidate] of candidates.entries()) {
      if (closed) return
      const one = { candidate, effect: await ask({ kind: 'weigh', candidate, nowMs: nowMs() }) }
      if (weightOf(one) > 0) list = [...list, one].sort((a, b) => weightOf(b) - weightOf(a))
      set({ list, share: (at + 1) / candidates.length })
    }
    set({ list, share: 1 })
  }
  return {
    listen: listeners.listen,
    now: () => now,
    start: () => {
      if (running) return
      running = true
      // A worker that fails says so where the plan stands.
      void weigh()
        .catch(() => set({ ...now, share: 1 }))
        .finally(() => {
          running = false
        })
    },
    close: () => {
      closed = true
    },
  }
}
