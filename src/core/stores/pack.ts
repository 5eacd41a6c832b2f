/** A pack of one product, as it is bought or stands on the shelf. */
export type Pack = {
  readonly id: string
  /** Volume of part A, and of part B where there is one, m³; a part may be sold by itself. */
  readonly partsM3: readonly number[]
  /** Price of one, smallest coin. */
  readonly priceCoins?: number
  /** How many are there already. */
  readonly inStock: number
  /** Whether more of them are to be had. */
  readonly isSold: boolean
}
