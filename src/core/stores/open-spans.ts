/** Uses of one product gathered into spans that one opening of its packs outlasts. */
import { reserve } from './reserve.ts'

export type StoreUse = {
  /** Day it is used on, any count of days; left out while nobody knows. */
  readonly day?: number
  /** What it takes of each part, m³. */
  readonly needM3: readonly number[]
}

export type OpenSpan = {
  readonly fromDay?: number
  readonly untilDay?: number
  /** Need and reserve of each part, m³. */
  readonly needM3: readonly number[]
}

/**
 * As few spans as will do: each begins with the first use that the opening before no longer reaches. Uses without a
 * day belong to the first. The reserve goes with each use, what is put by for touch-up with the last span.
 */
export function openSpans({
  uses,
  openDays,
  reserveShare,
  touchUpM3,
}: {
  readonly uses: readonly StoreUse[]
  readonly openDays?: number
  readonly reserveShare: number
  readonly touchUpM3: readonly number[]
}): readonly OpenSpan[] {
  const spans: StoreUse[][] = []
  for (const use of [...uses].sort(byDay)) {
    const span = spans.at(-1)
    const from = span?.find(({ day }) => day !== undefined)?.day
    const reaches =
      from === undefined || use.day === undefined || openDays === undefined || use.day - from <= openDays
    if (span && reaches) span.push(use)
    else spans.push([use])
  }
  return spans.map((span, at) =>
    spanOf(span, { reserveShare, touchUpM3: at + 1 < spans.length ? [] : touchUpM3 }),
  )
}

const byDay = (a: StoreUse, b: StoreUse): number =>
  (a.day ?? Number.NEGATIVE_INFINITY) - (b.day ?? Number.NEGATIVE_INFINITY) || 0

function spanOf(
  uses: readonly StoreUse[],
  terms: { readonly reserveShare: number; readonly touchUpM3: readonly number[] },
): OpenSpan {
  const days = uses.flatMap(({ day }) => (day === undefined ? [] : [day]))
  const parts = Math.max(...uses.map(({ needM3 }) => needM3.length))
  return {
    ...(days.length === 0 ? {} : { fromDay: Math.min(...days), untilDay: Math.max(...days) }),
    needM3: Array.from({ length: parts }, (_, part) => {
      const needM3 = uses.reduce((sum, use) => sum + (use.needM3[part] ?? 0), 0)
      return reserve({ needM3, share: terms.reserveShare, extraM3: terms.touchUpM3[part] ?? 0 }).withReserveM3
    }),
  }
}
