/** What the weather of a plan is and where it is from, with the sun and the skins it makes: asked for, and no part of the plan. */
import { airUnder, type Gap, type HourlySeries, hourMs, type LightFrom, type Shelter } from '#core/climate'
import { type BehindSpread, behindSpread } from './horizon/behind-spread.ts'
import { datedWeather } from './horizon/dated-weather.ts'
import { firstDate, type PlanInput } from './plan.ts'
import { withReadings } from './read-hours.ts'
import { createMemory, type Runner } from './remember.ts'
import { openSkin, openSky, skinQuestion } from './skins/open-skin.ts'
import { camberOverBeam, placeFaces } from './skins/place-faces.ts'
import { type RoofedPartHours, roofedParts } from './skins/roofed-skin.ts'
import { shedOver } from './skins/shed-hours.ts'
import { knownAirOf } from './skins/shelter-air.ts'
import { hull } from './surfaces.ts'
import { toldReadings, weatherAsTold } from './told-weather.ts'
import type { OpenPlace } from './types.ts'

/** Parts of the boat that each look their own way. */
export type LitPlace = Exclude<OpenPlace, 'sides'>
export const litPlaces = ['deck', 'port', 'starboard', 'transom', 'bottom'] as const

export type WeatherAtHand = {
  /** As the file says it, each in one line; empty where it does not. */
  readonly source: string
  readonly licence: string
  /** Every hour is of a typical year. */
  readonly typicalYear: boolean
  readonly firstMinute: number
  readonly hours: number
  /** Hours of which the file has no row. */
  readonly gaps: readonly { readonly fromMinute: number; readonly hours: number }[]
  /** Sun and sky on a level surface in the open, mean over each hour, W/m²; empty where nobody knows where she stands. */
  readonly sunWm2: readonly number[]
  /** What most hours of daylight were worked from. */
  readonly sunFrom: LightFrom | 'none'
  /** Skin at the start of each hour, °C, of each place of the boat; under a cloth or a roof all upright sides are alike. */
  readonly skins: Partial<Readonly<Record<LitPlace, readonly number[]>>>
  /** Sun and sky that fall on each of these places, mean over each hour, W/m²; under a roof empty where nobody knows where she stands. */
  readonly lightsWm2: Partial<Readonly<Record<LitPlace, readonly number[]>>>
  /** Absent where no hour is of a typical year. */
  readonly behind?: BehindSpread
}

/** Undefined without weather. The hours are those of the plan: a typical year laid on its dates, told rain in it. */
export function weatherAtHand(input: PlanInput): WeatherAtHand | undefined {
  const { run } = createMemory().begin()
  const { log, work } = input
  const { series, year, horizon, alone } = datedWeather(run, {
    weather: input.weather,
    typical: input.typical,
    place: work.place,
    fromDate: firstDate(input),
  })
  const weather = weatherAsTold(run, { weather: series, log })
  if (!weather) return undefined
  const sky = run(openSky, { weather, place: work.place })
  return {
    source: weather.source,
    licence: weather.licence,
    typicalYear: alone === true,
    firstMinute: weather.startMs / 60_000,
    hours: weather.hours,
    gaps: weather.gaps.map((gap) => gapOf(weather, gap)),
    sunWm2: Array.from(sky.light?.globalWm2 ?? []),
    sunFrom: sky.light ? mostOf(sky.light.from) : 'none',
    ...(work.place.shelter === 'open'
      ? litBy(run, input, { weather, sky })
      : roofedBy(run, input, { weather, sky, shelter: work.place.shelter })),
    ...(year && horizon
      ? {
          behind: behindSpread({
            series: weather,
            year,
            horizon,
            place: work.place,
            air: knownAirOf(run, input).fitted,
            shedOver: (over) => shedOver(run, { name: 'year round', weather: over, work }),
          }),
        }
      : {}),
  }
}

const gapOf = ({ startMs }: HourlySeries, { fromHour, hours }: Gap) => ({
  fromMinute: (startMs + fromHour * hourMs) / 60_000,
  hours,
})

const mostOf = (from: Readonly<Record<LightFrom, number>>): LightFrom =>
  (Object.keys(from) as LightFrom[]).reduce((most, one) => (from[one] > from[most] ? one : most))

type Lit = { readonly weather: HourlySeries; readonly sky: ReturnType<typeof openSky.run> }

type Roofed = Lit & { readonly shelter: Exclude<Shelter, 'open'> }

/** Under a cloth or a roof every upright side is alike. */
function roofedBy(
  run: Runner,
  input: PlanInput,
  { weather, sky, shelter }: Roofed,
): Pick<WeatherAtHand, 'skins' | 'lightsWm2'> {
  const { laminate } = input.work.boat
  const inside = airUnder({
    series: weather,
    shelter,
    air: knownAirOf(run, input).fitted,
    shed: shedOver(run, { name: 'at hand', weather, work: input.work }),
    sunWm2: sky.light?.globalWm2,
  })
  const { deck, side, bottom } = roofedParts({ weather, inside, sky, shelter, laminate })
  const at = { deck, port: side, starboard: side, transom: side, bottom }
  const readings = run(toldReadings, { log: input.log })
  const asRead = (surfaceC: Float64Array) =>
    withReadings({ inside, surfaceC, sun: {} }, { name: 'boat', boatShelter: shelter, readings }).surfaceC
  const each = (of: (part: RoofedPartHours) => Float64Array) =>
    Object.fromEntries(litPlaces.map((place) => [place, Array.from(of(at[place]))]))
  return {
    skins: each(({ skinC }) => asRead(skinC)),
    lightsWm2: sky.light ? each(({ lightWm2 }) => lightWm2) : {},
  }
}

function litBy(
  run: Runner,
  { work, log }: PlanInput,
  { weather, sky }: Lit,
): Pick<WeatherAtHand, 'skins' | 'lightsWm2'> {
  const { boat, stations, points, zones, place } = work
  const faces = run(placeFaces, {
    hull: run(hull, { boat, stations, points }),
    rake: boat.transomRake,
    camber: camberOverBeam(zones, boat),
  })
  const { bowBearing } = place
  // What is drawn is the bare laminate, not what stands behind a part of it.
  const input = { weather, sky, faces, bowBearing, laminate: boat.laminate, behind: {} }
  const each = (of: (at: LitPlace) => Iterable<number>) =>
    Object.fromEntries(litPlaces.map((at) => [at, Array.from(of(at))]))
  const readings = run(toldReadings, { log })
  const skinOf = (name: LitPlace): Float64Array => {
    const air = { inside: weather, surfaceC: run(openSkin(name), input), sun: {} }
    return withReadings(air, { name, boatShelter: 'open', readings }).surfaceC
  }
  return {
    skins: each(skinOf),
    lightsWm2: each((at) => skinQuestion(at, input).lightWm2),
  }
}
