/** Areas of deck zones from the tape: offsets strip by strip, corners triangle by triangle, camber along its arc. */
import { metres } from './cells.ts'
import { itemsOf, type RawSample } from './raw-sample.ts'

/** Both sides of what was measured from the centreline, or of the half that is mirrored; undefined where neither was. */
export function drawnArea(raw: RawSample, zone: string): number | undefined {
  const own = (name: string) => Object.values(itemsOf(raw.work, name)).filter((row) => row.zone === zone)
  const { camber } = itemsOf(raw.work, 'zones')[zone]!
  const rows = own('offsets').map(({ fromStern, outer, inner }) => ({
    x: metres(fromStern!),
    width: metres(outer!) - (inner === undefined ? 0 : metres(inner)),
  }))
  if (rows.length > 0) return 2 * strips(rows)
  const places = own('corners').map(
    ({ fromStern, offCentre }) => [metres(fromStern!), metres(offCentre!)] as const,
  )
  if (places.length === 0) return undefined
  const width = 2 * Math.max(...places.map(([, y]) => y))
  return 2 * fan(places) * (camber === undefined ? 1 : arcOver(metres(camber) / width))
}

type Row = { readonly x: number; readonly width: number }

const strips = (rows: readonly Row[]): number =>
  rows.slice(1).reduce((sum, row, at) => sum + (row.x - rows[at]!.x) * 0.5 * (row.width + rows[at]!.width), 0)

/** Triangles from the first corner. */
function fan(places: readonly (readonly [number, number])[]): number {
  const [[x0, y0]] = places as [readonly [number, number]]
  let sum = 0
  for (let at = 2; at < places.length; at++) {
    const [[xa, ya], [xb, yb]] = [places[at - 1]!, places[at]!]
    sum += ((xa - x0) * (yb - y0) - (xb - x0) * (ya - y0)) / 2
  }
  return Math.abs(sum)
}

/** Length of the parabola over its chord, summed along it by Simpson's rule; the plan has it in closed form. */
function arcOver(rise: number): number {
  const steps = 400
  const along = (s: number): number => Math.hypot(1, 8 * rise * s)
  let sum = along(0) + along(0.5)
  for (let k = 1; k < steps; k++) sum += (k % 2 === 1 ? 4 : 2) * along((0.5 * k) / steps)
  return 2 * ((sum * 0.5) / steps / 3)
}
