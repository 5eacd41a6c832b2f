/** A collection: a map from id to maps of cells, read to a sorted list without removed items. */
import type { Section } from './field.ts'
import { errorAt, type FoundProblem, noteAt } from './found-problem.ts'
import { byOrder, orderOf, sortKey } from './order-key.ts'
import { below } from './pointer.ts'
import { quote } from './problem.ts'
import { entryOf, isMap } from './raw.ts'
import type { CellContext } from './read-cell.ts'
import { readCells } from './read-cells.ts'
import { shapeOf } from './read-one.ts'
import { type Item, type RefFieldOf, refFields, resolve, type Targets } from './references.ts'
import { equalData, share, shareList } from './share.ts'

export type ManyTask = {
  readonly name: string
  readonly section: Section
  readonly raw: unknown
  readonly pointer: string
  readonly context: CellContext
  readonly unknownKeys: 'error' | 'note'
  readonly targets: Targets
  readonly most: number
}

type ReadItem = {
  readonly id: string
  readonly raw: unknown
  readonly sortKey: string
  /** What could be read of it; nothing when it is removed or no map. */
  readonly item: Item | undefined
  /** It has all it cannot do without. */
  readonly whole: boolean
  readonly problems: readonly FoundProblem[]
}

export type ManyState = {
  readonly raw: unknown
  readonly aims: readonly (ReadonlySet<string> | undefined)[]
  readonly read: ReadonlyMap<string, ReadItem>
  readonly list: readonly Item[]
  readonly ids: ReadonlySet<string>
  readonly problems: readonly FoundProblem[]
}

export const idPattern = '[a-z0-9][a-z0-9-]{0,63}'
const wholeId = new RegExp(`^${idPattern}$`)

/**
 * Nothing is read again when neither the map nor the ids it may name have changed; otherwise only the items whose
 * own cells have.
 */
export const readMany = (task: ManyTask, older: ManyState | undefined): ManyState => {
  const refs = refFields(task.section.fields)
  const aims = refs.map(({ to }) => task.targets.get(to))
  const sameAims = older !== undefined && aims.every((aim, at) => aim === older.aims[at])
  if (older && sameAims && older.raw === task.raw) return older
  const problems: FoundProblem[] = []
  const items = readItems(task, older, problems)
  const list = finished(task, { items, refs, older, problems })
  const ids = new Set(list.map(({ id }) => id))
  return {
    raw: task.raw,
    aims,
    read: new Map(items.map((each) => [each.id, each])),
    list,
    ids: older && sameMembers(older.ids, ids) ? older.ids : ids,
    problems,
  }
}

const sameMembers = (a: ReadonlySet<string>, b: ReadonlySet<string>): boolean =>
  a.size === b.size && [...a].every((member) => b.has(member))

/** By (`order`, id), with the problems of each item collected on the way. */
const readItems = (
  task: ManyTask,
  older: ManyState | undefined,
  problems: FoundProblem[],
): readonly ReadItem[] => {
  const { raw, pointer, most } = task
  if (raw === undefined || raw === null) return []
  if (!isMap(raw)) {
    problems.push(errorAt(pointer, 'job.shape', { found: shapeOf(raw), accepted: 'map' }, 'key'))
    return []
  }
  const ids = Object.keys(raw)
  if (ids.length > most)
    problems.push(errorAt(pointer, 'job.tooManyItems', { count: ids.length, most }, 'key'))
  const items = ids.slice(0, most).map((id) => {
    const before = older?.read.get(id)
    return before && equalData(before.raw, raw[id]) ? before : readItem(task, id, raw[id])
  })
  for (const item of items) problems.push(...item.problems)
  return items.sort(byOrder)
}

const readItem = (task: ManyTask, id: string, raw: unknown): ReadItem => {
  const pointer = below(task.pointer, id)
  const nothing = { id, raw, sortKey: '', item: undefined, whole: false }
  if (!isMap(raw)) {
    const data = { found: shapeOf(raw), accepted: 'map' }
    return { ...nothing, problems: [errorAt(pointer, 'job.shape', data, 'key')] }
  }
  const problems: FoundProblem[] = []
  if (isGone(raw, pointer, problems)) return { ...nothing, problems }
  if (!wholeId.test(id)) problems.push(errorAt(pointer, 'job.badId', { found: quote(id) }, 'key'))
  const order = entryOf(raw, 'order')
  problems.push(...orderProblems(order, pointer))
  const reading = readCells({
    ...task,
    section: task.name,
    shape: 'many',
    fields: task.section.fields,
    raw,
    pointer,
  })
  problems.push(...reading.problems)
  const whole = !reading.broken && wholeId.test(id)
  return { id, raw, sortKey: sortKey(order), item: { id, ...reading.cells }, whole, problems }
}

const textOf = (value: unknown): string | undefined => (typeof value === 'string' ? value : undefined)

/** Removed for good; nothing else in such an item matters any more. */
const isGone = (
  raw: Readonly<Record<string, unknown>>,
  pointer: string,
  problems: FoundProblem[],
): boolean => {
  const gone = entryOf(raw, 'gone')
  const text = typeof gone === 'boolean' ? String(gone) : (textOf(gone) ?? '').trim().toLowerCase()
  if (text === 'true' || text === 'yes') return true
  if (text !== '' && text !== 'false' && text !== 'no') {
    problems.push(
      errorAt(below(pointer, 'gone'), 'job.yesNo', {
        field: 'gone',
        found: quote(text),
        accepted: 'yes, no',
      }),
    )
  }
  return false
}

const orderProblems = (order: unknown, pointer: string): readonly FoundProblem[] =>
  order === undefined || order === '' || orderOf(order) !== undefined
    ? []
    : [noteAt(below(pointer, 'order'), 'job.order', { found: quote(textOf(order) ?? shapeOf(order)) })]

type Finish = {
  readonly items: readonly ReadItem[]
  readonly refs: readonly RefFieldOf[]
  readonly older: ManyState | undefined
  readonly problems: FoundProblem[]
}

/**
 * Drops what refers to nothing, which is told of broken items too; every item equal to its older self is its older
 * self.
 */
const finished = (task: ManyTask, { items, refs, older, problems }: Finish): readonly Item[] => {
  const before = new Map(older?.list.map((item) => [item.id, item]))
  const list = items.flatMap(({ id, item, whole }): Item[] => {
    if (item === undefined) return []
    const resolved = resolve(item, { refs, targets: task.targets, pointer: below(task.pointer, id) })
    problems.push(...resolved.problems)
    return whole && resolved.item ? [share(before.get(id), resolved.item)] : []
  })
  return shareList(older?.list, list)
}
