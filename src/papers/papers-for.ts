/** Every paper of a plan, and each by itself. */
import { changeOrderSheets } from './change-order/change-order.ts'
import { fileNames } from './change-order/file-names.ts'
import { daySheetSheets } from './day-sheet/day-sheet.ts'
import { createKit, type Kit } from './kit.ts'
import { planSummarySheets } from './plan-summary/plan-summary.ts'
import type { Press } from './press.ts'
import { quoteSheets } from './quote/quote.ts'
import { createSetter } from './setter.ts'
import { shoppingListCsv } from './shopping-list/shopping-list.ts'
import { toPdf } from './to-pdf.ts'
import type { Paper, PaperInput } from './types.ts'

const kitOf = (input: PaperInput, press: Press): Kit => createKit(input, createSetter(press))

/** The whole plan: headline, zones, build-up, dates, days, what to buy, cautions and notes. */
export async function planSummary(input: PaperInput, press: Press): Promise<Paper> {
  const bytes = await toPdf(planSummarySheets(kitOf(input, press)), press)
  return { name: 'plan-summary.pdf', kind: 'plan-summary', bytes }
}

/** Of the date asked for, else the first working day; a sheet that says so when nothing is planned then. */
export async function daySheet(input: PaperInput, press: Press): Promise<Paper> {
  const kit = kitOf(input, press)
  const today = kit.say.dateOf(Math.floor(input.plan.stamp.nowMs / 60_000))
  const date = input.date ?? input.plan.days.days[0]?.date ?? today
  return { name: 'day-sheet.pdf', kind: 'day-sheet', bytes: await toPdf(daySheetSheets(kit, date), press) }
}

/** Undefined for a plan without money. */
export async function quote(input: PaperInput, press: Press): Promise<Paper | undefined> {
  const { money } = input.plan
  if (!money) return undefined
  const bytes = await toPdf(quoteSheets(kitOf(input, press), money), press)
  return { name: 'quote.pdf', kind: 'quote', bytes }
}

/** One for each change; none for a plan without money. */
export async function changeOrders(input: PaperInput, press: Press): Promise<readonly Paper[]> {
  const changes = input.plan.money?.changes ?? []
  const names = fileNames(changes.map((change) => change.id))
  const kit = kitOf(input, press)
  const papers: Paper[] = []
  for (const [index, change] of changes.entries()) {
    const bytes = await toPdf(changeOrderSheets(kit, change), press)
    papers.push({ name: `change-order-${names[index]}.pdf`, kind: 'change-order', bytes })
  }
  return papers
}

/** What to buy, as CSV. */
export function shoppingList(input: PaperInput, press: Press): Paper {
  return { name: 'shopping-list.csv', kind: 'shopping-list', bytes: shoppingListCsv(kitOf(input, press)) }
}

/** Every paper there is something to put on. */
export async function papersFrom(input: PaperInput, press: Press): Promise<readonly Paper[]> {
  const offer = await quote(input, press)
  return [
    await planSummary(input, press),
    await daySheet(input, press),
    ...(offer ? [offer] : []),
    ...(await changeOrders(input, press)),
    shoppingList(input, press),
  ]
}
