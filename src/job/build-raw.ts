/** A tree to a raw document: what is not a map where a map belongs is left out with a problem. */
import type { Section, Sections } from './field.ts'
import { nearest } from './nearest.ts'
import { orderBetween, orderKeys, orderOf } from './order-key.ts'
import { partNames, partSections, sectionOf, versionKey } from './parts.ts'
import { below } from './pointer.ts'
import { quote } from './problem.ts'
import type { RawCells, RawDocument, RawItems, RawPart, RawSection } from './raw.ts'
import type { Tree, TreeEntry, TreeFault } from './tree.ts'

type Build = { readonly faults: TreeFault[] }
type At = { readonly pointer: string; readonly at: number }

/** Nothing when the tree is no job document at all. */
export const buildRaw = (tree: Tree, faults: TreeFault[]): RawDocument | undefined => {
  const build: Build = { faults }
  const entries = mapEntries(build, tree, { pointer: '', at: tree.at })
  if (entries === undefined) return undefined
  if (!entries.some(({ key }) => (partNames as readonly string[]).includes(key))) {
    faults.push({ code: 'job.notAJob', at: tree.at, pointer: '', data: {} })
    return undefined
  }
  for (const entry of entries) refuseUnknownPart(build, entry)
  const find = (key: string): TreeEntry | undefined => entries.find((entry) => entry.key === key)
  const money = find('money')
  const log = find('log')
  return {
    hardstand: version(build, find(versionKey)),
    work: part(build, find('work'), partSections.work),
    ...(money ? { money: part(build, money, partSections.money) } : {}),
    ...(log ? { log: logEntries(build, log) } : {}),
  }
}

const refuseUnknownPart = ({ faults }: Build, { key, at }: TreeEntry): void => {
  if ((partNames as readonly string[]).includes(key)) return
  const guess = nearest(key, partNames)
  const data = { found: quote(key), accepted: partNames.join(', '), ...(guess ? { nearest: guess } : {}) }
  faults.push({ code: 'job.unknownKey', at, pointer: below('', key), data })
}

const version = (build: Build, entry: TreeEntry | undefined): string => {
  if (entry?.value.kind === 'text') return entry.value.text
  if (entry) shapeFault(build, entry.value, { pointer: `/${versionKey}`, at: entry.at }, 'text')
  return ''
}

const shapeFault = ({ faults }: Build, tree: Tree, { pointer, at }: At, accepted: string): void => {
  faults.push({ code: 'job.shape', at, pointer, data: { found: tree.kind, accepted } })
}

/** The entries of a map; an empty value counts as an empty map, because people leave sections empty. */
const mapEntries = (build: Build, tree: Tree, at: At): readonly TreeEntry[] | undefined => {
  if (tree.kind === 'map') return tree.entries
  if (tree.kind === 'text' && tree.empty && at.pointer !== '') return []
  shapeFault(build, tree, at, 'map')
  return undefined
}

const part = (build: Build, entry: TreeEntry | undefined, sections: Sections): RawPart => {
  if (entry === undefined) return {}
  const pointer = below('', entry.key)
  const inside = mapEntries(build, entry.value, { pointer, at: entry.at }) ?? []
  return Object.fromEntries(
    inside.flatMap(({ key, at, value }): [string, RawSection][] => {
      const built = section(build, value, { pointer: below(pointer, key), at }, sectionOf(sections, key))
      return built ? [[key, built]] : []
    }),
  )
}

const section = (build: Build, tree: Tree, at: At, known: Section | undefined): RawSection | undefined => {
  if (known?.shape === 'many') return items(build, tree, at)
  if (known?.shape === 'one') return cells(build, tree, at)
  return mixed(build, tree, at)
}

/** A section nobody knows is kept as it stands: maps of texts and texts. */
const mixed = (build: Build, tree: Tree, at: At): RawSection | undefined => {
  const entries = mapEntries(build, tree, at)
  return (
    entries &&
    Object.fromEntries(
      entries.flatMap((entry): [string, string | RawCells][] => {
        if (entry.value.kind === 'text') return [[entry.key, entry.value.text]]
        const inside = cells(build, entry.value, { pointer: below(at.pointer, entry.key), at: entry.at })
        return inside ? [[entry.key, inside]] : []
      }),
    )
  )
}

const cells = (build: Build, tree: Tree, at: At): RawCells | undefined => {
  const entries = mapEntries(build, tree, at)
  return (
    entries &&
    Object.fromEntries(
      entries.flatMap((entry): [string, string][] => {
        if (entry.value.kind === 'text') return [[entry.key, entry.value.text]]
        shapeFault(build, entry.value, { pointer: below(at.pointer, entry.key), at: entry.at }, 'text')
        return []
      }),
    )
  )
}

const items = (build: Build, tree: Tree, at: At): RawItems =>
  Object.fromEntries(withOrder(itemEntries(build, tree, at)))

/** The log sorts by time, so its entries get no key. */
const logEntries = (build: Build, { at, value }: TreeEntry): RawItems =>
  Object.fromEntries(itemEntries(build, value, { pointer: '/log', at }))

/** A list where a map belongs is one problem; its items cannot be kept, because they have no ids. */
const itemEntries = (build: Build, tree: Tree, at: At): readonly Entry[] =>
  (mapEntries(build, tree, at) ?? []).flatMap(({ key, at: keyAt, value }): [string, RawCells][] => {
    const inside = cells(build, value, { pointer: below(at.pointer, key), at: keyAt })
    return inside ? [[key, inside]] : []
  })

type Entry = readonly [id: string, cells: RawCells]

/** Gives every item without `order` a key that keeps it where it stands in the file; what is there stays as it is. */
export const withOrder = (entries: readonly Entry[]): readonly Entry[] => {
  const given = entries.map(([, inside]) =>
    Object.hasOwn(inside, 'order') ? orderOf(inside.order) : undefined,
  )
  const keys = given.every((key) => key === undefined) ? orderKeys(entries.length) : keysBetween(given)
  return entries.map((entry, index) => {
    const [id, inside] = entry
    return Object.hasOwn(inside, 'order') ? entry : [id, { ...inside, order: keys[index] as string }]
  })
}

const keysBetween = (given: readonly (string | undefined)[]): readonly string[] => {
  const next = nextKeys(given)
  let last: string | undefined
  return given.map((key, index) => {
    last = key ?? orderBetween(last, next[index])
    return last
  })
}

/** For each place, the first given key behind it. */
const nextKeys = (given: readonly (string | undefined)[]): readonly (string | undefined)[] => {
  let next: string | undefined
  return given
    .toReversed()
    .map((key) => {
      const behind = next
      next = key ?? next
      return behind
    })
    .toReversed()
}
