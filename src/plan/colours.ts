/** Where one colour ends and the next begins on the hull, by what the job says of bottom and boot-top. */
import {
  type BootTop,
  type BottomEdge,
  type Hull,
  type HullCuts,
  type HullZones,
  hullZones,
  rakeTransom,
} from '#core/boat'
import type { Note } from '#core/note'
import type { Work } from '#job'
import type { Struck } from './marks.ts'
import type { Stage } from './remember.ts'
import { heightAlong } from './struck-heights.ts'
import { type ColouredHull, type MeasuredHull, nameOf } from './surfaces.ts'

export type ColoursInput = {
  readonly hull: MeasuredHull
  readonly rake: Work['boat']['transomRake']
  readonly zones: Work['zones']
  readonly struck: Struck
}

/** The zones of the hull itself, cut by chine, waterline, stripe or tape line. */
export const colours: Stage<ColoursInput, ColouredHull> = {
  name: 'colours',
  run: ({ hull: { hull }, rake, zones: asked, struck }) => {
    if (!hull) return { zones: [], usual: [], notes: [] }
    const { cuts, notes } = colourCuts(hull, asked, struck)
    const raked = ({ zones }: HullZones) => rakeTransom(hull, zones, { rake: rake?.value ?? 0 })
    const cut = hullZones(hull, cuts)
    const zones = raked(cut)
    const usualCuts = { bottomTo: usualBottom(hull) }
    return {
      zones,
      usual: isUsual(hull, cuts) ? zones : raked(hullZones(hull, usualCuts)),
      notes: [...notes, ...cut.notes],
    }
  },
}

const isUsual = (hull: Hull, { bottomTo, bootTop }: HullCuts): boolean => {
  const usual = usualBottom(hull)
  return !bootTop && bottomTo.kind === usual.kind && (bottomTo.kind === 'chine' || bottomTo.z === 0)
}

type Zone = Work['zones'][number]
type Lines = Pick<Struck, 'stripes' | 'lines'>

/** The bottom ends at the chine where there is one, else at the waterline. */
export const usualBottom = (hull: Hull): BottomEdge =>
  hull.edges.includes('chine') ? { kind: 'chine' } : { kind: 'height', z: 0 }

const about = (code: string, zone: Zone): Note => ({
  code,
  severity: 'missing',
  data: { zone: zone.id, name: nameOf(zone) },
})

/** The tape line struck for a zone; the last one when there are several. */
const lineOf = (zone: Zone, { lines }: Lines) => {
  const line = lines.findLast((one) => one.zone === zone.id)
  return line && heightAlong(line.table.rows, (row) => row.heightM)
}

type Edge = { readonly edge: BottomEdge; readonly notes: readonly Note[] }

function bottomEdge(hull: Hull, zone: Zone | undefined, lines: Lines): Edge {
  const line = zone && lineOf(zone, lines)
  if (line) return { edge: { kind: 'height', z: line }, notes: [] }
  const stripe = lines.stripes[0]
  if (zone?.upTo === 'boot stripe' && stripe)
    return { edge: { kind: 'height', z: heightAlong(stripe.table.rows, (row) => row.lowerM) }, notes: [] }
  if (zone?.upTo === 'waterline') return { edge: { kind: 'height', z: 0 }, notes: [] }
  return {
    edge: zone?.upTo === 'chine' ? { kind: 'chine' } : usualBottom(hull),
    notes: zone?.upTo === 'boot stripe' ? [about('surfaces.stripeMissing', zone)] : [],
  }
}

/** The band runs from the bottom up to a tape line of its own, else to the top of the boot stripe. */
function bootTopOf(hull: Hull, zone: Zone, lines: Lines, bottomTo: BottomEdge): BootTop | undefined {
  const stripe = lines.stripes[0]
  const zHigh =
    lineOf(zone, lines) ??
    (zone.upTo === 'waterline' ? 0 : undefined) ??
    (stripe && heightAlong(stripe.table.rows, (row) => row.upperM))
  if (zHigh === undefined) return undefined
  // Over a chine the band begins at the chine, wherever that is: no height below the keel cuts anything.
  const zLow = bottomTo.kind === 'height' ? bottomTo.z : -2 * hull.particulars.draft - 1
  return { zLow, zHigh, acrossTransom: true }
}

export type AskedCuts = { readonly cuts: HullCuts; readonly notes: readonly Note[] }

/** The cuts that zones, stripes and tape lines ask for; what they ask without saying where is told. */
export function colourCuts(hull: Hull, zones: readonly Zone[], lines: Lines): AskedCuts {
  const bottom = bottomEdge(
    hull,
    zones.find((zone) => zone.kind === 'bottom'),
    lines,
  )
  const band = zones.find((zone) => zone.kind === 'boot-top')
  const bootTop = band && bootTopOf(hull, band, lines, bottom.edge)
  return {
    cuts: { bottomTo: bottom.edge, ...(bootTop ? { bootTop } : {}) },
    notes: [...bottom.notes, ...(band && !bootTop ? [about('surfaces.stripeMissing', band)] : [])],
  }
}
