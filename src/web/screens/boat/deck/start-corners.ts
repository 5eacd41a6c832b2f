/**
 * A first shape for a zone that nobody has drawn: where such zones usually lie, of the size that is known. COMMON
 * PRACTICE, without a source: it stands there to be dragged to where the tape says.
 */
import { breadthAt, type Place } from './deck-view.ts'

export type StartInput = {
  readonly kind: string
  readonly sheer: readonly Place[]
  /** As typed in, m. */
  readonly length?: number | undefined
  readonly width?: number | undefined
  /** As typed in, m². */
  readonly area?: number | undefined
}

export type StartShape = { readonly corners: readonly Place[]; readonly mirrored: boolean }

/** From and to along the boat as shares of its length; how far in the inner edge lies and out the outer, of the half breadth. */
type Span = { readonly from: number; readonly to: number; readonly inner: number; readonly outer: number }

const spans: Readonly<Record<string, Span>> = {
  foredeck: { from: 0.62, to: 0.96, inner: 0, outer: 1 },
  'side deck': { from: 0.16, to: 0.62, inner: 0.78, outer: 1 },
  'cabin top': { from: 0.4, to: 0.64, inner: 0, outer: 0.55 },
  'cabin side': { from: 0.4, to: 0.64, inner: 0.55, outer: 0.62 },
  'cockpit sole': { from: 0.06, to: 0.42, inner: 0, outer: 0.6 },
  'cockpit side': { from: 0.06, to: 0.42, inner: 0.6, outer: 0.68 },
  coaming: { from: 0.06, to: 0.42, inner: 0.68, outer: 0.78 },
  gunwale: { from: 0.02, to: 0.62, inner: 0.9, outer: 1 },
  hardtop: { from: 0.32, to: 0.54, inner: 0, outer: 0.65 },
  'outboard well': { from: 0, to: 0.07, inner: 0, outer: 0.4 },
  'swim platform': { from: -0.09, to: 0, inner: 0, outer: 0.85 },
}

/** Half a metre square, m², a little aft of the middle. */
const small = { area: 0.25, at: 0.45 } as const

/** Corners along the outside, aft to forward, then back along the inside. */
export function startCorners({ kind, sheer, length, width, area }: StartInput): StartShape {
  const aft = sheer[0]?.[0] ?? 0
  const boat = (sheer.at(-1)?.[0] ?? 7) - aft
  const span = Object.hasOwn(spans, kind) ? spans[kind] : undefined
  const side = Math.sqrt(area ?? small.area)
  if (!span) return onCentre(aft + small.at * boat, length ?? side, width ?? side)
  const from = aft + span.from * boat
  if (span.inner === 0 && length !== undefined && width !== undefined)
    return halfBox(kind === 'swim platform' ? aft - length : from, length, width / 2)
  const to = length === undefined ? aft + span.to * boat : from + length
  const outside = stations(kind).map((share): Place => {
    const x = from + share * (to - from)
    return placed(x, span.outer * breadthAt(sheer, x))
  })
  const inside = (span.inner === 0 ? [1, 0] : [...stations(kind)].reverse()).map((share): Place => {
    const x = from + share * (to - from)
    const outer = span.outer * breadthAt(sheer, x)
    return placed(x, width !== undefined && span.inner > 0 ? outer - width : span.inner * breadthAt(sheer, x))
  })
  return { corners: [...outside, ...inside], mirrored: true }
}

/** What follows the sheer has more corners along it. */
const stations = (kind: string): readonly number[] =>
  kind === 'foredeck' ? [0, 0.4, 0.75, 1] : ['side deck', 'gunwale'].includes(kind) ? [0, 0.5, 1] : [0, 1]

const placed = (x: number, y: number): Place => [hundredth(x), hundredth(Math.max(0, y))]
const hundredth = (value: number): number => Math.round(value * 100) / 100

const halfBox = (from: number, length: number, half: number): StartShape => ({
  corners: [
    [from, half],
    [from + length, half],
    [from + length, 0],
    [from, 0],
  ].map(([x, y]) => [thousandth(x!), thousandth(y!)] as const),
  mirrored: true,
})

const thousandth = (value: number): number => Math.round(value * 1000) / 1000

const onCentre = (middle: number, length: number, width: number): StartShape => ({
  corners: [
    [middle - length / 2, width / 2],
    [middle + length / 2, width / 2],
    [middle + length / 2, -width / 2],
    [middle - length / 2, -width / 2],
  ].map(([x, y]) => [thousandth(x!), thousandth(y!)] as const),
  mirrored: false,
})
