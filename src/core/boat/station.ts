/**
 * Measured or made-up sections of a hull. Boat frame: x forward from the aftmost point of the hull, y to port, z up
 * from the floating waterline; metres. Half breadths are to one side, the hull being the same on both.
 */

export type Knuckle = 'chine' | 'rail' | 'none'

export type StationPoint = {
  /** Half breadth, 0 or more. */
  readonly y: number
  readonly z: number
  /** A corner that runs along the hull; the same kinds in the same order at every station that has any. */
  readonly knuckle?: Knuckle
}

export type Station = {
  readonly id: string
  readonly x: number
  /** Keel to sheer. One point alone stands for a hull that closes there. */
  readonly points: readonly StationPoint[]
}

/** Greatest half breadth of a station, m. */
export const widest = (station: Station): number => Math.max(...station.points.map((point) => point.y))

/** Lowest and highest height of a station, m. */
export const heightRange = (station: Station) => {
  const heights = station.points.map((point) => point.z)
  return { lowest: Math.min(...heights), highest: Math.max(...heights) }
}
