/** Rules between stations and their points: a hull needs three sections at least, none empty, none twice. */
import type { Figure } from './field.ts'
import { errorAt, type FoundProblem } from './found-problem.ts'
import { below } from './pointer.ts'
import type { Item } from './references.ts'
import { shareList } from './share.ts'

export const stationLimits = { least: 3, most: 41, pointsLeast: 1 } as const

export type StationState = {
  readonly given: { readonly stations: readonly Item[]; readonly points: readonly Item[] }
  readonly stations: readonly Item[]
  readonly points: readonly Item[]
  readonly problems: readonly FoundProblem[]
}

/** With fewer than three good stations none is kept, and the hull is worked from its sizes. */
export const checkStations = (
  given: StationState['given'],
  older: StationState | undefined,
): StationState => {
  if (older && older.given.stations === given.stations && older.given.points === given.points) return older
  const problems: FoundProblem[] = []
  const counted = given.stations.filter((station) => hasPoints(station, given.points, problems))
  const distinct = withoutTwins(counted, problems)
  const { least, most } = stationLimits
  const count = distinct.length
  if (given.stations.length > 0 && (count < least || count > most)) {
    problems.push(errorAt('/work/stations', 'job.stationCount', { count, least, most }, 'key'))
  }
  const stations = count < least ? [] : distinct.slice(0, most)
  const kept = new Set(stations.map(({ id }) => id))
  const points = given.points.filter((point) => kept.has(point.station as string))
  return {
    given,
    stations: shareList(given.stations, stations),
    points: shareList(given.points, points),
    problems,
  }
}

const hasPoints = ({ id }: Item, points: readonly Item[], problems: FoundProblem[]): boolean => {
  const count = points.filter(({ station }) => station === id).length
  if (count >= stationLimits.pointsLeast) return true
  const data = { count, least: stationLimits.pointsLeast }
  problems.push(errorAt(below('/work/stations', id), 'job.stationPoints', data, 'key'))
  return false
}

/** Of two stations at one place the first is kept. */
const withoutTwins = (stations: readonly Item[], problems: FoundProblem[]): readonly Item[] => {
  const seen = new Map<number, string>()
  return stations.filter(({ id, x }) => {
    const { value, text } = x as Figure
    const twin = seen.get(value)
    if (twin === undefined) {
      seen.set(value, id)
      return true
    }
    problems.push(
      errorAt(below(below('/work/stations', id), 'x'), 'job.stationTwice', { found: text, other: twin }),
    )
    return false
  })
}
