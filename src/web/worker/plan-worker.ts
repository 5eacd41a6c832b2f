/** The worker that plans: takes the messages of the page in their order and answers each. */
import type { FromWorker, ToWorker } from './messages.ts'
import { createPlanDesk } from './plan-desk.ts'

const port = self as unknown as {
  onmessage: ((event: { readonly data: ToWorker }) => void) | null
  postMessage: (message: FromWorker) => void
}

const desk = createPlanDesk({ app: __APP_VERSION__, seed: 1, clockMs: () => performance.now() })

port.onmessage = ({ data }) => {
  switch (data.kind) {
    case 'update':
      return desk.update(data.part, data.update)
    case 'entries':
      return desk.setEntries(data.entries)
    case 'weather':
      return desk.setWeather(data.hash, data.bytes)
    case 'plan':
      return port.postMessage(planned(data))
    case 'ask':
      return void answered(data).then((message) => port.postMessage(message))
  }
}

function planned({ turn, nowMs }: Extract<ToWorker, { readonly kind: 'plan' }>): FromWorker {
  try {
    return desk.plan({ turn, nowMs })
  } catch (error) {
    return { kind: 'failed', turn, code: 'web.planFailed', data: { text: textOf(error) } }
  }
}

async function answered({ ask, question }: Extract<ToWorker, { readonly kind: 'ask' }>): Promise<FromWorker> {
  try {
    return { kind: 'answer', ask, answer: await desk.answer(question) }
  } catch (error) {
    return { kind: 'answer', ask, fault: textOf(error) }
  }
}

const textOf = (error: unknown): string => (error instanceof Error ? error.message : String(error))
