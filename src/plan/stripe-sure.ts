/** How sure the numbers of a stripe are: one that a guess moves by more than a tenth is a guess itself. */
import type { Hull } from '#core/boat'
import { bootStripe, type StripeInput, type StripeRow, type StripeTable } from '#core/marking'
import type { Certainty } from '#core/note'
import type { RowSure } from './types.ts'

export type StripeSureInput = {
  readonly hull: Hull
  /** The heights and widths that the stripe was made with, as far as they were given. */
  readonly input: StripeInput & { readonly spacingM: number }
  /** Of those, the ones that somebody measured. */
  readonly measured: ReadonlySet<keyof StripeInput>
  readonly table: StripeTable
}

/** How far off a guess at a height or width may well be; assumed. */
const GUESS_OFF = 0.5
/** A figure that moves by more than this share is no surer than what moves it. */
const MOVED = 0.1

const keys = [
  'heightStemM',
  'heightLowM',
  'heightSternM',
  'widthStemM',
  'widthLowM',
  'widthSternM',
] as const satisfies readonly (keyof StripeInput)[]

/** In the order of the rows. */
export function stripeSure(given: StripeSureInput): readonly RowSure[] {
  const { hull, input, measured, table } = given
  const tried = keys
    .filter((key) => !measured.has(key))
    .map((key) => {
      const off = takenAt(key, given) * (1 + GUESS_OFF)
      return bootStripe(hull, { ...input, [key]: off }).table?.rows
    })
  return table.rows.map((row) => ({
    lower: sureOf(row, tried, 'lowerM'),
    upper: sureOf(row, tried, 'upperM'),
    girth: sureOf(row, tried, 'girthM'),
  }))
}

type Edge = 'lowerM' | 'upperM' | 'girthM'

/** A guess that leaves no stripe at all on the hull moves every number of it. */
const sureOf = (
  row: StripeRow,
  tried: readonly (readonly StripeRow[] | undefined)[],
  edge: Edge,
): Certainty =>
  tried.some((rows) => rows === undefined || isMoved(row[edge], at(rows, row.xM, edge)))
    ? 'assumed'
    : 'worked'

const isMoved = (was: number, is: number): boolean => Math.abs(is - was) > MOVED * Math.abs(was)

/** Between rows along a straight line; the ends of a stripe move with its heights. */
function at(rows: readonly StripeRow[], xM: number, edge: Edge): number {
  const next = rows.findIndex((row) => row.xM >= xM)
  const [a, b] = [rows[Math.max(0, next - 1)], next < 0 ? rows.at(-1) : rows[next]]
  if (!a || !b) return Number.POSITIVE_INFINITY
  const share = b.xM > a.xM ? (xM - a.xM) / (b.xM - a.xM) : 1
  return next < 0 ? b[edge] : a[edge] + share * (b[edge] - a[edge])
}

/** The height or width that stands there now, whoever set it. */
function takenAt(key: (typeof keys)[number], { input, table }: StripeSureInput): number {
  const set = input[key]
  if (set !== undefined) return set
  const place = { Stem: table.stemXM, Low: table.lowXM, Stern: table.sternXM }
  const x = key.includes('Stem') ? place.Stem : key.includes('Low') ? place.Low : place.Stern
  const lower = at(table.rows, x, 'lowerM')
  return key.startsWith('height') ? lower : at(table.rows, x, 'upperM') - lower
}
