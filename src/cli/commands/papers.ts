/** `hardstand papers`: every document of the plan into a folder. */
import type { Command, Flags } from '../command.ts'
import { textFlag } from '../command.ts'
import { CliFault } from '../fault.ts'
import { faultLines, makePlan, planFlags } from '../make-plan.ts'
import { plainWords } from '../plain-words.ts'
import { stampJson } from '../views/stamp-json.ts'
import { writePapers } from '../write-papers.ts'

export const papers: Command = {
  name: 'papers',
  summary: 'every document into a folder: plan, day sheet, quote, change orders, shopping list',
  argument: { name: '<job>', doc: 'job document, or - for standard input' },
  flags: [
    ...planFlags,
    { flags: '--out <folder>', doc: 'where to write; out when left out' },
    { flags: '--page <size>', doc: 'A4 or Letter; A4 when left out' },
    { flags: '--date <date>', doc: 'day of the day sheet; the first working day when left out' },
  ],
  run: async ({ argument, flags }) => {
    const page = pageOf(flags)
    const date = dateOf(flags)
    const made = await makePlan(argument, flags)
    const written = await writePapers(made, { folder: textFlag(flags, 'out') ?? 'out', page, date })
    return {
      lines: written,
      json: { papers: written, stamp: stampJson(made.plan) },
      faults: faultLines(made),
    }
  },
}

function pageOf(flags: Flags): 'A4' | 'Letter' {
  const text = textFlag(flags, 'page') ?? 'A4'
  const page = (['A4', 'Letter'] as const).find((known) => known.toLowerCase() === text.toLowerCase())
  if (!page) throw new CliFault([plainWords.sentence('cli.badPage', { text })], 2)
  return page
}

function dateOf(flags: Flags): string | undefined {
  const text = textFlag(flags, 'date')
  if (text !== undefined && !/^\d{4}-\d{2}-\d{2}$/.test(text))
    throw new CliFault([plainWords.sentence('cli.badDate', { text })], 2)
  return text
}
