/**
 * Sends what was edited in jobs that are not open, one job after the other, as soon as the server is in reach. A job
 * that is opened meanwhile sends itself.
 */
import { createListeners, type Listeners } from './listeners.ts'

export type Outbox = Pick<Listeners, 'listen'> & {
  /** Jobs with edits that are only on this device, by id; the same list until it changes. */
  readonly onlyHere: () => readonly string[]
  /** Resolves once nothing of the job is being sent here; from then on its page does it. */
  readonly hold: (job: string) => Promise<void>
  readonly release: (job: string) => void
  /** Looks what there is to send, and sends it if the server can be reached. */
  readonly look: () => Promise<void>
  /** The same; what could not be sent a moment ago is tried again at once. */
  readonly lookAnew: () => Promise<void>
}

export type OutboxPort = {
  readonly nowMs: () => number
  readonly online: () => boolean
  /** Jobs with something the server has not got. */
  readonly unsent: () => Promise<readonly string[]>
  /** Jobs of which it is not known whether the server still has them. */
  readonly unsure: () => Promise<readonly string[]>
  /** None is unsure any more. */
  readonly compared: () => Promise<void>
  /** True once the server has everything of the job; false when it cannot be sent now. */
  readonly send: (job: string, stop: AbortSignal) => Promise<boolean>
}

/** What the server does not take now it will hardly take in a minute, ms. */
const restMs = 10 * 60_000

export function createOutbox(port: OutboxPort): Outbox {
  const listeners = createListeners()
  const held = new Map<string, number>()
  const failedMs = new Map<string, number>()
  let onlyHere: readonly string[] = []
  let sending:
    | { readonly job: string; readonly stop: AbortController; readonly ended: Promise<unknown> }
    | undefined
  let looking: Promise<void> | undefined
  let again = false

  const see = async (): Promise<readonly string[]> => {
    const unsent = [...(await port.unsent())].sort()
    if (unsent.join() !== onlyHere.join()) {
      onlyHere = unsent
      listeners.tell()
    }
    return unsent
  }
  const send = async (job: string): Promise<boolean> => {
    const stop = new AbortController()
    const ended = port.send(job, stop.signal).catch(() => false)
    sending = { job, stop, ended }
    const there = await ended
    sending = undefined
    if (there || stop.signal.aborted) failedMs.delete(job)
    else failedMs.set(job, port.nowMs())
    return there
  }
  const lookOnce = async (): Promise<void> => {
    const unsent = await see()
    if (!port.online()) return
    const unsure = await port.unsure()
    let all = true
    for (const job of new Set([...unsent, ...unsure])) {
      if (!port.online()) return
      // An open job compares itself, and is compared once more when it is left.
      const waits = held.has(job) || port.nowMs() - (failedMs.get(job) ?? -restMs) < restMs
      if (!waits && (await send(job))) await see()
      else all = false
    }
    if (all && unsure.length > 0) await port.compared()
  }
  const look = async (): Promise<void> => {
    again = true
    looking ??= (async () => {
      while (again) {
        again = false
        // Whatever is wrong with the database is told where something is kept.
        await lookOnce().catch(() => undefined)
      }
      looking = undefined
    })()
    return looking
  }
  return {
    listen: listeners.listen,
    onlyHere: () => onlyHere,
    hold: async (job) => {
      held.set(job, (held.get(job) ?? 0) + 1)
      if (sending?.job !== job) return
      sending.stop.abort()
      await sending.ended
    },
    release: (job) => {
      const count = (held.get(job) ?? 0) - 1
      if (count > 0) held.set(job, count)
      else held.delete(job)
      void look()
    },
    look,
    lookAnew: () => {
      failedMs.clear()
      return look()
    },
  }
}
