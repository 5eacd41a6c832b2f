/** A result of a sum as it is written: in the table finer than a plan shows it, for it is copied down; temperatures to the tenth. */
import type { SumResult } from '#sums'
import type { Words } from '#words'

type Fine = 'large' | 'table'

const fineness = (key: string, fine: Fine) =>
  /[a-z][CK]$/.test(key) ? { decimals: 1 } : fine === 'table' ? { digits: 4 } : {}

export function resultText({ key, value }: SumResult, words: Words, fine: Fine = 'large'): string {
  if (typeof value === 'boolean') return words.label(value ? 'yes' : 'no')
  if (typeof value === 'number') return words.figure(key, value, {}, fineness(key, fine))
  if (typeof value === 'string') return words.label(`value.${value}`)
  const items: readonly (number | string)[] = value
  return items.map((item) => itemText(key, item, words, fine)).join(', ')
}

const itemText = (key: string, item: number | string, words: Words, fine: Fine): string =>
  typeof item === 'number' ? words.figure(key, item, {}, fineness(key, fine)) : words.label(`value.${item}`)

/** A figure in a heading stays with its unit, which a thin space would let go. */
export const unbroken = (text: string): string => text.replaceAll('\u2009', '\u2060\u2009\u2060')

/** The same amount in cubic feet a minute stands beside the first one already where US units are read. */
export const isShown = ({ key }: SumResult): boolean => !key.endsWith('Cfm')
