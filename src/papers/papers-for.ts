/** Every paper of a plan, and each by itself. */
import { daySheetSheets } from './day-sheet/day-sheet.ts'
import { createKit } from './kit.ts'
import { planSummarySheets } from './plan-summary/plan-summary.ts'
import type { Press } from './press.ts'
import { createSetter } from './setter.ts'
import { toPdf } from './to-pdf.ts'
import type { Paper, PaperInput } from './types.ts'

export async function planSummary(input: PaperInput, press: Press): Promise<Paper> {
  const kit = createKit(input, createSetter(press))
  return { name: 'plan-summary.pdf', kind: 'plan-summary', bytes: await toPdf(planSummarySheets(kit), press) }
}

/** Of the date asked for, else the first working day; a sheet that says so when nothing is planned then. */
export async function daySheet(input: PaperInput, press: Press): Promise<Paper> {
  const kit = createKit(input, createSetter(press))
  const date =
    input.date ?? input.plan.days.days[0]?.date ?? kit.say.dateOf(Math.floor(input.plan.stamp.nowMs / 60_000))
  return { name: 'day-sheet.pdf', kind: 'day-sheet', bytes: await toPdf(daySheetSheets(kit, date), press) }
}

export async function papersFor(input: PaperInput, press: Press): Promise<readonly Paper[]> {
  return [await planSummary(input, press), await daySheet(input, press)]
}
