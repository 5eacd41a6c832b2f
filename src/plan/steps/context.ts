/** What every group of steps draws on. */
import type { Work } from '#job'
import type { Rates } from '../known.ts'
import { skinPlaceOf } from '../skins/skin-places.ts'
import type { FittingPlan, Marks, Repairs, ResolvedSheet, ZoneArea, ZoneLayer } from '../types.ts'
import type { Draft } from './draft.ts'
import { isFloor } from './floors.ts'

export type StepContext = {
  readonly draft: Draft
  readonly rates: Rates
  readonly zones: readonly ZoneArea[]
  readonly shelter: Work['place']['shelter']
  readonly marks: Marks
  readonly repairs: Repairs
  readonly sheets: ReadonlyMap<string, ResolvedSheet>
  readonly layers: ReadonlyMap<string, readonly ZoneLayer[]>
  readonly fittings: readonly FittingPlan[]
  /** Most hands there ever are at once. */
  readonly crew: number
  /** Those who do not survey, snag or hand over. */
  readonly helpers: readonly string[]
  /** People sensitised to isocyanates. */
  readonly sensitised: readonly string[]
  readonly fuel: string
}

/** The order in which steps get their pick of the hours. */
export const phase = {
  opening: 0,
  grind: 1,
  settle: 2,
  prime: 3,
  finish: 4,
  nonSkid: 5,
  stripe: 6,
  refit: 7,
  closing: 8,
} as const

export const sheetOf = (context: StepContext, id: string): ResolvedSheet | undefined => context.sheets.get(id)

/** From the boat outward. */
export const layersOn = (context: StepContext, zone: string): readonly ZoneLayer[] =>
  context.layers.get(zone) ?? []

export const coatId = (layer: ZoneLayer, coat: number): string => `coat:${layer.zone}:${layer.layer}:${coat}`

/** The last coat of the outermost layer on a zone. */
export function lastCoat(
  context: StepContext,
  zone: string,
): { readonly id: string; readonly layer: ZoneLayer } | undefined {
  const layer = layersOn(context, zone).at(-1)
  return layer && { id: coatId(layer, layer.coats), layer }
}

const deckKinds = new Set([
  'side deck',
  'foredeck',
  'cabin top',
  'cockpit sole',
  'gunwale',
  'hardtop',
  'swim platform',
  'hatch',
  'loose part',
])
const hullKinds = new Set(['topsides', 'transom'])

/** The zones whose fresh paint a stripe or panel is taped on. */
export function hostsOf({ zones }: Pick<StepContext, 'zones'>, zone: ZoneArea): readonly ZoneArea[] {
  const kinds = zone.kind === 'boot stripe' ? hullKinds : zone.kind === 'non-skid' ? deckKinds : undefined
  return kinds ? zones.filter((other) => kinds.has(other.kind) && !other.indoors) : []
}

/** Loose parts first, then deck with its floors last, then hull, so that drips and feet do no harm. */
export function zoneRank(zone: ZoneArea): number {
  if (zone.indoors) return 0
  if (hullKinds.has(zone.kind)) return 3
  if (zone.kind === 'bottom' || zone.kind === 'boot-top') return 4
  return isFloor(zone) ? 2 : 1
}

export const placeOf = (zone: ZoneArea | undefined): 'boat' | 'indoors' =>
  zone?.indoors ? 'indoors' : 'boat'

/** Whose hours a product on a zone keeps to: `conditions` judges them under this key. */
export const hoursKeyOf = (
  { shelter }: StepContext,
  zone: ZoneArea | undefined,
  sheet: string | undefined,
): string => `${skinPlaceOf(zone, shelter)}|${sheet}`
