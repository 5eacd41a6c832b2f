/** Where a zone shows in the views of the lines plan: topsides from the side, the transom from astern, decks from above. */
import type { DeckShape, ZoneArea } from '#plan'
import { type BoatLayout, type Outline, pathOf } from './boat-layout.ts'

export type ZoneShape = { readonly zone: string; readonly paths: readonly string[] }

export type ZoneShapesInput = {
  readonly zones: readonly ZoneArea[]
  readonly shapes: readonly DeckShape[]
  readonly outline: Outline
  readonly layout: BoatLayout
}

const decks = ['deck', 'foredeck', 'side deck', 'cockpit sole', 'cabin top', 'non-skid']

/** The larger first, so that the smaller lies on top. Zones that no view shows have no shape. */
export const zoneShapes = (input: ZoneShapesInput): readonly ZoneShape[] =>
  [...input.zones]
    .sort((a, b) => b.areaM2 - a.areaM2)
    .map((zone) => ({ zone: zone.id, paths: pathsOf(zone, input) }))
    .filter(({ paths }) => paths.length > 0)

function pathsOf({ id, kind, side }: ZoneArea, input: ZoneShapesInput): readonly string[] {
  const { outline, layout } = input
  const drawn = input.shapes.find(({ zone }) => zone === id)?.edges ?? []
  if (drawn.length > 0) return drawn.flatMap((edge) => portHalf(edge, layout))
  if (kind === 'topsides')
    return side === 'starboard' ? [bodySide(outline, layout, 'aft')] : [profile(outline, layout)]
  if (kind === 'transom') return [transom(outline, layout)]
  if (kind === 'foredeck') return [plan(outline, layout, [0.62, 1])]
  if (kind === 'cockpit sole') return [plan(outline, layout, [0.08, 0.5], 0.6)]
  return decks.includes(kind) ? [plan(outline, layout, [0, 1])] : []
}

/** The view from above shows the port side: what of a measured shape lies there. */
function portHalf(edge: DeckShape['edges'][number], { above }: BoatLayout): readonly string[] {
  if (edge.every(([, y]) => y <= 0)) return []
  return [
    pathOf(
      edge.map(([x, y]) => above(x, Math.max(0, y))),
      true,
    ),
  ]
}

/** Above the water, between keel and sheer. */
function profile({ sheerPlan }: Outline, { side }: BoatLayout): string {
  const keel = sheerPlan.keel.filter(([, z]) => z > 0)
  const sheer = sheerPlan.sheer.map(([x, z]) => side(x, z))
  const first = sheerPlan.sheer[0]
  const last = keel[0] ?? sheerPlan.sheer.at(-1)
  if (!first || !last) return ''
  return pathOf(
    [...sheer, ...[...keel].reverse().map(([x, z]) => side(x, z)), side(last[0], 0), side(first[0], 0)],
    true,
  )
}

function bodySide({ bodyPlan }: Outline, { ahead }: BoatLayout, _end: 'aft'): string {
  const widest = [...bodyPlan].sort((a, b) => breadth(b.line) - breadth(a.line))[0]
  const dry = widest?.line.filter(([, z]) => z >= 0) ?? []
  const [first] = dry
  const last = dry.at(-1)
  return first && last
    ? pathOf([...dry.map(([y, z]) => ahead(y, z)), ahead(0, last[1]), ahead(0, first[1])], true)
    : ''
}

const breadth = (line: readonly (readonly [number, number])[]): number => Math.max(0, ...line.map(([y]) => y))

/** Both halves of the aftmost section above the water. */
function transom({ bodyPlan }: Outline, { ahead }: BoatLayout): string {
  const aft = [...bodyPlan].sort((a, b) => a.x - b.x)[0]
  const dry = aft?.line.filter(([, z]) => z >= 0) ?? []
  const last = dry.at(-1)
  return last
    ? pathOf([...dry.map(([y, z]) => ahead(-y, z)), ahead(0, last[1]), ahead(0, dry[0]![1])], true)
    : ''
}

/** Inside the sheer from above, over a share of the length, perhaps not out to the edge. */
function plan(
  { halfBreadthPlan: { sheer } }: Outline,
  { above, length }: BoatLayout,
  [from, to]: readonly [number, number],
  out = 1,
): string {
  const within = sheer.filter(([x]) => x >= from * length && x <= to * length)
  const [first] = within
  const last = within.at(-1)
  return first && last
    ? pathOf([above(first[0], 0), ...within.map(([x, y]) => above(x, y * out)), above(last[0], 0)], true)
    : ''
}
