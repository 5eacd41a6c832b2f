/**
 * The one gate through which every value passes on its way into SQLite. The library beneath ends the process on a
 * boolean, cuts text at NUL and bends whole numbers past 2^53, so what it cannot keep is refused here.
 */
import { StoreError } from './store-error.ts'

export type Bound = string | number | Uint8Array | null

export function bind(value: unknown): Bound {
  if (value === null || value instanceof Uint8Array) return value
  if (typeof value === 'string') return boundText(value)
  if (typeof value === 'number') return boundNumber(value)
  throw refused(typeof value, String(Object.prototype.toString.call(value)))
}

const loneSurrogate = /\p{Surrogate}/u

function boundText(text: string): string {
  if (text.includes('\0')) throw refused('text', 'a text with NUL')
  if (loneSurrogate.test(text)) throw refused('text', 'a text with half a surrogate pair')
  return text
}

/** A fraction may be of any size; a number without fraction must be exact. */
function boundNumber(number: number): number {
  if (Number.isSafeInteger(number)) return number
  if (Number.isFinite(number) && !Number.isInteger(number)) return number
  throw refused('number', String(number))
}

const refused = (kind: string, got: string): StoreError =>
  new StoreError(
    'store.badValue',
    { kind },
    `value: cannot be kept, got ${got}, expected text without NUL, a safe number, bytes or null`,
  )
