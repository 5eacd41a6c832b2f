/** Which parts of a boat are worked from which floors, and how long a floor is kept off after a coat. COMMON PRACTICE. */
import type { Step } from '#core/schedule'
import type { ResolvedSheet, ZoneArea } from '../types.ts'

/** Kinds of zone one stands on to work on another kind. */
const worksFrom: Readonly<Record<string, readonly string[]>> = {
  'cockpit side': ['cockpit sole'],
  coaming: ['cockpit sole'],
  console: ['cockpit sole'],
  gunwale: ['cockpit sole'],
  hardtop: ['cockpit sole'],
  'outboard well': ['cockpit sole'],
  'cabin side': ['side deck'],
  'cabin top': ['side deck'],
  hatch: ['side deck'],
}

const floorKinds = new Set(Object.values(worksFrom).flat())

const ofKinds = (zones: readonly ZoneArea[], kinds: readonly string[]): readonly string[] =>
  zones.filter(({ kind, indoors }) => !indoors && kinds.includes(kind)).map(({ id }) => id)

/** Floors under the feet of whoever works on a zone; a loose part lies on a bench. */
export function floorsOf(zones: readonly ZoneArea[]): (zone: string) => readonly string[] {
  const under = new Map(
    zones.map((zone) => [zone.id, zone.indoors ? [] : ofKinds(zones, worksFrom[zone.kind] ?? [])]),
  )
  return (zone) => under.get(zone) ?? []
}

export const isFloor = ({ kind, indoors }: ZoneArea): boolean => !indoors && floorKinds.has(kind)

/** When nobody says how long: until the next day at 20 °C, assumed. */
const usuallyTrodden = [{ airC: 20, hours: 24 }]

/** What a coat on this zone makes wet to stand on; non-skid lies on every floor of the deck. */
export function treadOf(
  zone: ZoneArea,
  sheet: ResolvedSheet,
  zones: readonly ZoneArea[],
): Pick<Step, 'tread'> {
  const floors =
    zone.kind === 'non-skid' ? zones.filter(isFloor).map(({ id }) => id) : isFloor(zone) ? [zone.id] : []
  if (floors.length === 0) return {}
  return { tread: { floors, table: sheet.clocks.dryToTread?.value ?? usuallyTrodden } }
}
