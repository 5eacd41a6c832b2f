/** What is bought beyond the sum: a share for what always goes wrong, and a fixed amount kept for touch-up. */

/**
 * Need with its reserve, m³: `need × (1 + share) + extra`, and nothing when nothing is needed.
 * Inputs: need and extra in m³, share 0 to 1; negative or unreadable ones count as 0.
 * Shares in use: gloss 0.15, primer 0.10, filler 0.25, with 0.25 L of gloss for touch-up (common practice).
 */
export function reserve({
  needM3,
  share,
  extraM3,
}: {
  readonly needM3: number
  readonly share: number
  readonly extraM3: number
}): { readonly withReserveM3: number; readonly reserveM3: number } {
  const need = positive(needM3)
  if (need === 0) return { withReserveM3: 0, reserveM3: 0 }
  const reserveM3 = need * positive(share) + positive(extraM3)
  return { withReserveM3: need + reserveM3, reserveM3 }
}

const positive = (value: number): number => (value > 0 && Number.isFinite(value) ? value : 0)
