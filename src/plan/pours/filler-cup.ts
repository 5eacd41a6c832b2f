/** Filler is mixed by the cup, as much as is spread before it goes off: how large a cup is, and how long it does. */
import { type PotClock, workingMinutes } from '#core/coating'
import type { Known } from '../known.ts'
import { fills } from '../sheets/fillers.ts'
import type { ResolvedSheet } from '../types.ts'

export type FillerCup = {
  readonly mostM3: number
  /** Of its pot life. */
  readonly potShare: number
  readonly leadMinutes: number
}

export const isTwoPart = (sheet: ResolvedSheet): boolean => (sheet.mix.value[1] ?? 0) > 0

/** What cures with peroxide goes off in minutes and is mixed by the lump; a two-part filler by the half litre. */
const catalysed: ReadonlySet<string> = new Set(['polyester', 'vinylester', 'gelcoat'])

/** @param isRepair whatever fills a repair goes by the cup, gelcoat too. */
export function fillerCup(sheet: ResolvedSheet, isRepair: boolean, known: Known): FillerCup | undefined {
  if (!(isRepair || fills(sheet.role)) || !isTwoPart(sheet)) return undefined
  const lump = catalysed.has(sheet.family) && sheet.role !== 'laminating resin'
  return {
    mostM3: (lump ? known.puttyCupM3 : known.fillerCupM3).value,
    potShare: known.fillerPotShare.value,
    leadMinutes: known.fillerLeadMinutes.value,
  }
}

/** Until when a cup is spread: long before its pot life is over. */
export const cupPot = ({ potShare }: FillerCup, pot: PotClock): PotClock => ({
  ...pot,
  life: pot.life * potShare,
})

/** min that a cup gives; none, or fewer than none, where it goes off too soon. */
export const cupMinutes = (cup: FillerCup, pot: PotClock): number =>
  workingMinutes(cupPot(cup, pot), cup.leadMinutes)

/** As many cups as keep each to its size and to its time; where a pot gives no time at all, a fault says so. */
export function cupsFor(
  cup: FillerCup,
  work: { readonly mixedM3: number; readonly minutes: number; readonly pot: PotClock },
): number {
  const each = cupMinutes(cup, work.pot)
  const byTime = each > 0 ? work.minutes / each : 1
  return Math.max(1, Math.ceil(Math.max(work.mixedM3 / cup.mostM3, byTime) - 1e-9))
}
