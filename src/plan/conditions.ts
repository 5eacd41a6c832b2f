/** Which hours each kind of place can take which product, from the weather at hand. */
import {
  airAhead,
  airUnder,
  commonLimits,
  dewPoint,
  type HourlyColumn,
  type HourlySeries,
  hourMs,
  hoursForSheet,
  type LightLimits,
  type PlaceAhead,
  placeAhead,
  type Readings,
  type Shed,
  type SheetLimits,
  type Shelter,
  type ShelterAir,
  shelters,
  skinAllowanceK,
  skinLimits,
  withSkinShifts,
} from '#core/climate'
import { hoursToRun } from '#core/cure'
import type { Note } from '#core/note'
import type { Work } from '#job'
import { PLANNING_AIR_C } from './air-at.ts'
import { eveningStops, hoursLight, lampsOver, lightLimitsUnder, lightNotes } from './hours-light.ts'
import { readingNotes, withReadings } from './read-hours.ts'
import type { Runner, Stage } from './remember.ts'
import { type BehindOf, behindSkins } from './skins/behind-skins.ts'
import { type OpenSky, openSkin, openSkinNotes, openSky, workedAbsorptance } from './skins/open-skin.ts'
import { darkSkin, type OpenSun, openSun } from './skins/open-sun.ts'
import { camberOverBeam, placeFaces } from './skins/place-faces.ts'
import { roofedSkin } from './skins/roofed-skin.ts'
import { shedOver } from './skins/shed-hours.ts'
import { type ShedNotes, shedNotes } from './skins/shed-notes.ts'
import { sheetAbsorptance } from './skins/sheet-absorptance.ts'
import type { KnownAir } from './skins/shelter-air.ts'
import { skinPlaceOf } from './skins/skin-places.ts'
import type { MeasuredHull } from './surfaces.ts'
import type { ToldReading } from './told-weather.ts'
import type {
  AirHours,
  BuildUps,
  Conditions,
  Marks,
  Repairs,
  ResolvedSheet,
  SkinPlace,
  SkyHours,
  Surfaces,
  ZoneHours,
} from './types.ts'

export type ConditionsInput = {
  readonly weather: HourlySeries | undefined
  /** The weather is a typical year over these dates. */
  readonly typicalYear: boolean
  readonly place: Work['place']
  readonly knownAir: KnownAir
  readonly shed: Work['shed']
  readonly boat: Work['boat']
  readonly hull: MeasuredHull
  readonly zones: Work['zones']
  readonly buildUps: BuildUps
  readonly surfaces: Surfaces
  readonly marks: Marks
  readonly repairs: Repairs
  /** Air, humidity and skin that somebody read at the boat. */
  readonly readings: readonly ToldReading[]
}

/**
 * Three steps, each remembered by itself: the air at each place, what is asked of it, and the verdicts. So a change
 * of one product's limits judges the hours of that product again and no others.
 */
export function judgeConditions(run: Runner, input: ConditionsInput): Conditions {
  const { weather, typicalYear, place, knownAir } = input
  if (!weather) return run(withoutWeather, {})
  const { questions } = run(askedOf, {
    buildUps: input.buildUps,
    surfaces: input.surfaces,
    marks: input.marks,
    repairs: input.repairs,
    shelter: place.shelter,
  })
  const asked = new Set<SkinPlace>(['boat', ...questions.map((question) => question.place)])
  const sky = run(openSky, { weather, place })
  const { shelter, heater } = place
  const shed = shedOver(run, { name: 'planned', weather, work: input })
  const insideOf = (name: SkinPlace) =>
    run(insideStage(name), {
      weather,
      shelter: shelterAt(name, shelter),
      sky,
      air: ofBoat(name, shelter, knownAir.fitted),
      // Only where she stands in one is there any, and then loose parts are in it too.
      shed,
    })
  const behind = behindSkins(run, { zones: input.zones, surfaces: input.surfaces, shelter })
  const skin = skinsOf(run, { ...input, weather, sky, insideOf, behind })
  const airs = [...asked].map((name) =>
    run(airStage(name), {
      shelter: shelterAt(name, place.shelter),
      boatShelter: place.shelter,
      inside: insideOf(name),
      surfaceC: skin.of(name),
      sun: skin.sunOf(name),
      readings: input.readings,
    }),
  )
  const light = lightOver(run, { weather, place })
  const zones = questions.map((question) => {
    const air = airs.find((one) => one.place === question.place)!
    const { place: at, absorptance, dewMarginK } = question
    const darkC = absorptance > workedAbsorptance ? skin.inColour(at, absorptance) : undefined
    const asked = { air, light: light(air), dewMarginK, darkC }
    const ahead = run(aheadStage(at, { dewMarginK, absorptance }), asked)
    return run(hoursStage(question.key), { question, air, ahead, warmestC: darkC && ahead.warmestC })
  })
  return run(conditions, {
    weather,
    typicalYear,
    place,
    sky,
    knownAir,
    shed: run(shedNotes, {
      weather,
      shelter,
      heater,
      shed: input.shed,
      hours: shed,
      sky,
      air: knownAir.fitted,
    }),
    skinless: run(skinlessSheets, { sheets: input.buildUps.sheets }),
    ...numbered('air', airs),
    ...numbered('zone', zones),
  })
}

const withoutWeather: Stage<Readonly<Record<string, never>>, Conditions> = {
  name: 'conditions',
  run: () => ({
    zones: [],
    air: [],
    firstMinute: 0,
    lastMinute: 0,
    notes: [{ code: 'conditions.noWeather', severity: 'missing', data: { airC: PLANNING_AIR_C } }],
  }),
}

/** A list as single inputs, so that its members are compared and not the list. */
const numbered = <T>(name: string, list: readonly T[]): Readonly<Record<string, T>> =>
  Object.fromEntries(list.map((member, index) => [`${name} ${index}`, member]))

/** Loose parts are done under a roof whatever stands over the boat. */
const shelterAt = (name: SkinPlace, shelter: Shelter): Shelter =>
  name !== 'indoors' || shelter === 'heated shed' ? shelter : 'shed'

/** What is known of the boat's shelter; loose parts share it where they share the shed. */
const ofBoat = <T>(name: SkinPlace, shelter: Shelter, known: T | undefined): T | undefined =>
  shelterAt(name, shelter) === shelter ? known : undefined

type InsideInput = {
  readonly weather: HourlySeries
  readonly shelter: Shelter
  readonly sky: OpenSky
  readonly air: ShelterAir | undefined
  readonly shed: Shed | undefined
}

const insideStage = (name: SkinPlace): Stage<InsideInput, HourlySeries> => ({
  name: `conditions inside ${name}`,
  run: ({ weather, shelter, sky, air, shed }) =>
    airUnder({ series: weather, shelter, air, shed, sunWm2: sky.light?.globalWm2 }),
  fresh: true,
})

type SkinsInput = ConditionsInput & {
  readonly weather: HourlySeries
  readonly sky: OpenSky
  readonly insideOf: (name: SkinPlace) => HourlySeries
  readonly behind: BehindOf
}

type Skins = {
  readonly of: (name: SkinPlace) => Float64Array
  readonly sunOf: (name: SkinPlace) => OpenSun
  /** The warmest skin in a colour; absent under a roof, where colour hardly counts. */
  readonly inColour: (name: SkinPlace, absorptance: number) => Float64Array | undefined
}

/** No sun comes through a cloth or a roof. */
const noSun: OpenSun = {}

/** In the open every side has its own skin; the boat as a whole is told by its deck, under a roof all of it. */
function skinsOf(
  run: Runner,
  { weather, place, hull, boat, zones, sky, insideOf, behind }: SkinsInput,
): Skins {
  const { laminate } = boat
  const roofed = (name: 'boat' | 'indoors', shelter: Exclude<Shelter, 'open'>) =>
    run(roofedSkin(name), { weather, inside: insideOf(name), sky, shelter, laminate, behind })
  const indoors = () => roofed('indoors', place.shelter === 'heated shed' ? place.shelter : 'shed')
  const { shelter } = place
  if (shelter !== 'open')
    return {
      of: (name) => (name === 'indoors' ? indoors() : roofed('boat', shelter)),
      sunOf: () => noSun,
      inColour: () => undefined,
    }
  const faces = run(placeFaces, {
    hull,
    rake: boat.transomRake,
    camber: camberOverBeam(zones, boat),
  })
  const { bowBearing } = place
  const asked = { weather, sky, faces, bowBearing, laminate, behind }
  const outdoors = (name: Exclude<SkinPlace, 'indoors'>) => (name === 'boat' ? 'deck' : name)
  return {
    of: (name) => (name === 'indoors' ? indoors() : run(openSkin(outdoors(name)), asked)),
    sunOf: (name) => (name === 'indoors' ? noSun : run(openSun(outdoors(name)), asked)),
    inColour: (name, absorptance) =>
      name === 'indoors' ? undefined : run(darkSkin(outdoors(name), absorptance), asked),
  }
}

/** Dark wherever no lamp is, and the evening under the sky. */
function lightOver(
  run: Runner,
  { weather, place }: Pick<ConditionsInput, 'place'> & { readonly weather: HourlySeries },
): (air: PlaceAir) => LightLimits {
  const { latitude, longitude, lamps, eveningStop, timeZone } = place
  const light = run(hoursLight, { weather, latitude, longitude })
  const evening = run(eveningStops, { weather, light, eveningStop, timeZone })
  return ({ shelter }) =>
    run(lightLimitsUnder(shelter), { weather, light, evening, lit: lampsOver(shelter, lamps) })
}

type Together = {
  readonly weather: HourlySeries
  readonly typicalYear: boolean
  readonly place: Work['place']
  readonly sky: OpenSky
  readonly knownAir: KnownAir
  readonly shed: ShedNotes
  /** Names of the sheets that do not tell how warm the skin may be. */
  readonly skinless: readonly string[]
} & Readonly<Record<string, unknown>>

const conditions: Stage<Together, Conditions> = {
  name: 'conditions',
  run: ({ weather, typicalYear, place, sky, knownAir, shed, skinless, ...parts }) => {
    const firstMinute = weather.startMs / 60_000
    return {
      zones: named<ZoneHours>('zone', parts),
      air: named<PlaceAir>('air', parts).map((air) => air.hours),
      sky: skyHours(weather),
      firstMinute,
      lastMinute: firstMinute + weather.hours * 60,
      notes: [
        ...(place.shelter === 'open' ? openSkinNotes(sky, place) : []),
        ...knownAir.notes,
        ...shed.notes,
        ...(typicalYear ? [typicalNote(weather)] : []),
        ...gapNotes(weather),
        ...placeNotes(place),
        ...lightNotes(place),
        ...skinlessNotes(skinless),
        ...boatReadingNotes(named<PlaceAir>('air', parts)),
      ],
    }
  },
  fresh: true,
}

/** Told once, by the place where the skin was read last, else by the boat as a whole. */
function boatReadingNotes(airs: readonly PlaceAir[]): readonly Note[] {
  const told = airs.find(({ read }) => read.shifts.at(-1)?.here) ?? airs.find(({ place }) => place === 'boat')
  return told ? readingNotes(told.read) : []
}

const skyHours = (weather: HourlySeries): SkyHours => ({
  firstMinute: weather.startMs / 60_000,
  rainMm: Array.from(weather.rainMm ?? []),
  rainChanceShare: Array.from(weather.rainChanceShare ?? []),
  windMps: Array.from(weather.windMps ?? []),
  windFromRad: Array.from(weather.windFromRad ?? []),
})

const named = <T>(name: string, parts: Readonly<Record<string, unknown>>): readonly T[] =>
  Object.entries(parts).flatMap(([key, part]) => (key.startsWith(`${name} `) ? [part as T] : []))

/** Sheets that leave the skin out: theirs is judged by the air they allow. */
const skinlessSheets: Stage<Pick<BuildUps, 'sheets'>, readonly string[]> = {
  name: 'conditions skin limits',
  run: ({ sheets }) =>
    sheets.filter(({ skinLeastC, skinMostC }) => !skinLeastC || !skinMostC).map(({ name }) => name),
}

function skinlessNotes(names: readonly string[]): readonly Note[] {
  if (names.length === 0) return []
  return [
    {
      code: 'conditions.skinFromAir',
      severity: 'assumed',
      data: { names: names.join(', '), allowanceK: skinAllowanceK },
      source: 'assumed',
    },
  ]
}

/** What one product asks of the hours at one place. */
type Question = {
  readonly key: string
  readonly place: SkinPlace
  readonly sheet: string
  readonly airLeastC: number
  readonly airMostC: number
  readonly skinLeastC: number
  readonly skinCoolC: number
  readonly skinWarmC: number
  readonly skinMostC: number
  readonly humidityMost: number
  readonly dewMarginK: number
  /** Of its colour, where it has one that is known. */
  readonly absorptance: number
  readonly dryToDew: ResolvedSheet['clocks']['dryToDew']
}

const askedOf: Stage<
  Pick<ConditionsInput, 'buildUps' | 'surfaces' | 'marks' | 'repairs'> & {
    readonly shelter: Work['place']['shelter']
  },
  { readonly questions: readonly Question[] }
> = {
  name: 'conditions asked',
  run: ({ buildUps, surfaces, marks, repairs, shelter }) => {
    const known = new Map([...surfaces.zones, ...marks.zones].map((zone) => [zone.id, zone]))
    const questions = buildUps.sheets.flatMap((sheet) => {
      const zones = [...buildUps.layers, ...repairs.repairs]
        .filter((use) => use.sheet === sheet.id)
        .map((use) => use.zone)
      const places = new Set(zones.map((zone) => skinPlaceOf(known.get(zone), shelter)))
      return [...places].sort().map((place) => questionOf(sheet, place))
    })
    return { questions }
  },
}

const questionOf = (sheet: ResolvedSheet, place: SkinPlace): Question => ({
  key: `${place}|${sheet.id}`,
  place,
  sheet: sheet.id,
  airLeastC: sheet.airLeastC.value,
  airMostC: sheet.airMostC.value,
  ...skinLimits({
    airLeastC: sheet.airLeastC.value,
    airMostC: sheet.airMostC.value,
    skinLeastC: sheet.skinLeastC?.value,
    skinMostC: sheet.skinMostC?.value,
  }),
  humidityMost: sheet.humidityMost.value,
  dewMarginK: sheet.dewMarginK.value,
  absorptance: sheetAbsorptance(sheet) ?? workedAbsorptance,
  dryToDew: sheet.clocks.dryToDew,
})

type PlaceAir = {
  readonly place: SkinPlace
  readonly shelter: Shelter
  readonly inside: HourlySeries
  readonly surfaceC: Float64Array
  readonly sun: OpenSun
  readonly read: Readings
  readonly hours: AirHours
}

type AirInput = {
  readonly shelter: Shelter
  readonly boatShelter: Shelter
  readonly inside: HourlySeries
  readonly surfaceC: Float64Array
  readonly sun: OpenSun
  readonly readings: readonly ToldReading[]
}

const airStage = (name: SkinPlace): Stage<AirInput, PlaceAir> => ({
  name: `conditions air ${name}`,
  run: ({ shelter, boatShelter, readings, ...worked }) => {
    const air = withReadings(worked, { name, boatShelter, readings })
    return { place: name, shelter, ...air, hours: airHours(name, { shelter, ...air }) }
  },
  fresh: true,
})

function airHours(key: SkinPlace, air: Omit<PlaceAir, 'place' | 'hours' | 'read'>): AirHours {
  const { inside } = air
  return {
    key,
    shelter: air.shelter,
    firstMinute: inside.startMs / 60_000,
    airC: Array.from(inside.airC),
    humidityShare: Array.from(inside.humidityShare),
    surfaceC: Array.from(air.surfaceC),
    ...(air.sun.warmestC ? { warmestC: Array.from(air.sun.warmestC) } : {}),
    dewC: Array.from(inside.airC, (airC, hour) => dewOf(airC, inside.humidityShare[hour] ?? Number.NaN)),
  }
}

const dewOf = (airC: number, humidityShare: number): number =>
  Number.isNaN(airC + humidityShare) ? Number.NaN : dewPoint({ airC, humidityShare })

type AheadInput = {
  readonly air: PlaceAir
  readonly light: LightLimits
  readonly dewMarginK: number
  /** The warmest skin in the colour of the product, where it is darker than what it goes on. */
  readonly darkC: Float64Array | undefined
}

/** What all products with the same dew margin, and as dark, share at a place. */
const aheadStage = (
  place: SkinPlace,
  { dewMarginK, absorptance }: Pick<Question, 'dewMarginK' | 'absorptance'>,
): Stage<AheadInput, PlaceAhead> => ({
  name: `conditions ahead ${place} ${dewMarginK} ${absorptance}`,
  run: ({ air, light, darkC }) => {
    const { inside, read, surfaceC, sun, shelter } = air
    const { openToSky } = shelters[shelter]
    const limits = { ...commonLimits, dewMarginK, openToSky }
    const warmestC = darkC && withSkinShifts(darkC, { series: inside, shifts: read.shifts })
    return placeAhead(airAhead({ series: inside, limits }), {
      surfaceC,
      ...sun,
      ...(warmestC ? { warmestC } : {}),
      light,
    })
  },
  fresh: true,
})

type HoursInput = {
  readonly question: Question
  readonly air: PlaceAir
  readonly ahead: PlaceAhead
  /** Of a product in a dark colour, as in its hours. */
  readonly warmestC: HourlyColumn | undefined
}

const hoursStage = (key: string): Stage<HoursInput, ZoneHours> => ({
  name: `conditions hours ${key}`,
  run: ({ question, air, ahead, warmestC }) => {
    const after = hoursAfter(question, air.inside)
    const judged = hoursForSheet(ahead, limitsOf(question, after))
    return {
      key,
      sheet: question.sheet,
      place: question.place,
      firstMinute: air.inside.startMs / 60_000,
      hoursAfter: after,
      ...(warmestC ? { warmestC: Array.from(warmestC) } : {}),
      verdicts: judged.map((hour) => hour.verdict),
      failing: judged.map((hour) => hour.failing),
    }
  },
  fresh: true,
})

const limitsOf = (question: Question, after: readonly number[]): SheetLimits => ({
  airLeastC: question.airLeastC,
  airMostC: question.airMostC,
  skinLeastC: question.skinLeastC,
  skinCoolC: question.skinCoolC,
  skinWarmC: question.skinWarmC,
  skinMostC: question.skinMostC,
  humidityMost: question.humidityMost,
  hoursAfter: after,
})

/** Longest that dew is looked for after a coat; past two days a forecast says little. */
const MOST_HOURS_AFTER = 48

/** Dew must stay off until the sheet's clock has run in the air the film really gets, from each hour on. */
const hoursAfter = ({ dryToDew }: Question, inside: HourlySeries): readonly number[] =>
  dryToDew ? hoursToRun({ table: dryToDew.value, airC: inside.airC, most: MOST_HOURS_AFTER }) : [0]

const typicalNote = ({ source }: HourlySeries): Note => ({
  code: 'conditions.typicalYear',
  severity: 'assumed',
  data: { source },
})

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
