/**
 * Values of this device that gave way to another device's, kept here until the person has said which one stands. Also
 * keeps which writers of the shared documents were this device, as each page that is opened writes as a new one.
 */
import type { Doc, Transaction } from 'yjs'
import { type Overwritten, overwrittenIn } from '#replica'
import { createListeners, type Listeners } from './listeners.ts'

export type Clash = Overwritten & { readonly part: 'work' | 'money' }
export type ClashPlace = Pick<Clash, 'part' | 'section' | 'item' | 'key'>

export type ClashBox = Pick<Listeners, 'listen'> & {
  /** The oldest first; the same list until something changes. */
  readonly list: () => readonly Clash[]
  /** To be called once the document holds what this device has kept of it. */
  readonly watch: (part: Clash['part'], doc: Doc) => void
  /** The person has seen it: the other device's value may stand. */
  readonly leave: (place: ClashPlace) => void
  readonly close: () => void
}

export type ClashShelf = Pick<Storage, 'getItem' | 'setItem'>

/** More than anybody would go through. */
const mostClashes = 100
/** Pages in which this device has edited a job; what was written longer ago has been seen by everybody. */
const mostWriters = 500

export function openClashBox(shelf: ClashShelf | undefined, job: string): ClashBox {
  const listeners = createListeners()
  const places = { clashes: `hardstand.clashes.${job}`, writers: `hardstand.writers.${job}` }
  // Where the browser keeps nothing, they last as long as the page.
  let clashes = readList(shelf, places.clashes, clashFrom)
  let lasts = shelf !== undefined
  const writers = new Set<number>()
  const own = (): ReadonlySet<number> =>
    new Set([...writers, ...readList(shelf, places.writers, (one) => (isCount(one) ? one : undefined))])
  const put = (next: readonly Clash[]): void => {
    clashes = next.slice(-mostClashes)
    lasts = write(shelf, places.clashes, clashes)
    listeners.tell()
  }
  /** Another tab may have changed the list meanwhile. */
  const newest = (): readonly Clash[] => (lasts ? readList(shelf, places.clashes, clashFrom) : clashes)
  const wrote = (part: Clash['part'], { doc, changed }: Transaction): void => {
    if (changed.size === 0) return
    if (!writers.has(doc.clientID)) {
      writers.add(doc.clientID)
      write(shelf, places.writers, [...own()].slice(-mostWriters))
    }
    // Whoever writes such a cell anew has decided what stands there.
    const now = newest()
    const left = now.filter(
      (clash) => clash.part !== part || !changed.get(holderOf(doc, clash) as never)?.has(clash.key),
    )
    if (left.length < now.length) put(left)
  }
  const heard = (part: Clash['part'], transaction: Transaction): void => {
    const found = overwrittenIn(transaction, own()).map((one): Clash => ({ part, ...one }))
    if (found.length > 0) put(found.reduce(withClash, newest()))
  }
  const follow = ({ key }: Pick<StorageEvent, 'key'>): void => {
    if (key !== places.clashes) return
    clashes = readList(shelf, places.clashes, clashFrom)
    listeners.tell()
  }
  globalThis.addEventListener?.('storage', follow)
  const stops: (() => void)[] = [() => globalThis.removeEventListener?.('storage', follow)]
  return {
    listen: listeners.listen,
    list: () => clashes,
    watch: (part, doc) => {
      const look = (transaction: Transaction): void => (transaction.local ? wrote : heard)(part, transaction)
      doc.on('afterTransaction', look)
      stops.push(() => doc.off('afterTransaction', look))
    },
    leave: (place) => put(newest().filter((clash) => !samePlace(clash, place))),
    close: () => {
      for (const stop of stops) stop()
    },
  }
}

/** What was lost first is what the person wrote; what stands is the newest of the others'. */
function withClash(list: readonly Clash[], clash: Clash): readonly Clash[] {
  return [...list.filter((one) => !samePlace(one, clash)), clash]
}

export const samePlace = (a: ClashPlace, b: ClashPlace): boolean =>
  a.part === b.part && a.section === b.section && a.item === b.item && a.key === b.key

/** The shared map that has the cell. */
const holderOf = (doc: Doc, { section, item }: ClashPlace): unknown =>
  item === undefined ? doc.getMap(section) : doc.getMap(section).get(item)

/** Reading is total: what is none of them is left out. */
function readList<One>(
  shelf: ClashShelf | undefined,
  place: string,
  from: (one: unknown) => One | undefined,
): readonly One[] {
  try {
    const kept: unknown = JSON.parse(shelf?.getItem(place) ?? '[]')
    return Array.isArray(kept) ? kept.flatMap((one) => from(one) ?? []) : []
  } catch {
    return []
  }
}

/** False when the browser keeps nothing. */
function write(shelf: ClashShelf | undefined, place: string, list: readonly unknown[]): boolean {
  try {
    shelf?.setItem(place, JSON.stringify(list))
    return shelf !== undefined
  } catch {
    return false
  }
}

function clashFrom(one: unknown): Clash | undefined {
  if (typeof one !== 'object' || one === null) return undefined
  const { part, section, item, key, mine, theirs } = one as Readonly<Record<string, unknown>>
  if (part !== 'work' && part !== 'money') return undefined
  if (typeof section !== 'string' || typeof key !== 'string') return undefined
  if (typeof mine !== 'string' || typeof theirs !== 'string') return undefined
  if (item !== undefined && typeof item !== 'string') return undefined
  return { part, section, ...(item === undefined ? {} : { item }), key, mine, theirs }
}

const isCount = (value: unknown): value is number => Number.isSafeInteger(value)
