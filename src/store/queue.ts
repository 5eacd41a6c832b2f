/** One thing after the other: whoever asks waits for all who asked before, and closing waits for everybody. */
import { setImmediate } from 'node:timers/promises'
import { StoreError } from './store-error.ts'

export type Queue = {
  /** Refused once the queue is closed. A failure is told to who asked, and the next one has its turn. */
  readonly run: <Result>(work: () => Promise<Result>) => Promise<Result>
  /** The last work. Asked for twice, it is done once. */
  readonly close: (work: () => Promise<void>) => Promise<void>
}

export function createQueue(): Queue {
  let last: Promise<unknown> = Promise.resolve()
  let closing: Promise<void> | undefined
  const behind = <Result>(work: () => Promise<Result>): Promise<Result> => {
    const result = last.then(work)
    last = result.then(breathe, breathe)
    return result
  }
  return {
    run: async (work) => {
      if (closing) throw new StoreError('store.closed', {}, 'store: closed, expected to be open')
      return behind(work)
    },
    close: (work) => {
      closing ??= behind(work)
      return closing
    },
  }
}

/** The database blocks the process while it writes; between two writes others get a word in. */
const breathe = (): Promise<void> => setImmediate()
