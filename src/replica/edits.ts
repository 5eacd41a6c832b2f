/** Edits of a shared document: cells, and items of collections. Removal is a cell, so that nothing is lost by it. */
import * as Y from 'yjs'
import { orderBetween, type RawCells } from '#job'

export type SharedCell = { readonly section: string; readonly item?: string; readonly key: string }
export type SharedItem = { readonly section: string; readonly item: string }

/** Writes a cell, or clears it. A cell of an item that is not there is not written. */
export function setCell(doc: Y.Doc, { section, item, key }: SharedCell, text: string | undefined): void {
  const map = item === undefined ? doc.getMap(section) : itemMap(doc, { section, item })
  if (!map || map.get(key) === text) return
  if (text === undefined) map.delete(key)
  else map.set(key, text)
}

/** Adds an item behind `after`, or last. Its id must be new: the one who calls makes it at random. */
export function addItem(
  doc: Y.Doc,
  place: SharedItem,
  { cells, after }: { readonly cells: RawCells; readonly after: string | undefined },
): void {
  const order = orderBehind(doc, place.section, after ?? sorted(doc, place.section).at(-1)?.id)
  doc.transact(() =>
    doc.getMap(place.section).set(place.item, new Y.Map(Object.entries({ ...cells, order }))),
  )
}

/** Takes an item away; `gone` false brings it back. */
export function setGone(doc: Y.Doc, place: SharedItem, gone: boolean): void {
  setCell(doc, { ...place, key: 'gone' }, gone ? 'true' : undefined)
}

/** Moves an item behind `after`, or to the front. */
export function moveItem(doc: Y.Doc, place: SharedItem, after: string | undefined): void {
  if (after === place.item) return
  setCell(doc, { ...place, key: 'order' }, orderBehind(doc, place.section, after, place.item))
}

function itemMap(doc: Y.Doc, { section, item }: SharedItem): Y.Map<unknown> | undefined {
  const map = doc.getMap(section).get(item)
  return map instanceof Y.Map ? map : undefined
}

type Placed = { readonly id: string; readonly order: string | undefined }

/** Items in the order in which they are read; those that are gone keep their place. */
function sorted(doc: Y.Doc, section: string): readonly Placed[] {
  const placed: Placed[] = []
  for (const [id, cells] of doc.getMap(section)) {
    if (!(cells instanceof Y.Map)) continue
    const order = cells.get('order')
    placed.push({ id, order: typeof order === 'string' ? order : undefined })
  }
  return placed.sort(byOrder)
}

/** As the reader of jobs sorts: by order, those without one last, then by id. */
const byOrder = (a: Placed, b: Placed): number =>
  compare(a.order ?? '\u007f', b.order ?? '\u007f') || compare(a.id, b.id)

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0)

function orderBehind(doc: Y.Doc, section: string, after: string | undefined, moving?: string): string {
  const others = sorted(doc, section).filter(({ id }) => id !== moving)
  const at = after === undefined ? -1 : others.findIndex(({ id }) => id === after)
  return orderBetween(others[at]?.order, others[at + 1]?.order)
}
