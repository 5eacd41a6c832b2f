/** Hourly values as curves of a drawing: cut to the days shown, broken where an hour is not known. */
import type { Minutes } from '../hour-spans.ts'

export type CurvePoint = { readonly minute: number; readonly value: number }
export type Curve = readonly CurvePoint[]

export type Hourly = { readonly firstMinute: number; readonly values: readonly number[] }

export function curveOf({ firstMinute, values }: Hourly, { fromMinute, toMinute }: Minutes): Curve {
  const first = Math.max(0, Math.floor((fromMinute - firstMinute) / 60))
  const last = Math.min(values.length - 1, Math.ceil((toMinute - firstMinute) / 60))
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, k) => ({
    minute: firstMinute + (first + k) * 60,
    value: values[first + k] ?? Number.NaN,
  })).filter(({ value }) => !Number.isNaN(value))
}

export type Range = { readonly least: number; readonly most: number; readonly ticks: readonly number[] }

/** Whole fives round what the curves hold; undefined where they hold nothing. */
export function rangeOf(curves: readonly Curve[]): Range | undefined {
  const values = curves.flatMap((curve) => curve.map(({ value }) => value))
  if (values.length === 0) return undefined
  const least = Math.floor(Math.min(...values) / 5) * 5
  const most = Math.max(least + 10, Math.ceil(Math.max(...values) / 5) * 5)
  const step = most - least > 40 ? 10 : 5
  const ticks = Array.from({ length: Math.floor((most - least) / step) + 1 }, (_, k) => least + k * step)
  return { least, most, ticks }
}

export type Scale = Minutes & {
  readonly width: number
  readonly top: number
  readonly bottom: number
  readonly least: number
  readonly most: number
}

const place = ({ minute, value }: CurvePoint, scale: Scale): string => {
  const x = ((minute - scale.fromMinute) / (scale.toMinute - scale.fromMinute)) * scale.width
  const y = scale.bottom - ((value - scale.least) / (scale.most - scale.least)) * (scale.bottom - scale.top)
  return `${x.toFixed(1)} ${y.toFixed(1)}`
}

/** The pen is lifted over a gap. */
export const linePath = (curve: Curve, scale: Scale): string =>
  curve
    .map((point, at) => {
      const before = curve[at - 1]
      const joined = before !== undefined && point.minute - before.minute <= 60
      return `${joined ? 'L' : 'M'}${place(point, scale)}`
    })
    .join('')

/** Between two curves over the same hours. */
export function areaPath(low: Curve, high: Curve, scale: Scale): string {
  if (low.length === 0) return ''
  const there = low.map((point, at) => `${at === 0 ? 'M' : 'L'}${place(point, scale)}`)
  const back = high.toReversed().map((point) => `L${place(point, scale)}`)
  return `${there.join('')}${back.join('')}Z`
}

/** Where one curve is farthest from another, away from the ends, as a share of its points: its name stands there. */
export function farthest(curve: Curve, other: Curve): { readonly at: number; readonly over: boolean } {
  const edge = Math.floor(curve.length * 0.06)
  const gap = (at: number): number => (curve[at]?.value ?? 0) - (other[at]?.value ?? 0)
  let best = Math.floor(curve.length / 2)
  for (let at = edge; at < curve.length - edge; at++) if (Math.abs(gap(at)) > Math.abs(gap(best))) best = at
  return { at: curve.length === 0 ? 0 : best / curve.length, over: gap(best) >= 0 }
}
