/** How a pour is laid off, as codes and their data: who, where it begins, section by section, and how it should look. */
import type { StepText } from '../describe-step.ts'
import { fills } from '../sheets/fillers.ts'
import type { Plan, Pour } from '../types.ts'

/** In the order in which a person wants to know it. */
export function describeLaying(
  plan: Pick<Plan, 'steps' | 'buildUps' | 'surfaces' | 'marks'>,
  pour: Pour,
): readonly StepText[] {
  const step = plan.steps.steps.find(({ id }) => id === pour.step)
  const layer = plan.buildUps.layers.find(({ zone, layer: id }) => zone === pour.zone && id === step?.layer)
  const zone = [...plan.surfaces.zones, ...plan.marks.zones].find(({ id }) => id === pour.zone)
  if (!step || !layer || !zone) return []
  const { crew, sections, edgeMinutes, sunny } = pour.laying
  const tipped = layer.method === 'roll and tip'
  const family = plan.buildUps.sheets.find(({ id }) => id === layer.sheet)?.family ?? ''
  return [
    ...(pour.nr === 1 && !fills(layer.role)
      ? [
          {
            code: 'lay.way',
            data: { way: isBroken(pour) ? 'runs' : wayOf(zone.kind), sun: sunOf(zone, sunny) },
          },
        ]
      : []),
    ...(pour.nr === 1 && !fills(layer.role) ? [{ code: 'lay.tools', data: toolsFor(layer, family) }] : []),
    ...(pour.nr === 1 && tipped ? [{ code: 'lay.floor', data: { floor: pour.laying.floor } }] : []),
    ...(tipped
      ? [{ code: 'lay.hands', data: { crew: crew > 1 ? 'two' : 'one', overlapM: pour.laying.overlapM } }]
      : []),
    ...(sections
      ? [
          {
            code: 'lay.sections',
            // As near as a person lays it: a hand's breadth, whole minutes.
            data: {
              count: sections.count,
              widthM: Math.round(sections.widthM * 20) / 20,
              sectionMinutes: Math.max(1, Math.round(sections.minutes)),
              hasEdge: edgeMinutes !== undefined,
              edgeMinutes: Math.floor(edgeMinutes ?? 0),
            },
          },
        ]
      : []),
    { code: 'lay.looks', data: { looks: looksOf(layer.role, step.coat ?? 1, layer.coats) } },
  ]
}

/** Foam and liners that one solvent leaves alone another one eats. */
const toolsFor = ({ method }: { readonly method: string }, family: string) => ({
  solvent: { 'two-part polyurethane': 'strong', epoxy: 'strong', acrylic: 'water' }[family] ?? 'mild',
  tool: { 'roll and tip': 'both', brush: 'brush' }[method] ?? 'roller',
})

/** A side that is broken where a lap hides is not laid in one go. */
const isBroken = ({ runs }: Pour): boolean =>
  runs.some(({ where }, at) => where !== 'piece' && where === runs[at + 1]?.where)

const hull: ReadonlySet<string> = new Set(['topsides', 'bottom', 'boot-top', 'boot stripe'])

/** SOURCE: order round the hull and outward on deck, amateurs' and yards' logs and application guides. */
function wayOf(kind: string): 'side' | 'transom' | 'panel' | 'deck' | 'part' {
  if (hull.has(kind)) return 'side'
  if (kind === 'transom') return 'transom'
  if (kind === 'non-skid') return 'panel'
  return kind === 'loose part' || kind === 'hatch' ? 'part' : 'deck'
}

/** Of a side of the hull: whether it stands in the sun at that hour, or which of two does not. */
function sunOf(
  { kind, side }: { readonly kind: string; readonly side: string },
  sunny: Pour['laying']['sunny'],
): string {
  if (!hull.has(kind)) return 'none'
  if (sunny === 'unknown') return 'unknown'
  if (sunny === 'neither') return 'none'
  if (side === 'both') return sunny === 'port' ? 'starboardFirst' : 'portFirst'
  return side === sunny ? 'lit' : 'shaded'
}

function looksOf(role: string, coat: number, coats: number): string {
  if (role === 'finish') return coat < coats ? 'poorAtFirst' : 'lastGloss'
  if (role === 'primer' || role === 'tie coat') return 'primer'
  if (role === 'non-skid') return 'texture'
  return 'filler'
}
