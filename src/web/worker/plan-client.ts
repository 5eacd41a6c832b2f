/**
 * The page's side of the worker that plans. Edits are handed on at once and in order; while a plan is in the making
 * the next one waits, and many edits make one plan.
 */
import type { Answers, FromWorker, PlannedMessage, Question, ToWorker } from './messages.ts'

export type PlanClient = {
  readonly send: (message: Exclude<ToWorker, { readonly kind: 'plan' | 'ask' }>) => void
  /** Asks for a plan of everything sent so far. */
  readonly plan: (nowMs: number) => void
  readonly ask: <Q extends Question>(question: Q) => Promise<Answers[Q['kind']]>
  /** A plan is being made or waits to be made. */
  readonly planning: () => boolean
  readonly close: () => void
}

export type PlanClientOptions = {
  readonly worker: Pick<Worker, 'postMessage' | 'terminate' | 'onmessage' | 'onerror'>
  readonly planned: (message: PlannedMessage) => void
  readonly failed: (fault: { readonly code: string; readonly data: Readonly<Record<string, string>> }) => void
}

type Waiting = { readonly resolve: (answer: never) => void; readonly reject: (error: Error) => void }

export function createPlanClient({ worker, planned, failed }: PlanClientOptions): PlanClient {
  const asked = new Map<number, Waiting>()
  let turn = 0
  let asks = 0
  let running = false
  let next: number | undefined
  const post = (message: ToWorker): void => worker.postMessage(message)
  const start = (nowMs: number): void => {
    running = true
    next = undefined
    turn += 1
    post({ kind: 'plan', turn, nowMs })
  }
  const ended = (): void => {
    running = false
    if (next !== undefined) start(next)
  }
  worker.onmessage = ({ data }: MessageEvent<FromWorker>) => {
    if (data.kind === 'answer') {
      const waiting = asked.get(data.ask)
      asked.delete(data.ask)
      if (data.fault === undefined) waiting?.resolve(data.answer as never)
      else waiting?.reject(new Error(data.fault))
      return
    }
    ended()
    if (data.kind === 'planned') planned(data)
    else failed(data)
  }
  worker.onerror = (event) => {
    ended()
    failed({ code: 'web.planFailed', data: { text: (event as ErrorEvent).message ?? '' } })
  }
  return {
    send: post,
    plan: (nowMs) => {
      if (running) next = nowMs
      else start(nowMs)
    },
    ask: (question) =>
      new Promise((resolve, reject) => {
        asks += 1
        asked.set(asks, { resolve, reject })
        post({ kind: 'ask', ask: asks, question })
      }),
    planning: () => running,
    close: () => {
      for (const { reject } of asked.values())
        reject(new Error('plan client: closed, got a question, expected none'))
      worker.terminate()
    },
  }
}
