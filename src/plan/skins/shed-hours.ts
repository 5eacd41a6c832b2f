/** What is known of the shed that the boat stands in, hour by hour: its size, heater, doors and floor. */
import { flameWater, type Heater, type HourlySeries, type Room, type Shed, type Shelter } from '#core/climate'
import type { Work } from '#job'
import { minuteOf, minutesOfDay, shareBefore } from '../hours-clock.ts'
import type { Runner, Stage } from '../remember.ts'

type ShedInput = {
  readonly weather: HourlySeries
  readonly shelter: Shelter
  readonly heater: Work['place']['heater']
  readonly timeZone: string
  readonly shed: Work['shed']
  readonly boat: Work['boat']
}

type ShedHours = { readonly shed?: Shed }

/** So much longer and wider than the boat is a shed that nobody measured; 5 m high. Assumed. */
const CLEAR_M = 4
const USUAL_HEIGHT_M = 5
/** Of a boat that nobody measured. Assumed. */
const USUAL_LENGTH_M = 8
const USUAL_BEAM_M = 2.5

/**
 * W/(m² K), after the resistances of EN ISO 6946, from memory: 0.13 and 0.04 m² K/W on either side of a sheet; 50 mm of foam
 * at 0.035 W/(m K) more where it is insulated, assumed.
 */
const walls = { sheet: 1 / 0.17, insulated: 1 / (0.17 + 0.05 / 0.035) } as const

/** Times an hour that the air of a shed is changed. Assumed. */
export const airChangesUsual = { shut: 1, open: 6 } as const

/** What a heated shed is kept at where nobody said, °C. Assumed. */
export const USUAL_HEAT_C = 15
/** Water on the floor is wetted then and dries off evenly over so many hours. Assumed. */
const USUAL_FLOOR_AT = '08:00'
export const FLOOR_DRIES_HOURS = 3

/** It burns, or its glowing wire heats, the air of the shed: whether one is there and meant to. */
const isHeated = ({ shelter, heater }: Pick<ShedInput, 'shelter' | 'heater'>): boolean =>
  shelter === 'heated shed' && heater !== 'none'

type ShedWork = Pick<Work, 'place' | 'shed' | 'boat'>

/**
 * Heater, doors and floor over the hours of a weather. Nothing where the boat stands elsewhere, or in a plain shed of which
 * nothing is told: that follows the weather by its lag alone.
 * @param of.name tells two weathers apart that are worked side by side.
 */
export function shedOver(
  run: Runner,
  of: { readonly name: string; readonly weather: HourlySeries; readonly work: ShedWork },
): Shed | undefined {
  const { shelter, heater, timeZone } = of.work.place
  if (shelter !== 'shed' && shelter !== 'heated shed') return undefined
  const { shed, boat } = of.work
  return run(shedHours(of.name), { weather: of.weather, shelter, heater, timeZone, shed, boat }).shed
}

const shedHours = (name: string): Stage<ShedInput, ShedHours> => ({
  name: `shed hours ${name}`,
  run: (input) => {
    const { weather, timeZone, shed } = input
    if (!isHeated(input) && !doorOf(shed) && !shed.floorWater) return {}
    const minutes = minutesOfDay(weather, timeZone)
    const shares = (span: Span | undefined): Float64Array =>
      span
        ? Float64Array.from(minutes, (minute) => shareBefore(minute, span))
        : new Float64Array(weather.hours)
    const { shut, open } = airChangesUsual
    const litresAnHour = (1000 * (shed.floorWater?.value ?? 0)) / FLOOR_DRIES_HOURS
    return {
      shed: {
        room: roomOf(input),
        airChanges: shares(doorOf(shed)).map((share) => shut + share * (open - shut)),
        // A litre of water is a kilogram.
        floorKg: shares(floorOf(shed)).map((share) => litresAnHour * share),
        ...(isHeated(input) ? { heater: heaterOf(input, shares) } : {}),
      },
    }
  },
  fresh: true,
})

function roomOf({ shed, boat }: Pick<ShedInput, 'shed' | 'boat'>): Room {
  return {
    lengthM: shed.length?.value ?? (boat.lengthOverall?.value ?? USUAL_LENGTH_M) + CLEAR_M,
    widthM: shed.width?.value ?? (boat.beam?.value ?? USUAL_BEAM_M) + CLEAR_M,
    heightM: shed.height?.value ?? USUAL_HEIGHT_M,
    lossWm2K: walls[shed.walls ?? 'sheet'],
    airChanges: airChangesUsual.shut,
  }
}

/** Minutes of the local day. */
type Span = { readonly from: number; readonly until: number }

const spanOf = (from: string | undefined, until: string | undefined): Span | undefined =>
  from !== undefined && until !== undefined ? { from: minuteOf(from), until: minuteOf(until) } : undefined

const doorOf = ({ doorFrom, doorUntil }: Work['shed']): Span | undefined => spanOf(doorFrom, doorUntil)

function floorOf({ floorWater, floorAt }: Work['shed']): Span | undefined {
  if (!floorWater) return undefined
  const from = minuteOf(floorAt ?? USUAL_FLOOR_AT)
  return { from, until: from + 60 * FLOOR_DRIES_HOURS }
}

/** Kept at one temperature all day and night, unless both ends of its hours are told. */
function heaterOf({ shed, heater }: ShedInput, shares: (span: Span | undefined) => Float64Array): Heater {
  const { heatTo, heatToNight, heaterPower, heatFrom, heatUntil, fuel } = shed
  const dayC = heatTo?.value ?? USUAL_HEAT_C
  const span = spanOf(heatFrom, heatUntil)
  const nightC = span ? (heatToNight?.value ?? Number.NaN) : dayC
  return {
    // What it was doing in the hour before says what the hour begins with; half of it counts as all.
    holdsC: shares(span).map((share) => (share >= 0.5 ? dayC : nightC)),
    mostW: heaterPower?.value ?? Number.POSITIVE_INFINITY,
    waterKgJ: heater === 'unvented flame' ? flameWater(fuel ?? 'gas') : 0,
  }
}
