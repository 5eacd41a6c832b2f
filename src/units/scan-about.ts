/** Finds the words and signs that say a figure is rough: `about`, `~`, `ca.` before it, `?` after it. */

import { isSpace, skipSpaces } from './chars.ts'

/** The part of the text that holds the quantity, spaces at both ends left out. */
export type Trimmed = { readonly at: number; readonly end: number; readonly about: boolean }

const words = [
  'approximately',
  'approx.',
  'approx',
  'about',
  'around',
  'roughly',
  'circa',
  'cirka',
  'ca.',
  'ca',
  'c.',
]
const signs = ['~', '≈', '∼']

export const trimAbout = (text: string): Trimmed => {
  const first = skipSpaces(text, 0)
  const front = skipSpaces(text, endOfFront(text, first))
  const back = trimEnd(text, front, text.length)
  const asked = back > front && text[back - 1] === '?' ? trimEnd(text, front, back - 1) : back
  return { at: front, end: asked, about: front > first || asked < back }
}

const trimEnd = (text: string, at: number, from: number): number => {
  let end = from
  while (end > at && isSpace(text[end - 1])) end--
  return end
}

const endOfFront = (text: string, at: number): number => {
  const sign = signs.find((s) => text.startsWith(s, at))
  if (sign) return at + sign.length
  const start = text.slice(at, at + 14).toLowerCase()
  const word = words.find((w) => start.startsWith(w) && (w.endsWith('.') || isSpace(text[at + w.length])))
  return word ? at + word.length : at
}
