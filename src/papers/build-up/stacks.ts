/** Build-ups to draw: zones that get the same layers stand together, with their litres summed. */
import type { Certainty } from '#core/note'
import { COVERS_FROM, type Plan, type ZoneArea, type ZoneLayer } from '#plan'
import { weakest } from '../weakest.ts'

/** The stages of a plan that build-ups are drawn from. */
export type Stacked = Pick<Plan, 'surfaces' | 'marks' | 'buildUps' | 'quantities'>

type Sheet = Plan['buildUps']['sheets'][number]
type Sure<T> = { readonly value: T; readonly certainty: Certainty }

export type Recoat = {
  readonly least: number
  readonly most?: number
  readonly airC: number
  readonly certainty: Certainty
}

export type StackLayer = {
  /** Its id in the job. */
  readonly layer: string
  readonly name: string
  readonly family: string
  readonly role: string
  readonly coats: number
  readonly dryFilmM?: Sure<number>
  readonly mixedM3: Sure<number>
  readonly recoat?: Recoat
  readonly sandBefore: string
  readonly sandBetween: string
  /** Only in hollows: it fills, it does not cover. */
  readonly spot: boolean
}

export type Stack = {
  readonly zones: readonly ZoneArea[]
  /** From the boat outward. */
  readonly layers: readonly StackLayer[]
  readonly existing: string
  /** It lies on paint that is planned for another zone. */
  readonly onPaint: boolean
}

/** Zones with the same layers in the same order make one build-up. */
export function stacksOf(plan: Stacked): readonly Stack[] {
  const groups = new Map<string, ZoneArea[]>()
  for (const zone of [...plan.surfaces.zones, ...plan.marks.zones]) {
    const layers = layersOn(plan, zone)
    if (layers.length === 0) continue
    const key = JSON.stringify([
      zone.existing,
      zone.how === 'marks',
      layers.map(({ layer, coats, method }) => [layer, coats, method]),
    ])
    groups.set(key, [...(groups.get(key) ?? []), zone])
  }
  return [...groups.values()].map((zones) => stackOf(plan, zones))
}

const layersOn = (plan: Stacked, zone: ZoneArea): readonly ZoneLayer[] =>
  plan.buildUps.layers.filter((layer) => layer.zone === zone.id)

function stackOf(plan: Stacked, zones: readonly ZoneArea[]): Stack {
  const [first] = zones as [ZoneArea]
  return {
    zones,
    layers: layersOn(plan, first).map((layer) => stackLayer(plan, { layer, zone: first, zones })),
    existing: first.existing,
    onPaint: first.how === 'marks',
  }
}

type Of = { readonly layer: ZoneLayer; readonly zone: ZoneArea; readonly zones: readonly ZoneArea[] }

function stackLayer(plan: Stacked, { layer, zone, zones }: Of): StackLayer {
  const sheet = plan.buildUps.sheets.find((one) => one.id === layer.sheet)
  const recoat = sheet && recoatOf(sheet)
  const own = plan.quantities.layers.filter(
    (one) => one.layer === layer.layer && zones.some(({ id }) => id === one.zone),
  )
  return {
    layer: layer.layer,
    name: layer.name,
    family: sheet?.family ?? 'unknown',
    role: layer.role,
    coats: layer.coats,
    ...(layer.dryFilmM ? { dryFilmM: layer.dryFilmM } : {}),
    mixedM3: {
      value: own.reduce((sum, one) => sum + one.mixedM3, 0),
      certainty: weakest(own.map((one) => one.certainty)),
    },
    ...(recoat ? { recoat } : {}),
    sandBefore:
      layer.ladder.length > 1 ? layer.ladder.map(({ grit }) => grit).join(', ') : wanted(layer.sandBefore),
    sandBetween: wanted(layer.sandBetween),
    spot: layer.areaM2 < COVERS_FROM * zone.areaM2,
  }
}

const wanted = (grit: string): string => (grit === 'none' ? '' : grit)

/** Sheets are compared at this temperature; the nearest row of the sheet is shown with its own. */
const usualC = 20

function recoatOf({ clocks }: Sheet): Recoat | undefined {
  const least = nearest(clocks.recoatLeast?.value)
  if (!least || !clocks.recoatLeast) return undefined
  const most = clocks.recoatMost?.value.find((row) => row.airC === least.airC)
  return {
    least: least.hours,
    ...(most ? { most: most.hours } : {}),
    airC: least.airC,
    certainty: weakest([
      clocks.recoatLeast.certainty,
      ...(most && clocks.recoatMost ? [clocks.recoatMost.certainty] : []),
    ]),
  }
}

const nearest = (table: readonly { readonly airC: number; readonly hours: number }[] | undefined) =>
  [...(table ?? [])].sort((a, b) => Math.abs(a.airC - usualC) - Math.abs(b.airC - usualC))[0]
