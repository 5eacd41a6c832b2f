/** Commands that show one part of the plan: the same plan, another view. */
import type { Work } from '#job'
import type { Plan, PlanInput } from '#plan'
import type { Words } from '#words'
import type { Command } from '../command.ts'
import { faultLines, makePlan, planFlags } from '../make-plan.ts'
import { stampJson } from '../views/stamp-json.ts'

export type PartView = {
  readonly name: string
  readonly summary: string
  readonly lines: (plan: Plan, work: Work, words: Words, input: PlanInput) => readonly string[]
  readonly json: (plan: Plan, input: PlanInput) => object
}

export const planPart = (view: PartView): Command => ({
  name: view.name,
  summary: view.summary,
  argument: { name: '<job>', doc: 'job document, or - for standard input' },
  flags: planFlags,
  run: async ({ argument, flags }) => {
    const made = await makePlan(argument, flags)
    const { plan, job, input } = made
    const lines = view.lines(plan, job.projected.work, job.words, input)
    return {
      lines: shownLines(lines, job.words),
      json: { ...view.json(plan, input), stamp: stampJson(plan) },
      faults: faultLines(made),
    }
  },
})

/** Without the empty line before the first heading; a sentence where there is nothing. */
export const shownLines = (lines: readonly string[], words: Words): readonly string[] =>
  lines.length === 0 ? [words.sentence('cli.nothingToShow')] : trimmed(lines)

const trimmed = (lines: readonly string[]): readonly string[] => (lines[0] === '' ? lines.slice(1) : lines)
