/** What a pack holds of each part of its product. */
import type { Work } from '#job'
import type { ResolvedSheet } from '../types.ts'

type WrittenPack = Work['packs'][number]

/** A rest smaller than this share of the pack is rounding of what is printed on it. */
const roundingShare = 0.02

/** As written; else the volume shared out by the mix ratio, and the rest of it where one part is written. */
export function packParts(
  { volume, partA, partB }: WrittenPack,
  { mix }: Pick<ResolvedSheet, 'mix'>,
): readonly number[] {
  const [base = 1, hardener = 0] = mix.value
  const whole = volume.value
  if (hardener === 0) return [whole]
  if (partA === undefined && partB === undefined) {
    const first = (whole * base) / (base + hardener)
    return [first, whole - first]
  }
  const rest = (part: number): number => (whole - part > roundingShare * whole ? whole - part : 0)
  const first = partA?.value ?? rest(partB?.value ?? 0)
  return [first, partB?.value ?? rest(first)]
}

/** Whether the parts written on it make another volume than the whole. */
export function partsDisagree({ volume, partA, partB }: WrittenPack): boolean {
  if (partA === undefined || partB === undefined) return false
  return Math.abs(partA.value + partB.value - volume.value) > roundingShare * volume.value
}
