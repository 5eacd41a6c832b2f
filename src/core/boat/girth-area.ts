/**
 * Areas from girths read off a tape. The drawn hull gives how the surface lies along the boat; the tape gives how wide
 * it really is. Boat frame, metres.
 */
import {
  clipPolyline,
  cubicSpline,
  lineAcross,
  loftLineAt,
  type Point3,
  type Polyline,
  polylineLength,
  splineAt,
} from '#core/geometry'
import type { Hull } from './hull.ts'
import type { StripRange } from './hull-lines.ts'

/** Girth of a zone along the section, at one station. */
export type Girth = { readonly x: number; readonly girth: number }

/** Where a zone lies on every section: between two strips, and above or below the floating waterline. */
export type GirthBand = { readonly strips: StripRange; readonly water?: 'above' | 'below' }

/** Sections the drawn hull is cut at, and points a section: triangles between them are within 1e-4 of the surface. */
const [slices, across] = [160, 12]
/** Where the drawn band is narrower than this it says nothing of how wide the real one is, m. */
const leastGirth = 0.02

/** Side above the chine, or above the water on a round bilge; and what is below that. */
export function girthBands({ edges }: Hull): { readonly side: GirthBand; readonly bottom: GirthBand } {
  const [chine, last] = [edges.indexOf('chine'), edges.length - 1]
  const all = { from: 0, to: last }
  return chine < 0
    ? { side: { strips: all, water: 'above' }, bottom: { strips: all, water: 'below' } }
    : { side: { strips: { from: chine + 1, to: last } }, bottom: { strips: { from: 0, to: chine } } }
}

/**
 * Area of the band on one side, m²: each slice of the drawn hull times measured over drawn girth, which runs as a
 * spline from girth to girth and level beyond the first and the last. Undefined without a girth, or where the drawn
 * hull has no such band.
 */
export function areaFromGirths(
  hull: Hull,
  { band, girths }: { readonly band: GirthBand; readonly girths: readonly Girth[] },
): number | undefined {
  const rows = Array.from({ length: slices + 1 }, (_, k) => bandLine(hull, band, k / slices))
  const ratio = ratioAlong(rows, girths)
  if (!ratio) return undefined
  return rows.slice(1).reduce((sum, row, k) => sum + sliceArea(rows[k]!, row, ratio), 0)
}

/** The band's part of one section, lowest point first; one point repeated where it has none there. */
function bandLine({ surface }: Hull, { strips, water }: GirthBand, u: number): Polyline {
  const line = lineAcross(loftLineAt(surface, u), { ...strips, parts: 2 })
  if (water === undefined) return line
  const sign = water === 'above' ? 1 : -1
  const wet = clipPolyline(line, ({ z }) => sign * z)
  return wet.length > 0 ? wet.flat() : [line[water === 'above' ? line.length - 1 : 0]!]
}

type Ratio = (x: number) => number

function ratioAlong(rows: readonly Polyline[], girths: readonly Girth[]): Ratio | undefined {
  const places = rows.map((row) => row[0]!.x)
  const lengths = rows.map(polylineLength)
  const drawnAt = (x: number): number => {
    const next = Math.min(
      Math.max(
        places.findIndex((place) => place >= x),
        1,
      ),
      places.length - 1,
    )
    const [from, to] = [places[next - 1]!, places[next]!]
    const share = to > from ? Math.min(Math.max((x - from) / (to - from), 0), 1) : 0
    return lengths[next - 1]! + share * (lengths[next]! - lengths[next - 1]!)
  }
  const known = [...girths]
    .sort((a, b) => a.x - b.x)
    .map(({ x, girth }) => ({ x, drawn: drawnAt(x), girth }))
    .filter(({ drawn }) => drawn > leastGirth)
    .filter(({ x }, k, all) => k === 0 || x > all[k - 1]!.x)
  const [first, last] = [known[0], known.at(-1)]
  if (!first || !last) return undefined
  const spline = cubicSpline({
    knots: known.map(({ x }) => x),
    values: known.map(({ drawn, girth }) => girth / drawn),
  })
  return (x) => splineAt(spline, Math.min(Math.max(x, first.x), last.x)).value
}

/** Triangles between points at the same share of both sections. */
function sliceArea(a: Polyline, b: Polyline, ratio: Ratio): number {
  const [from, to] = [evenly(a), evenly(b)]
  let area = 0
  for (let k = 0; k < across; k++) {
    area += triangle(from[k]!, to[k]!, to[k + 1]!) + triangle(from[k]!, to[k + 1]!, from[k + 1]!)
  }
  return area * ratio((a[0]!.x + b[0]!.x) / 2)
}

function evenly(line: Polyline): readonly Point3[] {
  const length = polylineLength(line)
  const points: Point3[] = []
  let [piece, before] = [0, 0]
  for (let k = 0; k <= across; k++) {
    const want = (length * k) / across
    while (piece < line.length - 2 && before + pieceLength(line, piece) < want) {
      before += pieceLength(line, piece)
      piece += 1
    }
    points.push(along(line, piece, want - before))
  }
  return points
}

const pieceLength = (line: Polyline, piece: number): number =>
  polylineLength([line[piece]!, line[piece + 1] ?? line[piece]!])

function along(line: Polyline, piece: number, by: number): Point3 {
  const [a, b] = [line[piece]!, line[piece + 1] ?? line[piece]!]
  const whole = pieceLength(line, piece)
  const share = whole > 0 ? Math.min(by / whole, 1) : 0
  return { x: a.x + share * (b.x - a.x), y: a.y + share * (b.y - a.y), z: a.z + share * (b.z - a.z) }
}

function triangle(a: Point3, b: Point3, c: Point3): number {
  const [ux, uy, uz] = [b.x - a.x, b.y - a.y, b.z - a.z]
  const [vx, vy, vz] = [c.x - a.x, c.y - a.y, c.z - a.z]
  return Math.hypot(uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx) / 2
}
