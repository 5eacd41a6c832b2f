/** The canonical JSON of a raw document: one text for one content, whatever order its maps came in. */
import { withOrder } from './build-raw.ts'
import type { Section, Sections } from './field.ts'
import { byOrder, sortKey } from './order-key.ts'
import { itemKeys, logSection, partSections, sectionOf, versionKey } from './parts.ts'
import { compareText } from './problem.ts'
import { entryOf, isMap, type RawCells, type RawDocument, type RawPart, type RawSection } from './raw.ts'

/** A value with its entries in the order in which they are written; an object would put keys like `7` first. */
type Ordered = string | readonly (readonly [key: string, value: Ordered])[]

/**
 * Version, work, money, log; sections and cells in the order of their tables, unknown ones by name behind them; items
 * by (`order`, id), a missing `order` given. Two spaces, a line feed at the end. Every text is written as it is.
 */
export const writeJson = (raw: RawDocument): string => {
  const document: Ordered = [
    [versionKey, raw.hardstand],
    ['work', part(raw.work, partSections.work)],
    ...(raw.money === undefined ? [] : [['money', part(raw.money, partSections.money)] as const]),
    ...(raw.log === undefined ? [] : [['log', items(raw.log, logSection, { timed: true })] as const]),
  ]
  return `${text(document, '')}\n`
}

const text = (value: Ordered, indent: string): string => {
  if (typeof value === 'string') return JSON.stringify(value)
  if (value.length === 0) return '{}'
  const inner = `${indent}  `
  const lines = value.map(([key, inside]) => `${inner}${JSON.stringify(key)}: ${text(inside, inner)}`)
  return `{\n${lines.join(',\n')}\n${indent}}`
}

/** Known keys in the order of the table, then the others by name. */
const keysInOrder = (map: Readonly<Record<string, unknown>>, known: readonly string[]): readonly string[] => [
  ...known.filter((key) => Object.hasOwn(map, key)),
  ...Object.keys(map)
    .filter((key) => !known.includes(key))
    .sort(compareText),
]

const part = (raw: RawPart, sections: Sections): Ordered =>
  keysInOrder(raw, Object.keys(sections)).map((name) => [
    name,
    section(raw[name] as RawSection, sectionOf(sections, name)),
  ])

const section = (raw: RawSection, known: Section | undefined): Ordered => {
  if (known?.shape === 'many') return items(raw, known, { timed: false })
  return keysInOrder(raw, Object.keys(known?.fields ?? {})).map((key) => [key, mixed(raw[key])])
}

const mixed = (value: string | RawCells | undefined): Ordered =>
  isMap(value) ? cells(value, []) : (value as string)

const cells = (raw: RawCells, known: readonly string[]): Ordered =>
  keysInOrder(raw, [...known, ...itemKeys]).map((key) => [key, raw[key] as string])

/** Entries of the log have no `order` of their own: they are sorted by time when read, by id here. */
const items = (raw: RawSection, { fields }: Section, { timed }: { readonly timed: boolean }): Ordered => {
  const sorted = Object.entries(raw)
    .map(([id, inside]) => ({ id, inside: inside as RawCells, sortKey: sortKeyOf(inside) }))
    .sort(byOrder)
    .map(({ id, inside }) => [id, inside] as const)
  const ordered = timed ? sorted : withOrder(sorted)
  return ordered.map(([id, inside]) => [id, cells(inside, Object.keys(fields))])
}

const sortKeyOf = (item: unknown): string => sortKey(isMap(item) ? entryOf(item, 'order') : undefined)
