/**
 * The sums of a quote as the owner sees them: labour, materials, consumables, costs, tax. The margin of the shop is
 * part of the price of materials and consumables and is shared over the two so that every line adds up to the coin.
 */
import type { Plan } from '#plan'
import { shareOut } from './share-out.ts'

type Estimate = NonNullable<Plan['money']>

export type QuoteLine = {
  readonly kind: 'labour' | 'materials' | 'consumables' | 'cost'
  /** Name of a cost, as the shop gave it. */
  readonly name: string
  readonly hours?: number
  readonly coins: number
}

export function quoteLines(money: Estimate): readonly QuoteLine[] {
  const { subtotals, marginCoins } = money
  const [materials = 0, consumables = 0] = withMargin(
    [subtotals.materials, subtotals.consumables],
    marginCoins,
  )
  const hours = money.lines.reduce((sum, line) => (line.group === 'labour' ? sum + line.quantity : sum), 0)
  const costs = money.lines.filter((line) => line.group === 'costs' || line.group === 'changes')
  const lines: readonly QuoteLine[] = [
    { kind: 'labour', name: '', hours, coins: subtotals.labour },
    { kind: 'materials', name: '', coins: materials },
    { kind: 'consumables', name: '', coins: consumables },
    ...costs.map((line): QuoteLine => ({ kind: 'cost', name: line.subject, coins: line.coins ?? 0 })),
  ]
  return lines.filter((line) => line.coins !== 0 || line.kind === 'labour')
}

/** The margin shared in proportion, in whole coins; all on the first when neither costs anything. */
function withMargin(sums: readonly number[], marginCoins: number): readonly number[] {
  const whole = sums.reduce((sum, coins) => sum + coins, 0)
  if (whole === 0) return sums.map((coins, index) => coins + (index === 0 ? marginCoins : 0))
  const shares = shareOut(
    sums.map((coins) => (marginCoins * coins) / whole),
    1,
  )
  return sums.map((coins, index) => coins + (shares[index] ?? 0))
}
