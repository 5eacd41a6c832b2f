/** A hatch as the lines and dots it is drawn with, cut to its polygon, so that any writer can draw it. */
import { hatchRule, type LineHatch } from './hatches.ts'
import type { Drawing, HatchShape, Point } from './shapes.ts'

export function hatchDrawing(shape: HatchShape): Drawing {
  const rule = hatchRule(shape.hatch)
  if (rule.kind === 'weave') return weave(shape)
  const strokes = rule.angles.flatMap((angle) => parallels(shape.within, { angle, gap: rule.gap }))
  return [
    ...strokes.map((points) => ({ kind: 'line' as const, points, pen: 'hatch' as const, ink: shape.ink })),
    ...(rule.dots ? dots(shape, rule) : []),
  ]
}

/** Parallel lines inside a polygon, even-odd; `angle` in degrees, rising to the right. */
export function parallels(
  polygon: readonly Point[],
  { angle, gap }: { readonly angle: number; readonly gap: number },
): readonly (readonly [Point, Point])[] {
  const turn = (angle * Math.PI) / 180
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)]
  const flat = polygon.map(([x, y]): Point => [x * cos - y * sin, x * sin + y * cos])
  const back = ([x, y]: Point): Point => [x * cos + y * sin, y * cos - x * sin]
  const heights = flat.map(([, y]) => y)
  const first = Math.floor(Math.min(...heights) / gap) + 0.5
  const count = Math.ceil((Math.max(...heights) - first * gap) / gap)
  return Array.from({ length: Math.max(0, count) }, (_, k) => (first + k) * gap).flatMap((y) =>
    pairs(crossings(flat, y)).map(([from, to]): readonly [Point, Point] => [back([from, y]), back([to, y])]),
  )
}

/** Where a level line meets the polygon, from left to right. */
function crossings(polygon: readonly Point[], y: number): readonly number[] {
  return polygon
    .flatMap(([x0, y0], index) => {
      const [x1, y1] = polygon[(index + 1) % polygon.length] ?? [x0, y0]
      return y0 <= y === y1 <= y ? [] : [x0 + ((y - y0) / (y1 - y0)) * (x1 - x0)]
    })
    .sort((a, b) => a - b)
}

const pairs = (sorted: readonly number[]): readonly (readonly [number, number])[] =>
  sorted.flatMap((from, index) =>
    index % 2 === 0 && sorted[index + 1] !== undefined ? [[from, sorted[index + 1]!] as const] : [],
  )

const inside = (polygon: readonly Point[], [x, y]: Point): boolean =>
  crossings(polygon, y).filter((cross) => cross < x).length % 2 === 1

type Bounds = { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number }

function boundsOf(polygon: readonly Point[]): Bounds {
  const xs = polygon.map(([x]) => x)
  const ys = polygon.map(([, y]) => y)
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) }
}

/** Points of a grid whose every other row is shifted by half. */
function grid(
  bounds: Bounds,
  { across, down }: { readonly across: number; readonly down: number },
): readonly Point[] {
  const rows = Math.max(0, Math.ceil((bounds.bottom - bounds.top) / down))
  const columns = Math.max(0, Math.ceil((bounds.right - bounds.left) / across)) + 1
  return Array.from({ length: rows }, (_, row) =>
    Array.from(
      { length: columns },
      (_, column): Point => [
        bounds.left + (column + (row % 2 === 0 ? 0.25 : 0.75)) * across,
        bounds.top + (row + 0.5) * down,
      ],
    ),
  ).flat()
}

function dots({ within, ink }: HatchShape, { gap }: LineHatch): Drawing {
  return grid(boundsOf(within), { across: gap * 1.25, down: gap * 0.75 })
    .filter((at) => inside(within, at))
    .map((at) => ({ kind: 'circle', at, radius: 0.2, fill: ink }))
}

const lens = { across: 4.6, down: 2.3, length: 4.2, height: 0.95 }

/** Glass laminate: cut yarns as lenses, and a dash for the ply between their rows. */
function weave({ within, ink }: HatchShape): Drawing {
  const bounds = boundsOf(within)
  return grid(bounds, lens).flatMap(([x, y]): Drawing => {
    const half = lens.length / 2
    const dash: readonly Point[] = [
      [x - half * 0.8, y + lens.down / 2],
      [x + half * 0.8, y + lens.down / 2],
    ]
    return [
      ...(holds(within, almond([x, y]))
        ? [{ kind: 'line' as const, points: almond([x, y]), pen: 'hatch' as const, ink }]
        : []),
      ...(holds(within, dash) ? [{ kind: 'line' as const, points: dash, pen: 'hatch' as const, ink }] : []),
    ]
  })
}

const holds = (polygon: readonly Point[], points: readonly Point[]): boolean =>
  points.every((point) => inside(polygon, point))

function almond([x, y]: Point): readonly Point[] {
  const half = lens.length / 2
  const along = [-1, -0.6, -0.2, 0.2, 0.6, 1]
  const bulge = (t: number) => (lens.height / 2) * (1 - t * t)
  return [
    ...along.map((t): Point => [x + t * half, y - bulge(t)]),
    ...[...along].reverse().map((t): Point => [x + t * half, y + bulge(t)]),
  ]
}
