/** What makes a need or a pack unfit to be reckoned with, as notes. */
import type { Note } from '#core/note'
import type { Pack } from './pack.ts'

/** Most that is planned at once, m³: more than any boat takes. */
export const largestNeedM3 = 1000
/** Smallest pack, m³; with the two bounds no sum of money passes 2^53. */
const smallestPackM3 = 1e-6
const highestPriceCoins = 1e9

export const usablePacks = (packs: readonly Pack[]): readonly Pack[] => packs.filter(isUsable)

export const packFaults = (packs: readonly Pack[]): readonly Note[] =>
  packs.filter((pack) => !isUsable(pack)).map(packFault)

function isUsable(pack: Pack): boolean {
  const volumeM3 = volumeOf(pack)
  return (
    volumeM3 >= smallestPackM3 &&
    volumeM3 <= largestNeedM3 &&
    pack.partsM3.every((part) => part >= 0) &&
    isWhole(pack.inStock) &&
    (pack.priceCoins === undefined || (isWhole(pack.priceCoins) && pack.priceCoins <= highestPriceCoins))
  )
}

const isWhole = (value: number): boolean => Number.isSafeInteger(value) && value >= 0

const volumeOf = ({ partsM3 }: Pack): number => partsM3.reduce((sum, part) => sum + part, 0)

const packFault = (pack: Pack): Note => ({
  code: 'stores.packNotUsable',
  severity: 'fault',
  data: { pack: pack.id, volumeL: volumeOf(pack) * 1000, inStock: pack.inStock },
})

export const needFault = (needM3: number): Note => ({
  code: 'stores.needOutOfRange',
  severity: 'fault',
  data: { volumeL: needM3 * 1000, mostL: largestNeedM3 * 1000 },
})

/** Said only where some have a price and some have none: with none at all, nobody is reckoning yet. */
export function priceNotes(packs: readonly Pack[]): readonly Note[] {
  const unpriced = packs.filter((pack) => pack.priceCoins === undefined)
  if (unpriced.length === 0 || unpriced.length === packs.length) return []
  return unpriced.map((pack) => ({
    code: 'stores.packUnpriced',
    severity: 'missing',
    data: { pack: pack.id },
  }))
}
