/** Fractional keys: texts that sort, between any two of which another fits, so that moving one item touches no other. */
import { compareText } from './problem.ts'

const digits = '0123456789abcdefghijklmnopqrstuvwxyz'
const middle = 'i'
const base = digits.length

/** A key the program makes ends in no `0`, or nothing would fit below it. People's own keys are any short text. */
const wellFormed = /^[!-~]{1,128}$/

/** The key when it can be sorted by. */
export const orderOf = (order: unknown): string | undefined =>
  typeof order === 'string' && wellFormed.test(order) ? order : undefined

/** Behind every usable key, so that items without one come last, and those with an unusable one behind those. */
const missing = '\u007f'
const unusable = '\uffff'

export const sortKey = (order: unknown): string =>
  orderOf(order) ?? (order === undefined ? missing : unusable)

export type Sortable = { readonly id: string; readonly sortKey: string }

/** The order of a collection: by key, then by id; nothing depends on the order of entries in a map. */
export const byOrder = (a: Sortable, b: Sortable): number =>
  compareText(a.sortKey, b.sortKey) || compareText(a.id, b.id)

/** `count` keys in rising order, evenly spread, as short as can be. */
export const orderKeys = (count: number): readonly string[] => {
  let width = 1
  while (base ** width < (count + 1) * 2) width++
  const step = Math.floor(base ** width / (count + 1))
  return Array.from({ length: count }, (_, index) => {
    const at = (index + 1) * step
    return (at % base === 0 ? at + 1 : at).toString(base).padStart(width, '0')
  })
}

/** A key behind `after`. */
export const orderAfter = (after: string | undefined): string => {
  if (after === undefined) return middle
  const last = digits.indexOf(after.at(-1) as string)
  return last >= 0 && last < base - 1 ? after.slice(0, -1) + digits[last + 1] : after + middle
}

/**
 * A key between two, or behind the last, or before the first. When nothing fits (people's own keys may leave no
 * room) the key is behind `after`.
 */
export const orderBetween = (after: string | undefined, before: string | undefined): string => {
  if (before === undefined) return orderAfter(after)
  const low = after ?? ''
  let key = ''
  for (let place = 0; place < low.length + before.length + 1; place++) {
    const floor = place < low.length && low.startsWith(key) ? digits.indexOf(low[place] as string) : 0
    const ceiling = before.startsWith(key) ? digits.indexOf(before[place] ?? '') : base
    const pick = Math.floor((Math.max(floor, 0) + ceiling) / 2)
    key += digits[Math.max(pick, 0)]
    if (key > low && key < before && !key.endsWith('0')) return key
  }
  return low + middle
}
