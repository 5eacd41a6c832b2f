/**
 * How a boat stands in the shop, from marks on it whose heights were measured. Boat frame: x forward from the aftmost
 * point, y to port, z up from the floating waterline; metres and radians. The shop's floor, or a laser plane, is level.
 */
import type { Note } from '#core/note'
import { leastSquares, type Row } from './least-squares.ts'

export type LevelMark = {
  readonly id: string
  readonly x: number
  readonly y: number
  readonly z: number
  /** Measured over the level plane, m. */
  readonly height: number
}

export type Attitude = {
  /** Bow up is positive, rad. */
  readonly trim: number
  /** Port side up, so starboard side down, is positive, rad. */
  readonly heel: number
  /** Of the waterline on the centreline at x = 0 over the level plane, m. */
  readonly height: number
}

export type MarkResidual = {
  readonly id: string
  /** Measured less worked height, m. */
  readonly residual: number
  /** Residual over what it may be for a tape read to `tapeSigma`; absent where three marks leave nothing to check. */
  readonly normalised?: number
}

export type AttitudeFit = {
  readonly attitude: Attitude
  readonly marks: readonly MarkResidual[]
  /** Root mean square of the residuals, m. */
  readonly rms: number
}

export type AttitudeResult =
  | { readonly ok: true; readonly fit: AttitudeFit; readonly notes: readonly Note[] }
  | { readonly ok: false; readonly notes: readonly Note[] }

/** How well a height is read off a tape, m; common practice without a source. */
export const tapeSigma = 0.003
/**
 * A normalised residual beyond this is a slip: data snooping after Baarda, A testing procedure for use in geodetic
 * networks (1968), significance 0.001, from memory.
 */
export const slipBeyond = 3.29
/** Marks that spread less than this to the side of their own line say nothing of the third angle, m; assumed. */
const leastSpread = 0.1
/** With as many marks as unknowns nothing is checked; with one more a slip is seen but not whose it is. */
const unknowns = 3

/**
 * Height over the level plane: height + x sin(trim) + y cos(trim) sin(heel) + z cos(trim) cos(heel), a rotation about
 * the boat's own longitudinal axis and then about the athwartships one.
 */
export const heightOverLevel = (
  { trim, heel, height }: Attitude,
  { x, y, z }: { readonly x: number; readonly y: number; readonly z: number },
): number => height + x * Math.sin(trim) + Math.cos(trim) * (y * Math.sin(heel) + z * Math.cos(heel))

/**
 * Trim, heel and height by least squares from three or more marks (Gauss-Newton; exact marks are met to rounding).
 * Fewer marks, or marks on one line, give no attitude and a note; a mark that disagrees is named.
 */
export const attitudeFrom = (marks: readonly LevelMark[]): AttitudeResult => {
  if (marks.length < unknowns) {
    const data = { count: marks.length, needed: unknowns }
    return { ok: false, notes: [{ code: 'boat.levelsTooFew', severity: 'missing', data }] }
  }
  const spreadM = sideSpread(marks)
  if (!(spreadM >= leastSpread)) {
    const data = { spreadM, leastM: leastSpread }
    return { ok: false, notes: [{ code: 'boat.levelsInLine', severity: 'missing', data }] }
  }
  const fit = fitted(marks)
  if (!fit) return { ok: false, notes: [{ code: 'boat.levelsNoFit', severity: 'fault', data: {} }] }
  const { attitude, free } = fit
  const residuals = marks.map((mark, k) => residualOf(mark, { attitude, free: free[k]!, of: marks.length }))
  const rms = Math.sqrt(residuals.reduce((sum, { residual }) => sum + residual ** 2, 0) / marks.length)
  return { ok: true, fit: { attitude, marks: residuals, rms }, notes: disagreement(residuals, rms) }
}

/** Root mean square distance of the marks from the line they lie along, seen from above. */
function sideSpread(marks: readonly LevelMark[]): number {
  const mean = (of: (mark: LevelMark) => number) =>
    marks.reduce((sum, mark) => sum + of(mark), 0) / marks.length
  const [x, y] = [mean((mark) => mark.x), mean((mark) => mark.y)]
  const xx = mean((mark) => (mark.x - x) ** 2)
  const yy = mean((mark) => (mark.y - y) ** 2)
  const xy = mean((mark) => (mark.x - x) * (mark.y - y))
  const half = (xx + yy) / 2
  return Math.sqrt(Math.max(half - Math.hypot((xx - yy) / 2, xy), 0))
}

const steepest = Math.PI / 3
const mostSteps = 30

type Fitted = { readonly attitude: Attitude; readonly free: readonly number[] }

function fitted(marks: readonly LevelMark[]): Fitted | undefined {
  let at: Attitude = { trim: 0, heel: 0, height: 0 }
  let free: readonly number[] = []
  for (let step = 0; step < mostSteps; step++) {
    const solved = leastSquares(
      marks.map((mark) => rowOf(mark, at)),
      unknowns,
    )
    if (!solved) return undefined
    const [trim, heel, height] = solved.values as [number, number, number]
    at = { trim: at.trim + trim, heel: at.heel + heel, height: at.height + height }
    free = solved.free
    if (!(Math.abs(at.trim) < steepest && Math.abs(at.heel) < steepest)) return undefined
    if (Math.abs(trim) + Math.abs(heel) + Math.abs(height) < 1e-14) break
  }
  return { attitude: at, free }
}

/** Derivatives of the worked height by trim, heel and height. */
function rowOf(mark: LevelMark, at: Attitude): Row {
  const { x, y, z } = mark
  const { trim, heel } = at
  const across = y * Math.sin(heel) + z * Math.cos(heel)
  return {
    slopes: [
      x * Math.cos(trim) - Math.sin(trim) * across,
      Math.cos(trim) * (y * Math.cos(heel) - z * Math.sin(heel)),
      1,
    ],
    miss: mark.height - heightOverLevel(at, mark),
    sigma: tapeSigma,
  }
}

type FreeOf = { readonly attitude: Attitude; readonly free: number; readonly of: number }

function residualOf(mark: LevelMark, { attitude, free, of }: FreeOf): MarkResidual {
  const residual = mark.height - heightOverLevel(attitude, mark)
  // A mark that alone carries an angle is met whatever it says.
  return of === unknowns || free < 1e-9
    ? { id: mark.id, residual }
    : { id: mark.id, residual, normalised: residual / (tapeSigma * Math.sqrt(free)) }
}

function disagreement(residuals: readonly MarkResidual[], rms: number): readonly Note[] {
  const size = (one: MarkResidual) => Math.abs(one.normalised ?? 0)
  if (residuals.length === unknowns)
    return [{ code: 'boat.levelsUnchecked', severity: 'info', data: { count: unknowns } }]
  const worst = residuals.reduce((most, one) => (size(one) > size(most) ? one : most))
  if (size(worst) <= slipBeyond) return []
  // Every mark of four has the same normalised residual: which one slipped cannot be told.
  return residuals.length === unknowns + 1
    ? [{ code: 'boat.levelsDisagree', severity: 'warning', data: { rmsByTapeM: rms } }]
    : [
        {
          code: 'boat.levelDisagrees',
          severity: 'warning',
          data: { mark: worst.id, residualByTapeM: worst.residual, rmsByTapeM: rms },
        },
      ]
}
