/** The layers of one zone: sand, mask, coat, wait, sand between, coat again. */
import type { Certainty } from '#core/note'
import type { Need } from '#core/schedule'
import { weakest } from '../certainty.ts'
import { minutesOf } from '../minutes.ts'
import { recoatFor } from '../sheets/recoat.ts'
import type { LadderRung, ResolvedSheet, ZoneArea, ZoneLayer } from '../types.ts'
import { coatPaces, handling } from './coat-paces.ts'
import {
  coatId,
  hostsOf,
  hoursKeyOf,
  lastCoat,
  layersOn,
  phase,
  placeOf,
  type StepContext,
  sheetOf,
} from './context.ts'
import { stepId } from './draft.ts'
import { treadOf } from './floors.ts'
import { repairsDone, settleId } from './grinding.ts'
import { mask, maskId, tapeOff } from './masking.ts'
import { washId } from './opening.ts'
import { sandRate } from './sand-rate.ts'
import { below, group, isFiller, onHosts, type Spot, sandId } from './spot.ts'
import { dryNeeds } from './waits.ts'

function phaseOf(zone: ZoneArea, layer: ZoneLayer): number {
  if (zone.kind === 'boot stripe') return phase.stripe
  if (zone.kind === 'non-skid') return phase.nonSkid
  return { fill: phase.grind, prime: phase.prime, finish: phase.finish, nonSkid: phase.nonSkid }[group(layer)]
}

export function layerSteps(context: StepContext, zone: ZoneArea, options: { readonly fill: boolean }): void {
  const layers = layersOn(context, zone.id)
  layers.forEach((layer, index) => {
    const sheet = sheetOf(context, layer.sheet)
    if (!sheet || isFiller(layer) !== options.fill) return
    const bare = layers.slice(0, index).every(isFiller)
    const [previous, next] = [layers[index - 1], layers[index + 1]]
    layerOf(context, { zone, layer, sheet, previous, next, phase: phaseOf(zone, layer), bare })
  })
}

/** The sanding of bare surfaces belongs to the grinding block, so it is drawn up before the settling night. */
export function bareSanding(context: StepContext, zone: ZoneArea): void {
  const layers = layersOn(context, zone.id)
  const index = layers.findIndex((layer) => !isFiller(layer))
  const layer = layers[index]
  const sheet = layer && sheetOf(context, layer.sheet)
  if (!layer || !sheet || zone.how === 'marks') return
  const [previous, next] = [layers[index - 1], layers[index + 1]]
  sandBefore(context, { zone, layer, sheet, previous, next, phase: phase.grind, bare: true })
}

function layerOf(context: StepContext, spot: Spot): void {
  if (!(spot.bare && !isFiller(spot.layer) && spot.zone.how !== 'marks')) sandBefore(context, spot)
  mask(context, spot)
  for (let coat = 1; coat <= spot.layer.coats; coat++) {
    if (coat > 1) between(context, spot, coat)
    coatStep(context, spot, coat)
    if (coat === 1) pinholes(context, spot)
  }
}

const pinholeId = (layer: ZoneLayer): string => stepId('pinholes', layer.zone, layer.layer)

/** Whom the sanding of these must not be given to. */
const barredFrom = (
  context: StepContext,
  sheets: readonly (ResolvedSheet | undefined)[],
): readonly string[] => (sheets.some((sheet) => sheet?.isocyanate) ? context.sensitised : [])

/** What lies on a zone where a layer is sanded for: the layer below, the paint of its neighbours, its repairs. */
function sheetsUnder(context: StepContext, { zone, previous }: Spot): readonly (ResolvedSheet | undefined)[] {
  const hosts = hostsOf(context, zone).map((host) => lastCoat(context, host.id)?.layer.sheet)
  const filled = context.repairs.repairs.map((repair) => (repair.zone === zone.id ? repair.sheet : undefined))
  return [previous?.sheet, ...hosts, ...filled].map((id) =>
    id === undefined ? undefined : sheetOf(context, id),
  )
}

const wantsSanding = (grit: string): boolean => grit !== '' && grit !== 'none'

function sandBefore(context: StepContext, spot: Spot): void {
  const { layer, zone } = spot
  if (!wantsSanding(layer.sandBefore)) return
  const { hours, certainty } = ladderHours(layer.ladder)
  context.draft.add({
    id: sandId(layer, 1),
    kind: 'sand',
    dust: 'makes',
    phase: spot.phase,
    zone: zone.id,
    layer: layer.layer,
    grit: layer.sandBefore,
    ...(layer.ladder.length > 1 ? { rungs: layer.ladder } : {}),
    areaM2: isFiller(layer) ? layer.areaM2 : zone.areaM2,
    personHours: hours,
    certainty,
    crew: { least: 1, most: context.crew },
    air: placeOf(zone),
    barred: barredFrom(context, sheetsUnder(context, spot)),
    needs: [
      washId(zone.id),
      ...repairsDone(context, zone.id),
      ...below(context, spot),
      spot.previous && pinholeId(spot.previous),
      ...onHosts(context, spot),
    ],
  })
}

const ladderHours = (
  ladder: readonly LadderRung[],
): { readonly hours: number; readonly certainty: Certainty } => ({
  hours: ladder.reduce((sum, { hoursPerM2, areaM2 }) => sum + hoursPerM2.value * areaM2, 0),
  certainty: weakest(...ladder.map(({ hoursPerM2 }) => hoursPerM2.certainty)),
})

function coatStep(context: StepContext, spot: Spot, coat: number): void {
  const { layer, zone, sheet } = spot
  const filler = isFiller(layer)
  const { setUpMinutes, cleanUpMinutes } = handling(context, layer)
  const tape = tapeOff(context, spot, coat)
  context.draft.add({
    id: coatId(layer, coat),
    kind: filler ? 'fill' : 'coat',
    ...(filler ? {} : { dust: 'minds' as const, wet: sheet.clocks.touchDry?.value ?? usuallyTouchDry }),
    ...treadOf(zone, sheet, context.zones),
    phase: spot.phase,
    zone: zone.id,
    layer: layer.layer,
    sheet: sheet.id,
    coat,
    coats: layer.coats,
    areaM2: layer.areaM2,
    method: layer.method,
    ...coatPaces(context, layer),
    inOneGo: true,
    setUpMinutes,
    cleanUpMinutes: cleanUpMinutes + minutesOf((tape.tapeOffM ?? 0) * context.rates.tapeOffHoursPerM.value),
    ...tape,
    hoursKey: hoursKeyOf(context, zone, sheet.id),
    air: placeOf(zone),
    barred: barredFrom(context, [sheet]),
    needs: coat === 1 ? firstCoatNeeds(context, spot) : nextCoatNeeds(context, spot, coat),
  })
}

/** Dust does no harm once a film is dry to touch; two hours at 20 °C when nobody says, assumed. */
const usuallyTouchDry = [{ airC: 20, hours: 2 }]

function firstCoatNeeds(context: StepContext, spot: Spot): readonly (Need | string | undefined)[] {
  const { layer, zone, previous } = spot
  const night = context.rates.settleHours.value
  return [
    washId(zone.id),
    ...repairsDone(context, zone.id),
    sandId(layer, 1),
    maskId(layer),
    isFiller(layer) || zone.indoors
      ? undefined
      : { step: settleId, wait: { kind: 'fixed', minutes: minutesOf(night) } },
    previous &&
      onto(
        context,
        spot,
        coatId(previous, previous.coats),
        sheetOf(context, previous.sheet),
        wantsSanding(layer.sandBefore),
      ),
    previous && { step: pinholeId(previous), wait: { kind: 'fixed', minutes: 60 } },
    ...onHosts(context, spot),
  ]
}

function nextCoatNeeds(context: StepContext, spot: Spot, coat: number): readonly (Need | string)[] {
  const sanded = wantsSanding(spot.layer.sandBetween)
  return [
    onto(context, spot, coatId(spot.layer, coat - 1), spot.sheet, sanded),
    sandId(spot.layer, coat),
    { step: pinholeId(spot.layer), wait: { kind: 'fixed', minutes: 60 } },
  ]
}

/** Coat on coat: never before the least wait; unsanded never after the window shuts. */
function onto(
  context: StepContext,
  spot: Spot,
  step: string,
  sheet: ResolvedSheet | undefined,
  sanded: boolean,
): Need {
  if (!sheet) return { step, wait: { kind: 'none' } }
  const { least, holes, unsanded } = recoatFor(sheet, spot.sheet)
  const need: Need = {
    step,
    wait: least ? { kind: 'clock', clock: 'recoatLeast', table: least } : { kind: 'none' },
    ...(holes.length > 0 ? { holes } : {}),
  }
  if (sanded || !unsanded) return need
  const keyMinutes = Math.max(15, minutesOf(spot.layer.areaM2 * sandRate(context.rates, 'P320').value))
  const keyAfter = dryNeeds(step, sheet, 'dryToSand').map(({ wait }) => wait)
  return { ...need, window: { table: unsanded, keyMinutes, keyAfter, barred: barredFrom(context, [sheet]) } }
}

function between(context: StepContext, spot: Spot, coat: number): void {
  const { layer, zone, sheet } = spot
  if (!wantsSanding(layer.sandBetween)) return
  const rate = sandRate(context.rates, layer.sandBetween)
  context.draft.add({
    id: sandId(layer, coat),
    kind: 'sand-between',
    dust: 'makes',
    phase: spot.phase,
    zone: zone.id,
    layer: layer.layer,
    coat,
    coats: layer.coats,
    grit: layer.sandBetween,
    areaM2: layer.areaM2,
    personHours: layer.areaM2 * rate.value,
    certainty: rate.certainty,
    crew: { least: 1, most: context.crew },
    air: placeOf(zone),
    barred: barredFrom(context, [sheet]),
    needs: [...dryNeeds(coatId(layer, coat - 1), sheet, 'dryToSand'), pinholeId(layer)],
  })
}

/** The first coat of primer shows the pinholes: a second round of filling is always planned. */
function pinholes(context: StepContext, spot: Spot): void {
  const { layer, zone, sheet } = spot
  if (group(layer) !== 'prime' || !spot.bare || (layer.coats < 2 && !spot.next)) return
  context.draft.add({
    id: pinholeId(layer),
    kind: 'pinholes',
    dust: 'makes',
    phase: spot.phase,
    zone: zone.id,
    layer: layer.layer,
    areaM2: layer.areaM2,
    personHours: layer.areaM2 * context.rates.pinholeHoursPerM2.value,
    certainty: context.rates.pinholeHoursPerM2.certainty,
    crew: { least: 1, most: context.crew },
    air: placeOf(zone),
    barred: barredFrom(context, [sheet]),
    needs: dryNeeds(coatId(layer, 1), sheet, 'dryToSand'),
  })
}
