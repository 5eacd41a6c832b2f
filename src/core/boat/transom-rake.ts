/**
 * A transom that leans. The hull is drawn to a flat end square to the centreline; the leaning plane cuts a wedge off
 * that end. Boat frame, metres and radians.
 */
import { clipPolyline, type Level, lineAcross, loftLineAt, type Point3, type Polyline } from '#core/geometry'
import type { Hull } from './hull.ts'
import { allStrips, sheerHeightAt } from './hull-lines.ts'
import type { HullZone } from './hull-zones.ts'
import type { HullOutline, Line2 } from './outline.ts'

export type TransomRake = {
  /** Angle of the transom to the vertical; positive when its top is the aftmost, negative when its foot is. */
  readonly rake: number
}

type Ends = { readonly sheer: number; readonly keel: number }

function endsOf(hull: Hull): Ends {
  const end = lineAcross(loftLineAt(hull.surface, 0), { ...allStrips(hull), parts: 1 })
  return { sheer: sheerHeightAt(hull, 0), keel: Math.min(...end.map(({ z }) => z)) }
}

/** How far forward of the drawn end the leaning plane is at a height. */
const setBack = ({ sheer, keel }: Ends, rake: number, z: number): number =>
  Math.tan(Math.abs(rake)) * (rake > 0 ? Math.max(sheer - z, 0) : Math.max(z - keel, 0))

/** Positive forward of the leaning plane, negative on the wedge it takes off. */
export function rakeLevel(hull: Hull, { rake }: TransomRake): Level {
  const ends = endsOf(hull)
  return (x, _y, z) => x - setBack(ends, rake, z)
}

/**
 * The zones with the wedge taken off the sides and the bottom, and the transom larger by 1/cos(rake). The wedge is
 * worked on the section at the drawn end, as if the hull ran on straight over it: exact for a prism, and within the
 * change of the sections over the wedge for others. Edges stay those of the drawn hull.
 */
export function rakeTransom(
  hull: Hull,
  zones: readonly HullZone[],
  { rake }: TransomRake,
): readonly HullZone[] {
  if (rake === 0) return zones
  const ends = endsOf(hull)
  const chine = hull.edges.indexOf('chine')
  const back = (line: Polyline): number => wedge(line, (z) => setBack(ends, rake, z))
  const end = (from: number, to: number): Polyline =>
    lineAcross(loftLineAt(hull.surface, 0), { from, to, parts: 4 })
  const last = hull.edges.length - 1
  const parts = (line: Polyline, sign: 1 | -1): number =>
    clipPolyline(line, ({ z }) => sign * z).reduce((sum, part) => sum + back(part), 0)
  const off =
    chine < 0
      ? { side: parts(end(0, last), 1), bottom: parts(end(0, last), -1) }
      : { side: back(end(chine + 1, last)), bottom: back(end(0, chine)) }
  return zones.map((zone) => {
    if (zone.kind === 'transom' && zone.id === 'transom') return scaled(zone, 1 / Math.cos(rake))
    if (zone.kind === 'bottom') return scaled(zone, 1 - (2 * off.bottom) / zone.area)
    return zone.kind.startsWith('topsides') ? scaled(zone, 1 - off.side / zone.area) : zone
  })
}

/** ∫ set-back ds over a line, exact where the set-back runs straight between its points. */
function wedge(line: Polyline, setBackAt: (z: number) => number): number {
  return line.slice(1).reduce((sum, to, k) => {
    const from = line[k]!
    const length = Math.hypot(to.x - from.x, to.y - from.y, to.z - from.z)
    return sum + (length * (setBackAt(from.z) + setBackAt(to.z))) / 2
  }, 0)
}

function scaled(zone: HullZone, share: number): HullZone {
  const by = Math.max(share, 0)
  return {
    ...zone,
    area: zone.area * by,
    faces: zone.faces.map((face) => ({ ...face, area: face.area * by })),
  }
}

/** The lines of the drawing cut at the leaning transom. */
export function rakeOutline(hull: Hull, outline: HullOutline, { rake }: TransomRake): HullOutline {
  if (rake === 0) return outline
  const ends = endsOf(hull)
  const cut = (side: Line2, above: Line2): readonly [Line2, Line2] => {
    const line = side.map(([x, z], k): Point3 => ({ x, y: above[k]?.[1] ?? 0, z }))
    const kept = clipPolyline(line, ({ x, z }) => x - setBack(ends, rake, z))[0] ?? line
    return [kept.map(({ x, z }) => [x, z]), kept.map(({ x, y }) => [x, y])]
  }
  const [keel, keelAbove] = cut(outline.sheerPlan.keel, outline.halfBreadthPlan.keel)
  const [sheer, sheerAbove] = cut(outline.sheerPlan.sheer, outline.halfBreadthPlan.sheer)
  const knuckles = outline.sheerPlan.knuckles.map(({ kind, line }, k) => ({
    kind,
    lines: cut(line, outline.halfBreadthPlan.knuckles[k]!.line),
  }))
  const waterlines = outline.sheerPlan.waterlines.map(({ height, lines }, k) => ({
    height,
    lines: lines.map((line, piece) => cut(line, outline.halfBreadthPlan.waterlines[k]!.lines[piece]!)),
  }))
  const view = (at: 0 | 1) => ({
    knuckles: knuckles.map(({ kind, lines }) => ({ kind, line: lines[at] })),
    waterlines: waterlines.map(({ height, lines }) => ({ height, lines: lines.map((pair) => pair[at]) })),
  })
  return {
    ...outline,
    sheerPlan: { keel, sheer, ...view(0) },
    halfBreadthPlan: { keel: keelAbove, sheer: sheerAbove, ...view(1) },
  }
}
