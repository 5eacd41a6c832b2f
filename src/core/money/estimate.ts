/** The estimate: lines to subtotals to margin, tax, total and deposit, all in whole coins. */
import type { Note } from '#core/note'
import { sumCoins, toCoins } from './coins.ts'
import { type Line, type LineInput, priceLine } from './line.ts'

export const estimateGroups = ['labour', 'materials', 'consumables', 'costs', 'changes'] as const
export type EstimateGroup = (typeof estimateGroups)[number]

export type EstimateInput = Readonly<Record<EstimateGroup, readonly LineInput[]>> & {
  /** Added to materials and consumables only, 0 to 1. */
  readonly marginShare: number
  /** Sales tax or VAT on the net sum, 0 to 1. */
  readonly taxShare: number
  /** Of the total with tax, due on signing, 0 to 1. */
  readonly depositShare: number
}

export type Estimate = {
  readonly lines: Readonly<Record<EstimateGroup, readonly Line[]>>
  readonly subtotals: Readonly<Record<EstimateGroup, number>>
  readonly marginCoins: number
  readonly netCoins: number
  readonly taxCoins: number
  readonly totalCoins: number
  readonly depositCoins: number
  /** False while a price is missing or a line could not be summed: the totals are then a lower bound. */
  readonly complete: boolean
  readonly notes: readonly Note[]
}

/**
 * Sums an estimate in the smallest coin. Each line is rounded once (`lineTotal`); margin, tax and deposit are
 * rounded half up once each. So the lines add up to their subtotal, the subtotals and the margin to net, net
 * and tax to the total, to the coin.
 *
 * margin = marginShare × (materials + consumables); net = all subtotals + margin; tax = taxShare × net;
 * deposit = depositShare × (net + tax). Change orders are agreed prices: no margin on top.
 * A line without a price counts as nothing, gets a note and makes the estimate incomplete. Shares outside
 * 0 to 1 and sums of 2^53 or more are fault notes: that figure is then 0 and the estimate is incomplete.
 */
export function estimate(input: EstimateInput): Estimate {
  const priced = mapGroups((group) => input[group].map(priceLine))
  const notes = estimateGroups.flatMap((group) => priced[group].flatMap((each) => each.notes))
  const lines = mapGroups((group) => priced[group].map((each) => each.line))
  const totals = totalsOf(lines, input)
  return {
    lines,
    ...totals,
    complete: notes.length + totals.notes.length === 0,
    notes: [...notes, ...totals.notes],
  }
}

type Totals = Omit<Estimate, 'lines' | 'complete'>

function totalsOf(lines: Estimate['lines'], input: EstimateInput): Totals {
  const notes = shareFaults(input)
  const raw = mapGroups((group) => sumCoins(lines[group].map((line) => line.coins)))
  const marginCoins = shareOf(input.marginShare, raw.materials + raw.consumables)
  const netCoins = sumCoins([...estimateGroups.map((group) => raw[group]), marginCoins])
  const taxCoins = shareOf(input.taxShare, netCoins)
  const totalCoins = sumCoins([netCoins, taxCoins])
  const depositCoins = shareOf(input.depositShare, totalCoins)
  const figures = { marginCoins, netCoins, taxCoins, totalCoins, depositCoins }
  if (Object.values(figures).every(Number.isSafeInteger)) return { subtotals: raw, ...figures, notes }
  return { ...nothing, notes: [...notes, { code: 'money.sumOutOfRange', severity: 'fault', data: {} }] }
}

const nothing = {
  subtotals: mapGroups(() => 0),
  marginCoins: 0,
  netCoins: 0,
  taxCoins: 0,
  totalCoins: 0,
  depositCoins: 0,
}

const isShare = (share: number): boolean => share >= 0 && share <= 1

const shareOf = (share: number, coins: number): number => (isShare(share) ? toCoins(share * coins) : 0)

function shareFaults(input: EstimateInput): readonly Note[] {
  const shares = { margin: input.marginShare, tax: input.taxShare, deposit: input.depositShare }
  return Object.entries(shares)
    .filter(([, share]) => !isShare(share))
    .map(([name, share]) => ({ code: 'money.shareOutOfRange', severity: 'fault', data: { name, share } }))
}

function mapGroups<T>(of: (group: EstimateGroup) => T): Readonly<Record<EstimateGroup, T>> {
  return {
    labour: of('labour'),
    materials: of('materials'),
    consumables: of('consumables'),
    costs: of('costs'),
    changes: of('changes'),
  }
}
