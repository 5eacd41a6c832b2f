/** The least and the most of several columns, hour by hour: the coldest and the warmest of some skins. */

/** Of at least one column, all as long; NaN where any is unknown. */
export const leastOf = (columns: readonly Float64Array[]): Float64Array => overAll(columns, Math.min)

/** As `leastOf`. */
export const mostOf = (columns: readonly Float64Array[]): Float64Array => overAll(columns, Math.max)

function overAll(
  [first, ...rest]: readonly Float64Array[],
  of: (a: number, b: number) => number,
): Float64Array {
  return rest.reduce((all, column) => all.map((value, hour) => of(value, column[hour]!)), first!)
}
