/** What a pack is called in a list: its product and its size. */
import type { RawCells } from '#job'
import type { JobView } from '../job/job-view.ts'
import { itemsOf, nameOf } from './items.ts'

/** Empty for a pack of which nothing is said yet. */
export function packName(view: JobView, { sheet, volume }: RawCells): string {
  const product = itemsOf(view, { part: 'work', section: 'sheets' }).find(({ id }) => id === sheet)
  return [product ? nameOf(product) : sheet, volume]
    .filter((part) => part !== undefined && part !== '')
    .join(', ')
}
