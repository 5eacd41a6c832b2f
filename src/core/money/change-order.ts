/** A change order: work found after the quote, priced the same way as the quote. */
import type { Note } from '#core/note'
import { isCoins, sumCoins } from './coins.ts'
import { type Line, type LineInput, priceLine } from './line.ts'

export type ChangeOrder = {
  readonly labour: Line
  readonly materials: readonly Line[]
  readonly labourCoins: number
  readonly materialsCoins: number
  readonly totalCoins: number
  /** False while a price is missing: the total is then a lower bound. */
  readonly complete: boolean
  readonly notes: readonly Note[]
}

/**
 * Price of extra work in the smallest coin: person-hours × hourly price, plus materials, each line rounded
 * half up once. Missing prices and sums of 2^53 or more are noted, as in `estimate`.
 */
export function changeOrder({
  hours,
  hourlyCoins,
  materials,
}: {
  readonly hours: number
  readonly hourlyCoins?: number
  readonly materials: readonly LineInput[]
}): ChangeOrder {
  const price = hourlyCoins === undefined ? {} : { unitCoins: hourlyCoins }
  const labour = priceLine({ id: 'labour', quantity: hours, ...price })
  const priced = materials.map(priceLine)
  const notes = [labour, ...priced].flatMap((each) => each.notes)
  const labourCoins = labour.line.coins ?? 0
  const materialsCoins = sumCoins(priced.map((each) => each.line.coins))
  const totalCoins = sumCoins([labourCoins, materialsCoins])
  const lines = { labour: labour.line, materials: priced.map((each) => each.line) }
  if (isCoins(totalCoins)) {
    return { ...lines, labourCoins, materialsCoins, totalCoins, complete: notes.length === 0, notes }
  }
  const fault: Note = { code: 'money.sumOutOfRange', severity: 'fault', data: {} }
  return {
    ...lines,
    labourCoins: 0,
    materialsCoins: 0,
    totalCoins: 0,
    complete: false,
    notes: [...notes, fault],
  }
}
