import { expect, it } from 'vitest'
import type { Station } from './station.ts'
import { stationStrips } from './station-strips.ts'

/** A straight section of girth 1, with a chine at a share of it where one is given. */
const straight = (x: number, chine?: number): Station => ({
  id: `${x}`,
  x,
  points: [
    { y: 0, z: 0 },
    ...(chine === undefined ? [] : [{ y: 0.6 * chine, z: 0.8 * chine, knuckle: 'chine' as const }]),
    { y: 0.6, z: 0.8 },
  ],
})

const cornersOf = (stations: readonly Station[]) =>
  stationStrips(stations).strips.map((strips) => Number((strips[0]!.at(-1)!.z / 0.8).toFixed(9)))

it('puts a knuckle that was not marked between those beside it, and beyond them where the last one was', () => {
  const stations = [straight(0), straight(1, 0.4), straight(2), straight(5, 0.8), straight(6)]
  expect(cornersOf(stations)).toEqual([0.4, 0.4, 0.5, 0.8, 0.8])
  expect(stationStrips(stations).notes.map((note) => note.data.station)).toEqual(['0', '2', '6'])
})

it('makes every strip start where the one below it ends', () => {
  const stations = [straight(0, 0.3), straight(1), { id: 'stem', x: 2, points: [{ y: 0, z: 0.8 }] }]
  for (const strips of stationStrips(stations).strips) {
    expect(strips).toHaveLength(2)
    expect(strips[1]![0]).toEqual(strips[0]!.at(-1))
  }
})

it('leaves out knuckles at the keel and at the sheer, where the section ends anyway', () => {
  const marked = [straight(0), straight(1), straight(2)].map((station) => ({
    ...station,
    points: station.points.map((point) => ({ ...point, knuckle: 'rail' as const })),
  }))
  expect(stationStrips(marked).edges).toEqual(['sheer'])
})
