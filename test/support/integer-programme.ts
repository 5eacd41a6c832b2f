/** Buying as a mixed-integer programme for a solver by another hand, as an oracle: the same rules, none of our search. */
import type { PurchaseInput } from '#core/stores'

/** What the solver takes; the package is for tests alone. */
export type Solver = (lp: string) => { readonly status: string; readonly value: number }

type Highs = {
  readonly solve: (
    lp: string,
    options: Readonly<Record<string, number>>,
  ) => { readonly Status: string; readonly ObjectiveValue: number }
}

export async function openSolver(): Promise<Solver> {
  // Its types are those of another kind of module than the one Node loads.
  const { default: open } = (await import('highs')) as unknown as { default: () => Promise<Highs> }
  const highs = await open()
  return (lp) => {
    const found = highs.solve(lp, { mip_rel_gap: 0, mip_abs_gap: 0, mip_feasibility_tolerance: 1e-9 })
    return { status: found.Status, value: found.ObjectiveValue }
  }
}

export type BestPurchase = { readonly costCoins: number; readonly volumeMl: number }

const ml = (m3: number): number => Math.round(m3 * 1e6)

/**
 * The least cost, and of all purchases of that cost the least volume opened; undefined where nothing covers the need.
 * For uses of one span. Every volume has to be whole millilitres.
 */
export function bestPurchase(
  solve: Solver,
  { input, needMl }: { readonly input: PurchaseInput; readonly needMl: readonly number[] },
): BestPurchase | undefined {
  const programme = programmeOf(input, needMl)
  const cheapest = solve(programme(costTerms(input), []))
  if (cheapest.status !== 'Optimal') return undefined
  const costCoins = Math.round(cheapest.value)
  // Half a coin of room: the solver's own sums are not exact, and no purchase lies between two coins.
  const fixed = costTerms(input).length === 0 ? [] : [`fixed: ${sumOf(costTerms(input))} <= ${costCoins}.5`]
  const smallest = solve(programme(volumeTerms(input), fixed))
  if (smallest.status !== 'Optimal') throw new Error(`solver: no second answer, got ${smallest.status}`)
  return { costCoins, volumeMl: Math.round(smallest.value) }
}

type Term = readonly [factor: number, name: string]

const costTerms = ({ sold }: PurchaseInput): readonly Term[] =>
  sold.flatMap((pack, at): readonly Term[] =>
    (pack.priceCoins ?? 0) > 0 ? [[pack.priceCoins ?? 0, `x${at}`]] : [],
  )

const volumeTerms = ({ sold, shelf }: PurchaseInput): readonly Term[] => [
  ...sold.map((pack, at): Term => [pack.partsM3.reduce((sum, part) => sum + ml(part), 0), `x${at}`]),
  ...shelf.map((pack, at): Term => [pack.partsM3.reduce((sum, part) => sum + ml(part), 0), `y${at}`]),
]

const sumOf = (terms: readonly Term[]): string =>
  terms.length === 0
    ? '0 none'
    : terms.map(([factor, name]) => `${factor < 0 ? '-' : '+'} ${Math.abs(factor)} ${name}`).join(' ')

const mostPacks = 1000

/** x counts what is bought, y what is taken from the shelf, w says which lot it all comes from. */
function programmeOf(input: PurchaseInput, needMl: readonly number[]) {
  const { sold, shelf, oneBatch } = input
  const lots = shelf.map((pack, at) => lotOf(pack, at, input))
  const named = [...new Set(['own', ...lots])]
  const covered = needMl.map(
    (need, part) =>
      `part${part}: ${sumOf([
        ...sold.map((pack, at): Term => [ml(pack.partsM3[part] ?? 0), `x${at}`]),
        ...shelf.map((pack, at): Term => [ml(pack.partsM3[part] ?? 0), `y${at}`]),
      ])} >= ${need}`,
  )
  const oneLot = oneBatch
    ? [
        `lots: ${sumOf(named.map((lot): Term => [1, `w${lot}`]))} = 1`,
        ...sold.map((_, at) => `bought${at}: x${at} - ${mostPacks} wown <= 0`),
        ...shelf.map(({ count }, at) => `taken${at}: y${at} - ${count} w${lots[at]} <= 0`),
      ]
    : []
  const integers = [...sold.map((_, at) => `x${at}`), ...shelf.map((_, at) => `y${at}`)]
  return (objective: readonly Term[], more: readonly string[]): string =>
    [
      'Minimize',
      ` obj: ${sumOf(objective)}`,
      'Subject To',
      ...[...covered, ...oneLot, ...more].map((row) => ` ${row}`),
      'Bounds',
      ...sold.map((_, at) => ` 0 <= x${at} <= ${mostPacks}`),
      ...shelf.map(({ count }, at) => ` 0 <= y${at} <= ${count}`),
      ' 0 <= none <= 0',
      'General',
      ` ${integers.join(' ')}`,
      ...(oneBatch ? ['Binary', ` ${named.map((lot) => `w${lot}`).join(' ')}`] : []),
      'End',
    ].join('\n')
}

/** What was bought for the job, and what has its batch, is one lot with the purchase. */
function lotOf(pack: PurchaseInput['shelf'][number], at: number, { shelf }: PurchaseInput): string {
  const isOwn =
    pack.forThisJob || (pack.batch !== '' && shelf.some((one) => one.forThisJob && one.batch === pack.batch))
  if (isOwn) return 'own'
  return pack.batch === '' ? `alone${at}` : `batch${pack.batch}`
}
