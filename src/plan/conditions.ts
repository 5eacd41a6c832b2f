/** Which hours each kind of place can take which product, from the weather at hand. */
import {
  airUnder,
  commonLimits,
  dewPoint,
  type HourlySeries,
  hourMs,
  type PaintLimits,
  paintableHours,
  type Shelter,
  shelterNotes,
  shelters,
  surfaceTemperature,
} from '#core/climate'
import { hoursAt } from '#core/cure'
import type { Note } from '#core/note'
import type { Work } from '#job'
import { PLANNING_AIR_C } from './air-at.ts'
import type { Stage } from './remember.ts'
import type { AirHours, BuildUps, Conditions, Marks, ResolvedSheet, Surfaces, ZoneHours } from './types.ts'

export type ConditionsInput = {
  readonly weather: HourlySeries | undefined
  readonly place: Work['place']
  readonly buildUps: BuildUps
  readonly surfaces: Surfaces
  readonly marks: Marks
}

export const conditions: Stage<ConditionsInput, Conditions> = { name: 'conditions', run: judgeHours }

type Place = 'boat' | 'indoors'
type PlaceAir = {
  readonly place: Place
  readonly shelter: Shelter
  readonly inside: HourlySeries
  readonly surfaceC: Float64Array
}

function judgeHours(input: ConditionsInput): Conditions {
  const { weather, place } = input
  if (!weather) {
    const missing: Note = {
      code: 'conditions.noWeather',
      severity: 'missing',
      data: { airC: PLANNING_AIR_C },
    }
    return { zones: [], air: [], firstMinute: 0, lastMinute: 0, notes: [missing] }
  }
  const airs = placesOf(input).map((name) => airOf(weather, place, name))
  const pairs = sheetsByPlace(input)
  const zones = pairs.flatMap(({ sheet, at }) => {
    const air = airs.find((one) => one.place === at)
    return air ? [hoursFor(sheet, air)] : []
  })
  const firstMinute = weather.startMs / 60_000
  return {
    zones,
    air: airs.map(airHours),
    firstMinute,
    lastMinute: firstMinute + weather.hours * 60,
    notes: [...(shelterNotes(place.shelter) as readonly Note[]), ...gapNotes(weather), ...placeNotes(place)],
  }
}

/** Loose parts are done under a roof whatever stands over the boat. */
function airOf(weather: HourlySeries, place: Work['place'], name: Place): PlaceAir {
  const shelter: Shelter = name === 'boat' || place.shelter === 'heated shed' ? place.shelter : 'shed'
  const at = { latitude: place.latitude?.value ?? 0, longitude: place.longitude?.value ?? 0 }
  return {
    place: name,
    shelter,
    inside: airUnder({ series: weather, shelter }),
    surfaceC: surfaceTemperature({ series: weather, shelter, place: at }),
  }
}

const allZones = (input: ConditionsInput) => [...input.surfaces.zones, ...input.marks.zones]

function placesOf(input: ConditionsInput): readonly Place[] {
  return allZones(input).some((zone) => zone.indoors) ? ['boat', 'indoors'] : ['boat']
}

function sheetsByPlace(
  input: ConditionsInput,
): readonly { readonly sheet: ResolvedSheet; readonly at: Place }[] {
  const indoors = new Set(allZones(input).flatMap((zone) => (zone.indoors ? [zone.id] : [])))
  return input.buildUps.sheets.flatMap((sheet) => {
    const zones = input.buildUps.layers.filter((layer) => layer.sheet === sheet.id).map((layer) => layer.zone)
    const places = new Set<Place>(zones.map((zone) => (indoors.has(zone) ? 'indoors' : 'boat')))
    return [...places].sort().map((at) => ({ sheet, at }))
  })
}

function hoursFor(sheet: ResolvedSheet, air: PlaceAir): ZoneHours {
  const limits = limitsOf(sheet, air)
  const judged = paintableHours({ series: air.inside, surfaceC: air.surfaceC, limits })
  return {
    key: `${air.place}|${sheet.id}`,
    sheet: sheet.id,
    place: air.place,
    firstMinute: air.inside.startMs / 60_000,
    hoursAfter: limits.hoursAfter,
    verdicts: judged.map((hour) => hour.verdict),
    failing: judged.map((hour) => hour.failing),
  }
}

function limitsOf(sheet: ResolvedSheet, air: PlaceAir): PaintLimits {
  return {
    ...commonLimits,
    airLeastC: sheet.airLeastC.value,
    airMostC: sheet.airMostC.value,
    humidityMost: sheet.humidityMost.value,
    dewMarginK: sheet.dewMarginK.value,
    hoursAfter: hoursAfter(sheet, air.inside),
    openToSky: shelters[air.shelter].openToSky,
  }
}

/** Dew must stay off this long: the sheet's clock at the mean of the hours warm enough to paint in. */
function hoursAfter(sheet: ResolvedSheet, inside: HourlySeries): number {
  const table = sheet.clocks.dryToDew?.value
  if (!table) return 0
  const warm = Array.from(inside.airC).filter((airC) => airC >= sheet.airLeastC.value)
  const meanC =
    warm.length > 0 ? warm.reduce((sum, airC) => sum + airC, 0) / warm.length : sheet.airLeastC.value
  const hours = hoursAt(table, Math.max(meanC, table[0]!.airC), 'least').hours
  return Number.isFinite(hours) ? Math.min(48, Math.ceil(hours - 1e-9)) : 48
}

function airHours(air: PlaceAir): AirHours {
  const { inside } = air
  return {
    key: air.place,
    shelter: air.shelter,
    firstMinute: inside.startMs / 60_000,
    airC: Array.from(inside.airC),
    humidityShare: Array.from(inside.humidityShare),
    surfaceC: Array.from(air.surfaceC),
    dewC: Array.from(inside.airC, (airC, hour) => dewOf(airC, inside.humidityShare[hour] ?? Number.NaN)),
  }
}

const dewOf = (airC: number, humidityShare: number): number =>
  Number.isNaN(airC + humidityShare) ? Number.NaN : dewPoint({ airC, humidityShare })

function gapNotes(weather: HourlySeries): readonly Note[] {
  return weather.gaps.map((gap) => ({
    code: 'conditions.weatherGap',
    severity: 'missing',
    data: { fromAtMs: weather.startMs + gap.fromHour * hourMs, hours: gap.hours },
  }))
}

function placeNotes(place: Work['place']): readonly Note[] {
  if (place.latitude && place.longitude) return []
  return [{ code: 'conditions.placeUnknown', severity: 'missing', data: {} }]
}
