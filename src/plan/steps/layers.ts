/** The layers of one zone: sand, mask, coat, wait, sand between, coat again. */
import type { Need } from '#core/schedule'
import { minutesOf } from '../minutes.ts'
import type { ResolvedSheet, Sure, ZoneArea, ZoneLayer } from '../types.ts'
import { coatPaces, handling } from './coat-paces.ts'
import { coatId, hostsOf, lastCoat, layersOn, phase, placeOf, type StepContext, sheetOf } from './context.ts'
import { stepId } from './draft.ts'
import { repairsDone, settleId } from './grinding.ts'
import { washId } from './opening.ts'
import { sandRate } from './sand-rate.ts'
import { dryNeeds, waitFor } from './waits.ts'

const fillers = new Set(['filler', 'fairing', 'laminating resin'])
export const isFiller = (layer: ZoneLayer): boolean => fillers.has(layer.role)

const group = (layer: ZoneLayer): 'fill' | 'prime' | 'finish' | 'nonSkid' => {
  if (isFiller(layer)) return 'fill'
  if (layer.role === 'non-skid') return 'nonSkid'
  return layer.role === 'finish' ? 'finish' : 'prime'
}

function phaseOf(zone: ZoneArea, layer: ZoneLayer): number {
  if (zone.kind === 'boot stripe') return phase.stripe
  if (zone.kind === 'non-skid') return phase.nonSkid
  return { fill: phase.grind, prime: phase.prime, finish: phase.finish, nonSkid: phase.nonSkid }[group(layer)]
}

/** Where the layer stands among those of its zone. */
type Spot = {
  readonly zone: ZoneArea
  readonly layer: ZoneLayer
  readonly sheet: ResolvedSheet
  readonly previous: ZoneLayer | undefined
  readonly phase: number
  /** Nothing liquid is on the zone yet: sanding here belongs to the grinding block. */
  readonly bare: boolean
}

export function layerSteps(context: StepContext, zone: ZoneArea, options: { readonly fill: boolean }): void {
  const layers = layersOn(context, zone.id)
  layers.forEach((layer, index) => {
    const sheet = sheetOf(context, layer.sheet)
    if (!sheet || isFiller(layer) !== options.fill) return
    const bare = layers.slice(0, index).every(isFiller)
    layerOf(context, { zone, layer, sheet, previous: layers[index - 1], phase: phaseOf(zone, layer), bare })
  })
}

/** The sanding of bare surfaces belongs to the grinding block, so it is drawn up before the settling night. */
export function bareSanding(context: StepContext, zone: ZoneArea): void {
  const layers = layersOn(context, zone.id)
  const index = layers.findIndex((layer) => !isFiller(layer))
  const layer = layers[index]
  const sheet = layer && sheetOf(context, layer.sheet)
  if (!layer || !sheet || zone.how === 'marks') return
  sandBefore(context, { zone, layer, sheet, previous: layers[index - 1], phase: phase.grind, bare: true })
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

const sandId = (layer: ZoneLayer, coat: number): string => stepId('sand', layer.zone, layer.layer, coat)
const maskId = (layer: ZoneLayer): string => stepId('mask', layer.zone, layer.layer)
const pinholeId = (layer: ZoneLayer): string => stepId('pinholes', layer.zone, layer.layer)

/** The last coat below this layer, dry enough to sand. */
function below(context: StepContext, { previous }: Spot): readonly Need[] {
  return previous
    ? dryNeeds(coatId(previous, previous.coats), sheetOf(context, previous.sheet), 'dryToSand')
    : []
}

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

/** A stripe or a panel is taped on the fresh paint of its neighbours. */
function onHosts(context: StepContext, spot: Spot): readonly Need[] {
  return hostsOf(context, spot.zone).flatMap((host) => {
    const last = lastCoat(context, host.id)
    return last ? dryNeeds(last.id, sheetOf(context, last.layer.sheet), 'dryToTape') : []
  })
}

const wantsSanding = (grit: string): boolean => grit !== '' && grit !== 'none'

function sandBefore(context: StepContext, spot: Spot): void {
  const { layer, zone } = spot
  if (!wantsSanding(layer.sandBefore)) return
  const rate = sandRate(context.rates, layer.sandBefore)
  context.draft.add({
    id: sandId(layer, 1),
    kind: 'sand',
    dust: 'makes',
    phase: spot.phase,
    zone: zone.id,
    layer: layer.layer,
    grit: layer.sandBefore,
    areaM2: zone.areaM2,
    personHours: zone.areaM2 * rate.value,
    certainty: rate.certainty,
    crew: { least: 1, most: context.crew },
    air: placeOf(zone),
    barred: barredFrom(context, sheetsUnder(context, spot)),
    needs: [
      washId(zone.id),
      ...repairsDone(context, zone.id),
      ...below(context, spot),
      ...onHosts(context, spot),
    ],
  })
}

/** Taped once for the primers and again for the finish: tape does not stay on from one stage to the next. */
function mask(context: StepContext, spot: Spot): void {
  const { layer, zone, previous } = spot
  if (isFiller(layer) || zone.perimeterM === 0) return
  if (previous && group(previous) === group(layer)) return
  const guards = context.fittings
    .filter((fitting) => fitting.zone === zone.id)
    .reduce((sum, fitting) => sum + fitting.maskM, 0)
  const lengthM = zone.perimeterM + guards
  const rate = maskRate(context, zone)
  context.draft.add({
    id: maskId(layer),
    kind: zone.how === 'marks' ? 'strike' : 'mask',
    phase: spot.phase,
    zone: zone.id,
    layer: layer.layer,
    lengthM,
    personHours: lengthM * rate.value,
    certainty: rate.certainty,
    crew: { least: 1, most: context.crew },
    air: placeOf(zone),
    needs: [
      sandId(layer, 1),
      settled(zone),
      washId(zone.id),
      ...below(context, spot),
      ...onHosts(context, spot),
    ],
  })
}

/** A line that is not there yet is struck before it is taped. */
function maskRate({ rates }: StepContext, zone: ZoneArea): Sure<number> {
  if (zone.how !== 'marks') return rates.maskHoursPerM
  const struck = zone.kind === 'boot stripe' ? rates.strikeHoursPerM : rates.layOutHoursPerM
  return { value: struck.value + rates.maskHoursPerM.value, certainty: 'assumed' }
}

const settled = (zone: ZoneArea): string | undefined => (zone.indoors ? undefined : settleId)

function coatStep(context: StepContext, spot: Spot, coat: number): void {
  const { layer, zone, sheet } = spot
  const filler = isFiller(layer)
  context.draft.add({
    id: coatId(layer, coat),
    kind: filler ? 'fill' : 'coat',
    ...(filler ? {} : { dust: 'minds' as const, wet: sheet.clocks.touchDry?.value ?? usuallyTouchDry }),
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
    ...handling(context, layer),
    hoursKey: `${placeOf(zone)}|${sheet.id}`,
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
  const need: Need = { step, wait: waitFor(sheet, 'recoatLeast') }
  const table = sheet?.clocks.recoatMost?.value
  if (sanded || !table) return need
  const keyMinutes = Math.max(15, minutesOf(spot.layer.areaM2 * sandRate(context.rates, 'P320').value))
  const keyAfter = dryNeeds(step, sheet, 'dryToSand').map(({ wait }) => wait)
  return { ...need, window: { table, keyMinutes, keyAfter, barred: barredFrom(context, [sheet]) } }
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
  if (group(layer) !== 'prime' || !spot.bare || layer.coats < 2) return
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
