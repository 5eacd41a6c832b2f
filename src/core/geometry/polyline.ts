/** Chains of straight pieces in space: length, and the parts of one that a test keeps. */

import { between3, distance3, type Point3 } from './points.ts'

export type Polyline = readonly Point3[]

/** Length in metres; 0 for fewer than two points. */
export const polylineLength = (line: Polyline): number =>
  line.reduce((sum, point, i) => (i === 0 ? 0 : sum + distance3(line[i - 1]!, point)), 0)

/** Length of several lines together, in metres; 0 for none. */
export const polylinesLength = (lines: readonly Polyline[]): number =>
  lines.reduce((sum, line) => sum + polylineLength(line), 0)

/**
 * The parts of a line where `keep` is not negative, cut where the straight piece between two points crosses zero.
 * Parts of a single point are dropped.
 */
export const clipPolyline = (line: Polyline, keep: (point: Point3) => number): readonly Polyline[] => {
  const parts: Point3[][] = []
  let open: Point3[] = []
  const close = () => {
    if (open.length > 1) parts.push(open)
    open = []
  }
  line.forEach((point, i) => {
    const here = keep(point)
    const before = i === 0 ? here : keep(line[i - 1]!)
    const crossing = before < 0 !== here < 0
    const cut = crossing ? between3(line[i - 1]!, point, before / (before - here)) : point
    if (crossing) open.push(cut)
    if (here < 0) close()
    else open.push(point)
  })
  close()
  return parts
}
