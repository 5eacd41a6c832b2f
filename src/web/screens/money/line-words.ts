/** What a line of the estimate is called, and how much of it there is. */
import type { MoneyLine } from '#plan'
import { labelOf, type Words } from '#words'
import type { ShownPlan } from '../../worker/messages.ts'

export function lineName(plan: ShownPlan, line: MoneyLine, words: Words): string {
  if (line.group === 'costs' || line.group === 'changes') return line.subject
  if (line.group === 'labour') return labelOf(`labour.${line.subject}`)
  if (line.group === 'materials')
    return plan.buildUps.sheets.find((sheet) => sheet.id === line.subject)?.name ?? line.subject
  const item = plan.stores.consumables.find(
    (one) => (one.sheet ? `${one.id}:${one.sheet}` : one.id) === line.id,
  )
  if (!item) return line.subject
  const name = labelOf(`consumable.${item.id}`)
  const sheet = plan.buildUps.sheets.find(({ id }) => id === item.sheet)
  return sheet ? words.sentence('stores.goesWith', { name, sheet: sheet.name }) : name
}

export function lineQuantity({ unit, quantity }: MoneyLine, words: Words): string {
  if (unit === 'h') return words.figure('hours', quantity)
  if (unit === 'L') return words.figure('volumeL', quantity)
  if (unit === 'm') return words.figure('lengthM', quantity)
  return unit === 'sum' ? '' : `${quantity} ${labelOf(`unit.${unit}`)}`
}
