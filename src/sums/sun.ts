/** Sun: where it stands over a boat, and which sides it lights. */
import { litSides, type SideLight, sunPosition, sunTimes } from '#core/climate'
import type { Note } from '#core/note'
import type { SumField } from './field.ts'
import { type Moment, readMoment, timeOfDay } from './moment.ts'
import { readBearing, readLatitude, readLongitude } from './place.ts'
import { defineSum, how, result, type SumResult } from './sum.ts'

const source =
  'J. Meeus, Astronomical Algorithms, 2nd ed. 1998, ch. 25; checked against NREL/TP-560-34302, 2003'
const degree = Math.PI / 180

const textInput = (name: string, doc: string, example: string): SumField => ({
  name,
  dimension: 'text',
  required: true,
  limits: {},
  doc,
  example,
})

export const sun = defineSum({
  id: 'sun',
  doc: 'Height and bearing of the sun, and the sides of the boat it lights.',
  inputs: [
    textInput('latitude', 'Latitude in degrees, north positive or with N or S.', '44.5 N'),
    textInput('longitude', 'Longitude in degrees, east positive or with E or W.', '73.2 W'),
    textInput('at', 'Date and time with its offset from UTC.', '2027-06-21T09:00-04:00'),
    textInput('bow', 'Where the bow points, from true north clockwise.', '135'),
  ],
  work: (given) => {
    const place = {
      latitude: readLatitude(given.text('latitude')),
      longitude: readLongitude(given.text('longitude')),
    }
    const moment = readMoment('at', given.text('at'))
    const bowBearing = readBearing('bow', given.text('bow'))
    const position = sunPosition({ ...place, atMs: moment.atMs })
    const times = sunTimes({ ...place, noonMs: moment.noonMs })
    const sides = litSides({ ...position, bowBearing })
    const angles = { altitudeDeg: position.altitude / degree, azimuthDeg: position.azimuth / degree }
    return {
      results: [
        result('altitudeDeg', angles.altitudeDeg, 'angle'),
        result('azimuthDeg', angles.azimuthDeg, 'angle'),
        result(
          'lit',
          sides.filter((side) => side.lit).map(({ side }) => side),
          'text',
        ),
        ...sides.map(incidence),
        ...dayResults(moment, times),
      ],
      how: [
        how('sums.sunPosition', {
          latitudeDeg: place.latitude / degree,
          longitudeDeg: place.longitude / degree,
          momentAtMs: moment.atMs,
          ...angles,
        }),
        how('sums.sunIncidence', { ...angles, bowDeg: bowBearing / degree }),
      ],
      notes: sunNotes(position.altitude, times.up),
      sources: [source],
    }
  },
})

/** `portIncidenceShare` and so on: 1 is square on, 0 is shade. */
function incidence({ side, incidence: cosine }: SideLight): SumResult {
  return result(`${side}IncidenceShare`, cosine, 'share')
}

/** Times of day at the offset of the moment that was given. */
function dayResults(moment: Moment, times: ReturnType<typeof sunTimes>): SumResult[] {
  const clock = (key: string, atMs: number | undefined) =>
    atMs === undefined ? [] : [result(key, timeOfDay(moment, atMs), 'clock')]
  return [
    ...clock('riseTimeOfDay', times.riseMs),
    ...clock('noonTimeOfDay', times.noonMs),
    ...clock('setTimeOfDay', times.setMs),
  ]
}

function sunNotes(altitude: number, up: 'rises' | 'never' | 'always'): Note[] {
  const notes: Note[] = []
  if (altitude <= 0) notes.push({ code: 'sums.sunDown', severity: 'info', data: {} })
  if (up !== 'rises') notes.push({ code: 'sums.sunPolar', severity: 'info', data: { up } })
  notes.push({ code: 'sums.sunUpright', severity: 'assumed', data: {} })
  return notes
}
