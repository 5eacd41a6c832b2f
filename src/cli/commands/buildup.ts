/** `buildup`: the layers of every zone and whether they hold; with `--suggest` build-ups from the sheets at hand. */
import { catalogue } from '#catalogue'
import { suggestBuildUps } from '#plan'
import type { Answer, Command, Flags } from '../command.ts'
import { textFlag } from '../command.ts'
import { faultLines, type MadePlan, makePlan, planFlags } from '../make-plan.ts'
import { bondLines, buildUpJson, buildUpLines, sandingLines } from '../views/buildup-view.ts'
import { stampJson } from '../views/stamp-json.ts'
import { suggestJson, suggestLines } from '../views/suggest-view.ts'
import { shownLines } from './plan-part.ts'

export const buildup: Command = {
  name: 'buildup',
  summary: 'layers with film, spread and litres, and whether each holds on the one below',
  argument: { name: '<job>', doc: 'job document, or - for standard input' },
  flags: [
    ...planFlags,
    { flags: '--suggest', doc: 'find the three best build-ups from the sheets of the job' },
    {
      flags: '--finish <family>',
      doc: 'with --suggest: only finishes of this family, for example "two-part polyurethane"',
    },
  ],
  run: async ({ argument, flags }) => {
    const made = await makePlan(argument, flags)
    return flags.suggest === true ? suggested(made, flags) : judged(made)
  },
}

function judged(made: MadePlan): Answer {
  const { plan, job } = made
  return {
    lines: shownLines(
      [...buildUpLines(plan, job.words), ...sandingLines(plan, job.words), ...bondLines(plan, job.words)],
      job.words,
    ),
    json: {
      ...buildUpJson(plan),
      notes: [...plan.buildUps.notes, ...plan.bonds.notes],
      stamp: stampJson(plan),
    },
    faults: faultLines(made),
  }
}

function suggested({ plan, job }: MadePlan, flags: Flags): Answer {
  const { work, money } = job.projected
  const family = textFlag(flags, 'finish')
  const found = suggestBuildUps({
    plan,
    work,
    prices: money?.prices,
    catalogue,
    wish: family === undefined ? {} : { family },
  })
  const of = { plan, found, ...(money ? { currency: money.terms.currency } : {}) }
  return {
    lines: shownLines(suggestLines(of, job.words), job.words),
    json: { ...suggestJson(of), stamp: stampJson(plan) },
  }
}
