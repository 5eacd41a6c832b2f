/**
 * Puts a scan into the boat frame by marks that were picked on it: x forward, y to port, z up from the floating
 * waterline; metres. The scan already lies about right: bow forward, keel down.
 */

import {
  type Box,
  inOrder,
  movedPoint,
  moving,
  type Plane,
  type Point3,
  type Similarity,
  turning,
} from '#core/geometry'
import type { Note } from '#core/note'
import { slipBeyond } from '../attitude.ts'
import { leastSquares, type Row } from '../least-squares.ts'

export type ScanMark = {
  readonly id: string
  /** Where it was picked. */
  readonly at: Point3
  /** Whether it lies on the centreline. */
  readonly centred: boolean
  /** Its height over the floating waterline, m; absent where that is not known. */
  readonly height?: number
}

export type ScanResidual = {
  readonly id: string
  /** What is off: to port of the centreline, and over its height, m. */
  readonly across?: number
  readonly up?: number
}

export type ScanFit = {
  /** From where the scan lies to the boat frame; along the boat it does not move. */
  readonly move: Similarity
  readonly marks: readonly ScanResidual[]
  /** Root mean square of what is off, m. */
  readonly rms: number
}

export type ScanFrame =
  | { readonly ok: true; readonly fit: ScanFit; readonly notes: readonly Note[] }
  | { readonly ok: false; readonly notes: readonly Note[] }

export type FrameAsked = {
  readonly marks: readonly ScanMark[]
  /** The plane of symmetry of the scan, and the box that it lies in; absent when it has none. */
  readonly mirror?: { readonly plane: Plane; readonly box: Box }
}

/** How well a place is hit with a finger on a scan, m; assumed. The plane of symmetry is surer. */
const [pickSigma, planeSigma] = [0.01, 0.001]
/** Turns about three axes, and moves across and up. */
const unknowns = 5
const [mostSteps, mostTurn] = [30, Math.PI / 3]

type Tie = {
  readonly id: string
  readonly at: Point3
  readonly axis: 'y' | 'z'
  readonly goal: number
  readonly sigma: number
}

/**
 * The frame by weighted least squares (Gauss-Newton) from marks and the plane of symmetry. Too few marks, or marks
 * that leave a turn open, give none and a note; one that disagrees with all others is named.
 */
export const scanFrame = ({ marks, mirror }: FrameAsked): ScanFrame => {
  const ties = [...marks.flatMap(tiesOf), ...(mirror ? planeTies(mirror) : [])]
  const heights = marks.filter(({ height }) => height !== undefined).length
  if (marks.length < 3 || heights < 2)
    return without('boat.scanMarksTooFew', { count: marks.length, needed: 3, heights })
  const fitted = fit(ties)
  if (fitted === 'open') return without('boat.scanMarksInLine', { count: marks.length })
  if (fitted === 'wild') return without('boat.scanMarksNoFit', {})
  const { move, free } = fitted
  const picked = ties.flatMap((tie, i) => {
    if (tie.id === '') return []
    const off = movedPoint(move, tie.at)[tie.axis] - tie.goal
    const share = Math.max(free[i]!, 0)
    return [{ tie, off, normalised: share < 1e-6 ? 0 : off / (tie.sigma * Math.sqrt(share)) }]
  })
  const rms = Math.sqrt(picked.reduce((sum, { off }) => sum + off * off, 0) / picked.length)
  const spare = ties.length - unknowns
  return {
    ok: true,
    fit: { move, marks: marks.map((mark) => residualOf(mark, picked)), rms },
    notes: disagreement(picked, spare, rms),
  }
}

const without = (code: string, data: Note['data']): ScanFrame => ({
  ok: false,
  notes: [{ code, severity: 'missing', data }],
})

const tiesOf = ({ id, at, centred, height }: ScanMark): readonly Tie[] => [
  ...(centred ? [{ id, at, axis: 'y', goal: 0, sigma: pickSigma } as const] : []),
  ...(height === undefined ? [] : [{ id, at, axis: 'z', goal: height, sigma: pickSigma } as const]),
]

/** Three points of the plane, as far apart as the scan is long and high, that lie on the centreline. */
const planeTies = ({ plane, box }: NonNullable<FrameAsked['mirror']>): readonly Tie[] => {
  const { normal } = plane
  const middle = (box.least.y + box.most.y) / 2
  const onPlane = (x: number, z: number): Point3 => {
    const from = { x, y: middle, z }
    const over = normal.x * x + normal.y * middle + normal.z * z - plane.offset
    return { x: from.x - over * normal.x, y: from.y - over * normal.y, z: from.z - over * normal.z }
  }
  const places = [
    onPlane(box.least.x, box.least.z),
    onPlane(box.most.x, box.least.z),
    onPlane((box.least.x + box.most.x) / 2, box.most.z),
  ]
  return places.map((at) => ({ id: '', at, axis: 'y', goal: 0, sigma: planeSigma }))
}

const fit = (ties: readonly Tie[]): 'open' | 'wild' | { move: Similarity; free: readonly number[] } => {
  const count = ties.length
  const mean = (axis: keyof Point3): number => ties.reduce((sum, { at }) => sum + at[axis], 0) / count
  // Turns are taken about the middle of the marks, so that they and the moves hardly mix.
  const middle = { x: mean('x'), y: mean('y'), z: mean('z') }
  let move = moving({ x: -middle.x, y: -middle.y, z: -middle.z })
  let free: readonly number[] = []
  for (let step = 0; step < mostSteps; step++) {
    const rows = ties.map((tie) => rowOf(tie, movedPoint(move, tie.at)))
    const solved = leastSquares(rows, unknowns)
    if (!solved) return step === 0 ? 'open' : 'wild'
    free = solved.free
    const [a, b, c, across, up] = solved.values as [number, number, number, number, number]
    const angle = Math.hypot(a, b, c)
    if (!(angle < mostTurn)) return 'wild'
    if (angle > 0) move = inOrder(move, turning({ x: a, y: b, z: c }, angle))
    move = inOrder(move, moving({ x: 0, y: across, z: up }))
    if (angle + Math.abs(across) + Math.abs(up) < 1e-12) break
  }
  return { move: inOrder(move, moving({ x: middle.x, y: 0, z: 0 })), free }
}

/** Derivatives of y or z by small turns about x, y and z and by the moves. */
const rowOf = ({ axis, goal, sigma }: Tie, { x, y, z }: Point3): Row =>
  axis === 'y'
    ? { slopes: [-z, 0, x, 1, 0], miss: goal - y, sigma }
    : { slopes: [y, -x, 0, 0, 1], miss: goal - z, sigma }

type Picked = { readonly tie: Tie; readonly off: number; readonly normalised: number }

const residualOf = ({ id }: ScanMark, picked: readonly Picked[]): ScanResidual => {
  const off = (axis: 'y' | 'z') => picked.find(({ tie }) => tie.id === id && tie.axis === axis)?.off
  const [across, up] = [off('y'), off('z')]
  return { id, ...(across === undefined ? {} : { across }), ...(up === undefined ? {} : { up }) }
}

const disagreement = (picked: readonly Picked[], spare: number, rms: number): readonly Note[] => {
  if (spare <= 0) return [{ code: 'boat.scanMarksUnchecked', severity: 'info', data: {} }]
  const worst = picked.reduce((most, one) =>
    Math.abs(one.normalised) > Math.abs(most.normalised) ? one : most,
  )
  if (Math.abs(worst.normalised) <= slipBeyond) return []
  const data = { rmsByTapeM: rms }
  // With one tie to spare all that it ties together are equally off: whose slip it is cannot be told.
  const isShared = picked.some(
    ({ tie, normalised }) =>
      tie.id !== worst.tie.id && Math.abs(normalised) > (1 - 1e-6) * Math.abs(worst.normalised),
  )
  return spare === 1 || isShared
    ? [{ code: 'boat.scanMarksDisagree', severity: 'warning', data }]
    : [
        {
          code: 'boat.scanMarkDisagrees',
          severity: 'warning',
          data: {
            ...data,
            mark: worst.tie.id,
            residualByTapeM: worst.off,
            way: worst.tie.axis === 'y' ? 'across' : 'up',
          },
        },
      ]
}
