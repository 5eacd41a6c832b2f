/** One line of an estimate: a quantity at a price. */
import type { Note } from '#core/note'
import { isCoins, toCoins } from './coins.ts'

export type LineInput = {
  readonly id: string
  /** Hours, packs, pieces, litres: whatever the price is for. */
  readonly quantity: number
  /** Price of one, smallest coin; left out when nobody gave it. */
  readonly unitCoins?: number
}

export type Line = LineInput & {
  /** Undefined when the price is missing or the sum cannot be held. */
  readonly coins: number | undefined
}

export type PricedLine = { readonly line: Line; readonly notes: readonly Note[] }

/**
 * Total of one line in the smallest coin: quantity × unit price, rounded half up, once. The line is the only
 * place a price is rounded, so that lines as shown add up to totals as shown.
 *
 * Inputs: quantity in the unit of the price, price a whole number of coins. Undefined when the quantity is
 * not finite, the price not whole, or the result is 2^53 or more, which a double cannot hold to the coin.
 */
export function lineTotal({
  quantity,
  unitCoins,
}: {
  readonly quantity: number
  readonly unitCoins: number
}): number | undefined {
  if (!Number.isFinite(quantity) || !isCoins(unitCoins)) return undefined
  const coins = toCoins(quantity * unitCoins)
  return isCoins(coins) ? coins : undefined
}

/** The line with its total, and a note when there is none. */
export function priceLine(input: LineInput): PricedLine {
  if (input.unitCoins === undefined) {
    return withoutCoins(input, { code: 'money.priceMissing', severity: 'missing', data: { line: input.id } })
  }
  const coins = lineTotal({ quantity: input.quantity, unitCoins: input.unitCoins })
  if (coins === undefined) {
    const data = { line: input.id, quantity: input.quantity, unitCoins: input.unitCoins }
    return withoutCoins(input, { code: 'money.lineOutOfRange', severity: 'fault', data })
  }
  return { line: { ...input, coins }, notes: [] }
}

const withoutCoins = (input: LineInput, note: Note): PricedLine => ({
  line: { ...input, coins: undefined },
  notes: [note],
})
