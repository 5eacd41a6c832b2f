/** Runs the stages of the road and remembers them: a stage whose inputs are the same objects is not run again. */
import { reuse } from './reuse.ts'

export type Stage<I extends Inputs, O> = {
  readonly name: string
  readonly run: (inputs: I) => O
  /** Large results that are never equal to the last one are not compared with it. */
  readonly fresh?: true
}
type Inputs = Readonly<Record<string, unknown>>

export type TraceEntry = { readonly stage: string; readonly ran: boolean }
export type Runner = <I extends Inputs, O>(stage: Stage<I, O>, inputs: I) => O

/** One memory a planner; it lives as long as the job is open. */
export type Memory = {
  /** A runner for one plan and the trace it fills. */
  readonly begin: () => { readonly run: Runner; readonly trace: readonly TraceEntry[] }
}

export function createMemory(): Memory {
  const kept = new Map<string, { readonly inputs: Inputs; readonly output: unknown }>()
  const begin: Memory['begin'] = () => {
    const trace: TraceEntry[] = []
    const run: Runner = (stage, inputs) => {
      const last = kept.get(stage.name)
      const ran = !last || !sameInputs(last.inputs, inputs)
      trace.push({ stage: stage.name, ran })
      if (!ran) return last.output as never
      // A result that came out equal keeps its identity: the stages after it then have nothing to do.
      const output = stage.fresh ? stage.run(inputs) : reuse(last?.output, stage.run(inputs))
      kept.set(stage.name, { inputs, output })
      return output
    }
    return { run, trace }
  }
  return { begin }
}

const sameInputs = (before: Inputs, now: Inputs): boolean => {
  const keys = Object.keys(now)
  return keys.length === Object.keys(before).length && keys.every((key) => Object.is(before[key], now[key]))
}
