/**
 * When a coat may be put on another, by temperature: stretches with holes between them. An alkyd may take the next
 * coat wet on wet for some hours and then not for days; one least and one greatest time cannot say that.
 */
import { type CureTable, cureTable } from './cure-table.ts'

/** One stretch as a sheet prints it: from and until in hours after the coat, at one temperature. */
export type WindowRow = {
  readonly airC: number
  readonly fromH: number
  /** Left out: it stays open. */
  readonly untilH?: number
  /** Only on a sanded film. */
  readonly sanded: boolean
}

/** Nothing may be put on between the two times. */
export type WindowHole = {
  /** Read as a limit: it shuts early rather than late. */
  readonly shuts: CureTable
  /** Read as a wait: it opens late rather than early. */
  readonly opens: CureTable
}

export type RecoatWindows = {
  /** The wait to the first stretch; left out where it is open at once. */
  readonly least?: CureTable
  readonly holes: readonly WindowHole[]
  /** From here on the film is sanded first; left out where it never has to be. */
  readonly unsanded?: CureTable
}

export type WindowFault =
  /** Two stretches of one temperature lie over each other. */
  | { readonly code: 'overlap'; readonly airC: number; readonly fromH: number; readonly untilH: number }
  /** One temperature has more stretches than another, or other sanding. */
  | { readonly code: 'uneven'; readonly airC: number; readonly otherC: number }
  /** A stretch without sanding after one with it. */
  | { readonly code: 'sandedBefore'; readonly airC: number }
  /** A warmer row that opens or shuts later than a colder one; taken as written. */
  | { readonly code: 'notMonotone'; readonly airC: number; readonly colderC: number }

export type WindowsRead = { readonly windows?: RecoatWindows; readonly faults: readonly WindowFault[] }

/** Two stretches that touch leave no hole. */
const TOUCHING_H = 1e-9
/** A film that may be recoated at once has no clock to wait for. */
const AT_ONCE_H = 1e-9
const atOnce = cureTable([{ airC: 20, hours: 1 / 60 }])

/**
 * Puts the rows of a sheet together: stretch by stretch a clock that opens and one that shuts.
 * @param rows any order; hours after the coat.
 * @returns windows, unless a fault leaves it open what is meant; every fault.
 */
export function recoatWindows(rows: readonly WindowRow[]): WindowsRead {
  const columns = columnsOf(rows)
  if (columns.length === 0) return { faults: [] }
  const grave = [...columns.flatMap(overlaps), ...columns.flatMap(sandedBefore), ...uneven(columns)]
  if (grave.length > 0) return { faults: grave }
  return { windows: windowsOf(columns), faults: notMonotone(columns) }
}

/** The stretches of one temperature by their beginning. */
type Column = { readonly airC: number; readonly rows: readonly WindowRow[] }

function columnsOf(rows: readonly WindowRow[]): readonly Column[] {
  const temperatures = [...new Set(rows.map(({ airC }) => airC))].sort((a, b) => a - b)
  return temperatures.map((airC) => ({
    airC,
    rows: rows.filter((row) => row.airC === airC).sort((a, b) => a.fromH - b.fromH),
  }))
}

const untilOf = ({ untilH }: WindowRow): number => untilH ?? Number.POSITIVE_INFINITY

const overlaps = ({ airC, rows }: Column): readonly WindowFault[] =>
  rows.flatMap((row, index): readonly WindowFault[] => {
    const before = rows[index - 1]
    return before && row.fromH < untilOf(before) - TOUCHING_H
      ? [{ code: 'overlap', airC, fromH: row.fromH, untilH: untilOf(before) }]
      : []
  })

const sandedBefore = ({ airC, rows }: Column): readonly WindowFault[] =>
  rows.some((row, index) => !row.sanded && rows.slice(0, index).some(({ sanded }) => sanded))
    ? [{ code: 'sandedBefore', airC }]
    : []

/** Stretches are matched by their number: the same ones at every temperature, shut and sanded alike. */
const patternOf = ({ rows }: Column): string =>
  rows.map(({ untilH, sanded }) => `${untilH === undefined}${sanded}`).join()

const uneven = ([first, ...others]: readonly Column[]): readonly WindowFault[] =>
  others.flatMap((column): readonly WindowFault[] =>
    first && patternOf(column) !== patternOf(first)
      ? [{ code: 'uneven', airC: column.airC, otherC: first.airC }]
      : [],
  )

const notMonotone = (columns: readonly Column[]): readonly WindowFault[] =>
  columns.flatMap(({ airC, rows }, index): readonly WindowFault[] => {
    const colder = columns[index - 1]
    const later = rows.some((row, nr) => {
      const before = colder?.rows[nr]
      return before && (row.fromH > before.fromH || untilOf(row) > untilOf(before))
    })
    return colder && later ? [{ code: 'notMonotone', airC, colderC: colder.airC }] : []
  })

function windowsOf(columns: readonly Column[]): RecoatWindows {
  const count = columns[0]!.rows.length
  const opens = (nr: number) => tableOf(columns, ({ rows }) => rows[nr]!.fromH)
  const shuts = (nr: number) => tableOf(columns, ({ rows }) => rows[nr]!.untilH)
  const holes = Array.from({ length: count - 1 }, (_, nr): WindowHole | undefined => {
    const apart = columns.some(({ rows }) => rows[nr + 1]!.fromH - untilOf(rows[nr]!) > TOUCHING_H)
    const [shut, open] = [shuts(nr), opens(nr + 1)]
    return apart && shut && open ? { shuts: shut, opens: open } : undefined
  })
  const unsandedCount = columns[0]!.rows.filter(({ sanded }) => !sanded).length
  const least = opens(0)
  const unsanded = unsandedCount === 0 ? (least ?? atOnce) : shuts(unsandedCount - 1)
  return {
    ...(least ? { least } : {}),
    holes: holes.filter((hole) => hole !== undefined),
    ...(unsanded ? { unsanded } : {}),
  }
}

/** `undefined` where the stretch has no such end, or a wait is none. */
function tableOf(
  columns: readonly Column[],
  hoursOf: (column: Column) => number | undefined,
): CureTable | undefined {
  const points = columns.flatMap((column) => {
    const hours = hoursOf(column)
    return hours !== undefined && hours > AT_ONCE_H ? [{ airC: column.airC, hours }] : []
  })
  return points.length > 0 ? cureTable(points) : undefined
}
