/** Makes papers in the browser; fetched with its writer when the first one is asked for. */
import {
  changeOrders,
  daySheet,
  type Paper,
  type PaperInput,
  planSummary,
  quote,
  shoppingList,
} from '#papers'
import { browserPress } from './browser-press.ts'

export type PaperKindOffered = 'plan-summary' | 'day-sheet' | 'quote' | 'change-order' | 'shopping-list'

/** None where there is nothing to put on it, such as a quote without money. */
export async function print(kind: PaperKindOffered, input: PaperInput): Promise<readonly Paper[]> {
  const press = await browserPress()
  switch (kind) {
    case 'plan-summary':
      return [await planSummary(input, press)]
    case 'day-sheet':
      return [await daySheet(input, press)]
    case 'quote': {
      const paper = await quote(input, press)
      return paper ? [paper] : []
    }
    case 'change-order':
      return changeOrders(input, press)
    case 'shopping-list':
      return [shoppingList(input, press)]
  }
}
