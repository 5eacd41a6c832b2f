/** What callers hand in, checked and copied before it waits its turn: the same for every store behind the port. */
import { megabytes, storeLimits } from './limits.ts'
import { StoreError } from './store-error.ts'

/** Half of a surrogate pair: becomes another character in UTF-8, so two names could become one. */
const loneSurrogate = /\p{Surrogate}/u

type NameKind = 'document' | 'job' | 'entry' | 'hash'

/** A name that comes back from every database as it went in. */
export function checkedName(kind: NameKind, name: unknown): string {
  const most = storeLimits.nameLength
  if (typeof name === 'string' && name !== '' && name.length <= most && !unkeepable(name)) return name
  const length = typeof name === 'string' ? name.length : 0
  const got = typeof name === 'string' ? JSON.stringify(name.slice(0, 40)) : typeof name
  throw new StoreError(
    'store.badName',
    { kind, length, mostLength: most },
    `${kind}: no name to keep, got ${got}, expected 1 to ${most} letters without NUL or half a character`,
  )
}

const unkeepable = (text: string): boolean => text.includes('\0') || loneSurrogate.test(text)

/** A copy, since the caller may write on into the same buffer while the update waits. */
function checkedBytes(kind: string, bytes: unknown): Uint8Array {
  if (bytes instanceof Uint8Array) return new Uint8Array(bytes)
  throw new StoreError(
    'store.badBytes',
    { kind },
    `${kind}: no bytes, got ${typeof bytes}, expected Uint8Array`,
  )
}

export function checkedUpdate(document: string, update: unknown): Uint8Array {
  const bytes = checkedBytes('update', update)
  const sizes = over(bytes.length, storeLimits.updateBytes)
  if (!sizes) return bytes
  throw new StoreError('store.updateTooLarge', { document, ...sizes }, tooLarge('update', sizes))
}

/** What a merge gave for a whole document. */
export function checkedMerged(document: string, merged: unknown): Uint8Array {
  const bytes = checkedBytes('merged update', merged)
  const sizes = over(bytes.length, storeLimits.documentBytes)
  if (!sizes) return bytes
  throw new StoreError('store.documentTooLarge', { document, ...sizes }, tooLarge('document', sizes))
}

export function checkedWeather(hash: string, weather: unknown): Uint8Array {
  const bytes = checkedBytes('weather', weather)
  const sizes = over(bytes.length, storeLimits.weatherBytes)
  if (!sizes) return bytes
  throw new StoreError('store.weatherTooLarge', { hash, ...sizes }, tooLarge('weather', sizes))
}

type Sizes = { readonly megabytes: number; readonly mostMegabytes: number }

const over = (bytes: number, most: number): Sizes | undefined =>
  bytes > most ? { megabytes: megabytes(bytes), mostMegabytes: megabytes(most) } : undefined

const tooLarge = (noun: string, sizes: Sizes): string =>
  `${noun}: too large, got ${sizes.megabytes} MB, expected at most ${sizes.mostMegabytes} MB`

/** The same bytes again are no news; other bytes under a known hash would change plans that were made with it. */
export function checkedSame(
  hash: string,
  bytes: { readonly kept: Uint8Array; readonly given: Uint8Array },
): void {
  if (Buffer.compare(bytes.kept, bytes.given) === 0) return
  throw new StoreError('store.weatherDiffers', { hash }, `weather: differs from what is kept, got ${hash}`)
}

/** Order of JavaScript texts, so that every database lists names alike, whatever its collation. */
export const sorted = (names: readonly string[]): readonly string[] => [...names].sort()
