/** Which disc of the list of consumables a grit wears down. */
import type { Known } from '../known.ts'
import type { LadderDisc } from '../types.ts'

/** The disc of the grit, or the nearest there is that is no coarser. */
export function discFor(grit: string, { consumableRates }: Pick<Known, 'consumableRates'>): LadderDisc {
  const number = Number(grit.replace(/\D/g, '')) || 220
  const discs = consumableRates.flatMap(({ id }) => (id.startsWith('disc-') ? [Number(id.slice(5))] : []))
  const nearest = discs.sort((a, b) => a - b).find((disc) => disc >= number) ?? discs.at(-1) ?? 220
  const id = `disc-${nearest}`
  return { id, perM2: consumableRates.find((one) => one.id === id)?.perDriver ?? 0 }
}
