/** What the shed was taken to be, what heat it takes, and what flame and floor do to the dew point in it. */
import {
  assumedAir,
  dewPoint,
  type HourlyColumn,
  type HourlySeries,
  hourMs,
  type Shed,
  type ShedAir,
  type ShelterAir,
  shedAir,
} from '#core/climate'
import type { Note } from '#core/note'
import type { Work } from '#job'
import type { Stage } from '../remember.ts'
import type { OpenSky } from './open-skin.ts'
import { airChangesUsual, FLOOR_DRIES_HOURS, USUAL_HEAT_C } from './shed-hours.ts'

export type ShedNotesInput = {
  readonly weather: HourlySeries
  readonly shelter: Work['place']['shelter']
  readonly heater: Work['place']['heater']
  readonly shed: Work['shed']
  /** Absent where it is worked without. */
  readonly hours: Shed | undefined
  readonly sky: OpenSky
  readonly air: ShelterAir | undefined
}

export type ShedNotes = { readonly notes: readonly Note[] }

export const shedNotes: Stage<ShedNotesInput, ShedNotes> = {
  name: 'shed notes',
  run: (input) => ({ notes: [...idleNotes(input), ...workedNotes(input)] }),
}

/** What was told and is of no use where she stands. */
function idleNotes({ shelter, heater, shed }: ShedNotesInput): readonly Note[] {
  const note = (code: string): Note => ({ code, severity: 'notice', data: {} })
  const inShed = shelter === 'shed' || shelter === 'heated shed'
  const told = Object.values(shed).some((cell) => cell !== undefined)
  const halfDoor = (shed.doorFrom === undefined) !== (shed.doorUntil === undefined)
  const halfHeat = (shed.heatFrom === undefined) !== (shed.heatUntil === undefined)
  return [
    ...(told && !inShed ? [note('climate.shedUnused')] : []),
    ...(shelter === 'heated shed' && heater === 'none' ? [note('climate.heaterNone')] : []),
    ...(shelter === 'shed' && heater !== undefined && heater !== 'none' ? [note('climate.heaterIdle')] : []),
    ...(inShed && halfDoor ? [note('climate.doorHalf')] : []),
    ...(shelter === 'heated shed' && halfHeat ? [note('climate.heatHalf')] : []),
  ]
}

function workedNotes(input: ShedNotesInput): readonly Note[] {
  const { weather, hours, sky, air, shelter } = input
  if (!hours) return []
  const under = (shed: Shed) =>
    shedAir({ series: weather, sunWm2: sky.light?.globalWm2, air: air ?? assumedAir(shelter), shed })
  const worked = under(hours)
  return [
    roomNote(input, hours),
    ...(hours.heater ? heatNotes(input, { ...worked, heater: hours.heater }) : []),
    ...waterNotes(hours, worked, under),
  ]
}

function roomNote({ shed }: ShedNotesInput, { room }: Shed): Note {
  const sizes = [shed.length, shed.width, shed.height].filter((size) => size !== undefined).length
  const { lengthM, widthM, heightM } = room
  return {
    code: 'climate.shedRoom',
    severity: 'assumed',
    data: {
      lengthM,
      widthM,
      heightM,
      size: sizes === 3 ? 'told' : sizes === 0 ? 'assumed' : 'partly',
      walls: shed.walls ?? 'sheet',
      ...airChangesUsual,
    },
    source: 'assumed',
  }
}

/** 0 at least; hours of which nobody knows do not count. */
const mostIn = (column: HourlyColumn): number =>
  Array.from(column).reduce((most, value) => Math.max(most, value || 0), 0)

type Heated = ShedAir & { readonly heater: NonNullable<Shed['heater']> }

/** Short by more than this counts as cold. */
const SHORT_K = 0.5

function heatNotes(
  { heater: kind, shed, weather }: ShedNotesInput,
  { airC, heatW, heater }: Heated,
): readonly Note[] {
  const powerKw = mostIn(heatW) / 1000
  const dayC = shed.heatTo?.value ?? USUAL_HEAT_C
  const short = Array.from(airC, (_, hour) => hour).filter(
    (hour) => airC[hour]! < heater.holdsC[hour]! - SHORT_K,
  )
  const coldest = short.reduce((least, hour) => (airC[hour]! < airC[least]! ? hour : least), short[0] ?? 0)
  return [
    {
      code: 'climate.shedHeated',
      severity: shed.heatTo && kind ? 'info' : 'assumed',
      data: {
        heatC: dayC,
        heater: kind ?? 'unknown',
        heat: shed.heatTo ? 'told' : 'assumed',
        powerKw,
      },
      source: shed.heatTo && kind ? 'entered' : 'assumed',
    },
    ...(short.length === 0
      ? []
      : [
          {
            code: 'climate.heaterSmall',
            severity: 'notice',
            data: {
              mostKw: heater.mostW / 1000,
              shortHours: short.length,
              coldestC: airC[coldest]!,
              heldC: heater.holdsC[coldest]!,
              coldestAtMs: weather.startMs + coldest * hourMs,
            },
          } satisfies Note,
        ]),
  ]
}

/** The most that each water lifts the dew point, as the difference that the shed shows with it and without. */
function waterNotes(shed: Shed, worked: ShedAir, under: (shed: Shed) => ShedAir): readonly Note[] {
  const { heater, floorKg } = shed
  const liftOver = (without: Shed): number => {
    const dry = under(without)
    return worked.airC.reduce((most, airC, hour) => {
      const lift =
        dewPoint({ airC, humidityShare: worked.humidityShare[hour]! }) -
        dewPoint({ airC, humidityShare: dry.humidityShare[hour]! })
      return Math.max(most, lift || 0)
    }, 0)
  }
  const flame = heater !== undefined && heater.waterKgJ > 0
  const most = flame ? mostIn(worked.heatW) : 0
  const wetted = mostIn(floorKg) > 0
  return [
    ...(flame
      ? [
          {
            code: 'climate.flameWater',
            severity: 'danger',
            data: {
              waterL: most * 3600 * heater.waterKgJ,
              riseK: liftOver({ ...shed, heater: { ...heater, waterKgJ: 0 } }),
            },
          } satisfies Note,
        ]
      : []),
    ...(wetted
      ? [
          {
            code: 'climate.floorWater',
            severity: 'info',
            data: {
              waterL: mostIn(floorKg) * FLOOR_DRIES_HOURS,
              dryHours: FLOOR_DRIES_HOURS,
              riseK: liftOver({ ...shed, floorKg: new Float64Array(floorKg.length) }),
            },
            source: 'assumed',
          } satisfies Note,
        ]
      : []),
  ]
}
