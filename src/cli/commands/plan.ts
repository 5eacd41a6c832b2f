/** `hardstand plan`: the whole road, as sentences here and papers in a folder. */
import type { Command } from '../command.ts'
import { textFlag } from '../command.ts'
import { faultLines, makePlan, planFlags } from '../make-plan.ts'
import { boatJson } from '../views/boat-view.ts'
import { buildUpJson } from '../views/buildup-view.ts'
import { daysJson } from '../views/days-view.ts'
import { marksJson } from '../views/marks-view.ts'
import { moneyJson } from '../views/money-view.ts'
import { notesJson } from '../views/notes-view.ts'
import { planLines } from '../views/plan-view.ts'
import { poursJson } from '../views/pours-view.ts'
import { repairsJson } from '../views/repairs-view.ts'
import { stampJson } from '../views/stamp-json.ts'
import { storesJson } from '../views/stores-view.ts'
import { section } from '../views/table.ts'
import { writePapers } from '../write-papers.ts'

export const planCommand: Command = {
  name: 'plan',
  summary: 'the whole road: boat, build-up, days, stores, money, cautions, papers',
  argument: { name: '<job>', doc: 'job document, or - for standard input' },
  flags: [...planFlags, { flags: '--out <folder>', doc: 'write the papers into this folder too' }],
  run: async ({ argument, flags }) => {
    const made = await makePlan(argument, flags)
    const { plan, job } = made
    const folder = textFlag(flags, 'out')
    const written =
      folder === undefined ? [] : await writePapers(made, { folder, page: 'A4', date: undefined })
    return {
      lines: [
        ...planLines(plan, job.projected.work, job.words),
        ...section(job.words.label('heading.papers'), written),
      ],
      json: {
        stamp: stampJson(plan),
        boat: boatJson(plan),
        repairs: repairsJson(plan),
        buildUp: buildUpJson(plan),
        marks: marksJson(plan),
        days: daysJson(plan),
        ...poursJson(plan),
        stores: storesJson(plan),
        money: moneyJson(plan),
        ...notesJson(plan),
        papers: written,
      },
      faults: faultLines(made),
    }
  },
}
