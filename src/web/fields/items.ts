/** The items of a collection as they are kept, in the order in which they are read. */
import type { RawCells } from '#job'
import type { CollectionPlace, JobView } from '../job/job-view.ts'

export type RawItem = { readonly id: string; readonly cells: RawCells }

/** Without those that were taken away; what is no map of cells is left to the list of problems. */
export function itemsOf(
  { raw }: Pick<JobView, 'raw'>,
  { part, section }: CollectionPlace,
): readonly RawItem[] {
  const collection = raw[part]?.[section]
  if (typeof collection !== 'object' || collection === null) return []
  return Object.entries(collection)
    .filter((entry): entry is [string, RawCells] => typeof entry[1] === 'object' && entry[1] !== null)
    .filter(([, cells]) => cells.gone === undefined || cells.gone === 'false')
    .map(([id, cells]) => ({ id, cells }))
    .sort((a, b) => compare(keyOf(a), keyOf(b)) || compare(a.id, b.id))
}

const keyOf = ({ cells }: RawItem): string => (typeof cells.order === 'string' ? cells.order : '\u007f')

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0)

/** What an item is called: its name, or its id spelled out. */
export const nameOf = ({ id, cells }: RawItem): string => {
  const { name } = cells
  return typeof name === 'string' && name !== '' ? name : id.replaceAll('-', ' ')
}
