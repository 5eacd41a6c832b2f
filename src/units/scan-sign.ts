/** Reads the sign in front of a quantity. */

import { isMinus, skipSpaces } from './chars.ts'

export type ScannedSign = { readonly factor: 1 | -1; readonly end: number }

export const scanSign = (text: string, at: number): ScannedSign => {
  if (isMinus(text[at])) return { factor: -1, end: skipSpaces(text, at + 1) }
  if (text[at] === '+') return { factor: 1, end: skipSpaces(text, at + 1) }
  return { factor: 1, end: at }
}
