/** What somebody read at the boat, put into the air and the skin of each place. */
import {
  type HourlySeries,
  hourMs,
  type Readings,
  readingFadesHours,
  readingShifts,
  type Shelter,
  withAirShifts,
  withSkinShifts,
  type YardReading,
} from '#core/climate'
import type { Note } from '#core/note'
import type { OpenSun } from './skins/open-sun.ts'
import type { ToldReading } from './told-weather.ts'
import type { SkinPlace } from './types.ts'

export type ReadAir = {
  readonly inside: HourlySeries
  readonly surfaceC: Float64Array
  readonly sun: OpenSun
  readonly read: Readings
}

const nothing: Readings = { shifts: [], faults: [] }

/**
 * Air and skin of a place with the readings on them; the very same where none is of its air.
 * @param of.boatShelter what stands over the boat: loose parts indoors share its air in a shed alone.
 */
export function withReadings(
  air: Omit<ReadAir, 'read'>,
  of: {
    readonly name: SkinPlace
    readonly boatShelter: Shelter
    readonly readings: readonly ToldReading[]
  },
): ReadAir {
  const readings = of.readings.filter((reading) => sharesAir(of, reading)).map((one) => onPlace(of, one))
  if (readings.length === 0) return { ...air, read: nothing }
  const { inside, surfaceC, sun } = air
  const read = readingShifts({ series: inside, surfaceC, readings })
  const shift = (column: Float64Array): Float64Array =>
    withSkinShifts(column, { series: inside, shifts: read.shifts })
  return {
    inside: withAirShifts(inside, read.shifts),
    surfaceC: shift(surfaceC),
    sun: sun.warmestC ? { ...sun, warmestC: shift(sun.warmestC) } : sun,
    read,
  }
}

type At = { readonly name: SkinPlace; readonly boatShelter: Shelter }

function sharesAir({ name, boatShelter }: At, { readAt }: ToldReading): boolean {
  if (boatShelter === 'shed' || boatShelter === 'heated shed') return true
  return (name === 'indoors') === (readAt === 'indoors')
}

/** Under a roof the boat is one place; in the open each side is its own, and the boat as a whole is its deck. */
function onPlace({ name, boatShelter }: At, { readAt, ...reading }: ToldReading): YardReading {
  if (name === 'indoors' || readAt === 'indoors') return { ...reading, here: name === readAt }
  if (boatShelter !== 'open') return { ...reading, here: true }
  return { ...reading, here: readAt !== undefined && (name === 'boat' ? 'deck' : name) === readAt }
}

/** The last reading that shifts hours, and all that cannot be. */
export function readingNotes({ shifts, faults }: Readings): readonly Note[] {
  const last = shifts.at(-1)
  return [
    ...faults.map(
      ({ atMs, what, read, expected, looks }): Note => ({
        code: what === 'humidity' ? 'conditions.readingDry' : 'conditions.readingFar',
        severity: 'caution',
        data:
          what === 'humidity'
            ? { readAtMs: atMs, readShare: read, expectedShare: expected }
            : { readAtMs: atMs, what, readC: read, expectedC: expected, looks },
      }),
    ),
    ...(last ? [takenNote(last)] : []),
  ]
}

const takenNote = ({ atMs, airK, dewK, skinK }: Readings['shifts'][number]): Note => ({
  code: 'conditions.readingTaken',
  severity: 'assumed',
  data: {
    readAtMs: atMs,
    fadedAtMs: atMs + readingFadesHours * hourMs,
    ...(airK === undefined ? { air: 'none' } : { air: 'read', airK }),
    ...(dewK === undefined ? { dew: 'none' } : { dew: 'read', dewK }),
    ...(skinK === undefined ? { skin: 'none' } : { skin: 'read', skinK }),
  },
  source: 'assumed',
})
