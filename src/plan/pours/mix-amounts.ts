/** What stands on a mix card: each part in millilitres and grams, and the level of the cup once it is in. */
import type { Pour } from '../types.ts'

export type MixPart = {
  readonly part: 'A' | 'B' | 'thinner' | 'bead'
  readonly ml: number
  /** What the cup reads once it is in; bead is stirred in on top and is not part of the level. */
  readonly toMl?: number
  readonly g?: number
}

export type MixAmounts = {
  /** In the order they are poured. */
  readonly parts: readonly MixPart[]
  readonly readyMl: number
  /** Decimals the millilitres are written with: 0, or 1 where a part is a few drops. */
  readonly decimals: 0 | 1
  readonly trayMl: readonly number[]
}

/** The plan holds whole millilitres or tenths, so that nothing is rounded here that would no longer add up. */
export function mixAmounts(pour: Pour): MixAmounts {
  const volumes = [...pour.partsM3, ...(pour.thinnerM3 > 0 ? [pour.thinnerM3] : [])].map(millilitres)
  const beadMl = millilitres(pour.additiveM3)
  let level = 0
  const parts = volumes.map((ml, index): MixPart => {
    level = tenths(level + ml)
    const isThinner = index >= pour.partsM3.length
    const kg = isThinner ? pour.thinnerKg : pour.partsKg?.[index]
    return {
      part: isThinner ? 'thinner' : index === 0 ? 'A' : 'B',
      ml,
      toMl: level,
      ...(kg === undefined ? {} : { g: grams(kg) }),
    }
  })
  return {
    parts: [...parts, ...(beadMl > 0 ? [{ part: 'bead' as const, ml: beadMl }] : [])],
    readyMl: level,
    decimals: [...volumes, beadMl].every(Number.isInteger) ? 0 : 1,
    trayMl: pour.trayM3.map(millilitres),
  }
}

/** What a one-part comes from is no part A. */
export const partKey = (pour: Pour, part: MixPart['part']): MixPart['part'] | 'only' =>
  part === 'A' && pour.partsM3.length === 1 ? 'only' : part

const tenths = (value: number): number => Math.round(value * 10) / 10
const millilitres = (volumeM3: number): number => tenths(volumeM3 * 1e6)

const grams = (kg: number): number => (kg < 0.02 ? tenths(kg * 1000) : Math.round(kg * 1000))
