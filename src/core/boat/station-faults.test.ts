import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { NoteData } from '#core/note'
import { hullFromSizes } from './hull-from-sizes.ts'
import { hullFromStations } from './hull-from-stations.ts'
import type { HullSizes } from './hull-sizes.ts'
import type { Station, StationPoint } from './station.ts'

const stationsFromSizes = (sizes: HullSizes): readonly Station[] => {
  const result = hullFromSizes(sizes)
  if (!result.ok) throw new Error(JSON.stringify(result.faults))
  return result.hull.stations
}

const section = (half: number): readonly StationPoint[] => [
  { y: 0, z: -0.4 },
  { y: 0.8 * half, z: -0.1, knuckle: 'chine' },
  { y: half, z: 0.9 },
]

const measured: readonly Station[] = [
  { id: 'A', x: 0, points: section(1) },
  { id: 'B', x: 2, points: section(1.2) },
  { id: 'C', x: 4, points: section(1.1) },
  { id: 'D', x: 5.5, points: section(0.6) },
  { id: 'E', x: 6.5, points: [{ y: 0, z: 0.9 }] },
]

const changed = (i: number, change: Partial<Station>): readonly Station[] =>
  measured.map((station, k) => (k === i ? { ...station, ...change } : station))

const withPoint = (i: number, j: number, change: Partial<StationPoint>): readonly Station[] =>
  changed(i, { points: measured[i]!.points.map((point, k) => (k === j ? { ...point, ...change } : point)) })

const faultsOf = (stations: readonly Station[]): readonly NoteData[] => {
  const result = hullFromStations(stations)
  return result.ok ? [] : result.faults.map(({ code, data }) => ({ code, ...data }))
}

it('takes stations without a fault', () => {
  expect(faultsOf(measured)).toEqual([])
})

describe('stations', () => {
  it('that are too few are refused, none included', () => {
    expect(faultsOf([])).toEqual([{ code: 'boat.tooFewStations', count: 0, needed: 3 }])
    expect(faultsOf(measured.slice(0, 2))).toEqual([{ code: 'boat.tooFewStations', count: 2, needed: 3 }])
  })

  it('out of order name the odd one and where it stands', () => {
    expect(faultsOf(changed(3, { x: 0.55 }))).toEqual([
      { code: 'boat.stationOutOfOrder', station: 'D', xM: 0.55, position: 4, neighbour: 'C', neighbourXM: 4 },
    ])
    expect(faultsOf(changed(1, { x: 20 }))).toEqual([
      { code: 'boat.stationOutOfOrder', station: 'B', xM: 20, position: 2, neighbour: 'C', neighbourXM: 4 },
    ])
  })

  it('at one place, or of one name, are refused', () => {
    expect(faultsOf(changed(2, { x: 2 }))).toEqual([
      { code: 'boat.stationsAtSamePlace', station: 'C', other: 'B', xM: 2 },
    ])
    expect(faultsOf(changed(2, { id: 'A' }))).toEqual([
      { code: 'boat.stationNamedTwice', station: 'A', position: 3 },
    ])
  })

  it('without enough points are refused, except where the hull may close', () => {
    expect(faultsOf(changed(2, { points: [{ y: 0, z: 0 }] }))).toEqual([
      { code: 'boat.stationTooFewPoints', station: 'C', count: 1, needed: 2 },
    ])
    expect(faultsOf(changed(4, { points: [] }))).toEqual([
      { code: 'boat.stationTooFewPoints', station: 'E', count: 0, needed: 1 },
    ])
  })

  it('without breadth are refused, one amidships or all of them', () => {
    const narrow = (stations: readonly Station[]) =>
      stations.map((station) => ({ ...station, points: station.points.map((p) => ({ ...p, y: 0 })) }))
    expect(faultsOf(narrow(measured))).toEqual([{ code: 'boat.noBeam', beamM: 0 }])
    expect(faultsOf([...measured.slice(0, 2), ...narrow([measured[2]!]), ...measured.slice(3)])).toEqual([
      { code: 'boat.stationNoBreadth', station: 'C', xM: 4 },
    ])
  })

  it('with other knuckles than the rest are refused; without any they get them, with a note', () => {
    const twoChines = [
      ...section(1.1).slice(0, 2),
      { y: 1, z: 0.2, knuckle: 'chine' as const },
      { y: 1.1, z: 0.9 },
    ]
    const differing = faultsOf(changed(2, { points: twoChines }))
    expect(differing.map((fault) => [fault.code, fault.station])).toEqual([
      ['boat.knucklesDiffer', 'A'],
      ['boat.knucklesDiffer', 'B'],
      ['boat.knucklesDiffer', 'D'],
    ])
    const plain = measured[2]!.points.map(({ y, z }) => ({ y, z }))
    const result = hullFromStations(changed(2, { points: plain }))
    expect(result.ok && result.notes).toMatchObject([
      { code: 'boat.knuckleAssumed', severity: 'assumed', data: { station: 'C', xM: 4, knuckles: 1 } },
    ])
  })
})

describe('points', () => {
  it('that are no numbers are named, and nothing else is judged beside them', () => {
    const unreadable = withPoint(1, 2, { y: Number.NaN })
    expect(faultsOf(unreadable)).toEqual([{ code: 'boat.pointNotNumber', station: 'B', point: 3, axis: 'y' }])
    expect(faultsOf(changed(1, { x: Number.NaN }))).toEqual([{ code: 'boat.stationNotNumber', station: 'B' }])
  })

  it('of negative half breadth are pointed at', () => {
    expect(faultsOf(withPoint(2, 1, { y: -0.8 }))).toEqual([
      {
        code: 'boat.halfBreadthNegative',
        station: 'C',
        xM: 4,
        point: 2,
        halfBreadthM: -0.8,
        heightM: -0.1,
      },
    ])
  })

  it('must rise from keel to sheer, but may fall a little or along a chine flat', () => {
    const fallen = changed(1, {
      points: [
        { y: 0, z: -0.4 },
        { y: 0.5, z: 0.3 },
        { y: 0.9, z: 0 },
        { y: 1.2, z: 0.9 },
      ],
    })
    expect(faultsOf(fallen)).toEqual([
      { code: 'boat.heightsFall', station: 'B', xM: 2, point: 3, heightM: 0, previousHeightM: 0.3 },
    ])
    const flats = measured.map((station) =>
      station.points.length === 1
        ? station
        : {
            ...station,
            points: [
              ...station.points.slice(0, 2),
              { y: station.points[1]!.y + 0.08, z: -0.2, knuckle: 'chine' as const },
              ...station.points.slice(2),
            ],
          },
    )
    expect(faultsOf(flats)).toEqual([])
  })

  it('given from sheer to keel are told apart from a single fall', () => {
    expect(faultsOf(changed(1, { points: [...section(1.2)].reverse() }))).toMatchObject([
      { code: 'boat.stationUpsideDown', station: 'B', keelHeightM: 0.9, sheerHeightM: -0.4 },
    ])
  })

  it('with a sheer far from its neighbours are pointed at', () => {
    expect(faultsOf(withPoint(2, 2, { z: 9 }))).toMatchObject([
      { code: 'boat.sheerJumps', station: 'C', xM: 4, heightM: 9, expectedM: expect.closeTo(0.9, 6) },
    ])
  })
})

describe('a decimal point a place off', () => {
  it.each([
    ['sheer', 1, 2, 12],
    ['sheer', 2, 2, 11],
    ['chine', 1, 1, 9.6],
    ['chine', 2, 1, 0.088],
  ] as const)('is found at the %s', (_, i, j, y) => {
    expect(faultsOf(withPoint(i, j, { y }))).toMatchObject([
      { code: 'boat.halfBreadthJumps', station: measured[i]!.id, point: j + 1, halfBreadthM: y },
    ])
  })

  const round = stationsFromSizes({
    form: 'round-bilge',
    lengthOverall: 10,
    beam: 3.2,
    freeboardStem: 1.3,
  })

  it('is found anywhere in a table of a round hull where it moves the hull by a tenth of its beam, and only there', () => {
    const place = fc.record({
      i: fc.nat(18),
      j: fc.integer({ min: 1, max: 10 }),
      times: fc.constantFrom(10, 0.1),
    })
    fc.assert(
      fc.property(place, ({ i, j, times }) => {
        const was = round[i]!.points[j]!.y
        const isEndOfRange = i === 0 && j === 1
        fc.pre(Math.abs(was * times - was) > 0.32 && !isEndOfRange)
        const slipped = round.map((station, k) =>
          k === i
            ? { ...station, points: station.points.map((p, m) => (m === j ? { ...p, y: was * times } : p)) }
            : station,
        )
        expect(faultsOf(slipped).map(({ code, station, point }) => [code, station, point])).toEqual([
          ['boat.halfBreadthJumps', round[i]!.id, j + 1],
        ])
      }),
    )
  })

  it('is not suspected in a fair hull, however few of its stations were measured', () => {
    const share = (min: number, max: number) => fc.double({ min, max, noNaN: true })
    const boats = fc.record({
      form: fc.constantFrom('hard-chine' as const, 'round-bilge' as const),
      lengthOverall: share(4, 14),
      slender: share(0.2, 0.45),
      transom: share(0, 1),
      every: fc.constantFrom(1, 2, 4, 5, 10),
    })
    fc.assert(
      fc.property(boats, ({ form, lengthOverall, slender, transom, every }) => {
        const beam = slender * lengthOverall
        const sizes = {
          form,
          lengthOverall,
          beam,
          beamTransom: transom * beam,
          freeboardStem: 0.14 * lengthOverall,
        }
        const stations = stationsFromSizes(sizes)
        expect(faultsOf(stations.filter((_, i) => i % every === 0))).toEqual([])
      }),
    )
  })
})

describe('notes on a hull that works', () => {
  const notesOf = (stations: readonly Station[]) => {
    const result = hullFromStations(stations)
    return result.ok ? result.notes.map((note) => note.code) : []
  }

  it('say when the bow is open, nothing is under water, or the stations do not start at the stern', () => {
    expect(notesOf(measured.slice(0, 4))).toEqual(['boat.stemOpen'])
    const lifted = measured.map((station) => ({
      ...station,
      points: station.points.map((p) => ({ ...p, z: p.z + 0.4 })),
    }))
    expect(notesOf(lifted)).toEqual(['boat.nothingBelowWaterline'])
    expect(notesOf(measured.map((station) => ({ ...station, x: station.x + 1 })))).toEqual([
      'boat.aftmostNotZero',
    ])
  })

  it('say when the bottom is taken as flat to the centreline, and count it', () => {
    const keeled = measured.map((station) => ({
      ...station,
      points: station.points.map((p) => (p.y === 0 && station.points.length > 1 ? { ...p, y: 0.05 } : p)),
    }))
    const result = hullFromStations(keeled)
    expect(result.ok && result.notes).toMatchObject([
      { code: 'boat.keelFlatAssumed', data: { stations: 4, widestM: 0.1 } },
    ])
    expect(result.ok && result.hull.edges).toEqual(['keel', 'chine', 'sheer'])
  })

  it('stand beside those on the assumed sizes', () => {
    const result = hullFromSizes({ form: 'hard-chine', lengthOverall: 7.7, beam: 2.5, freeboardStem: 1.25 })
    expect(result.ok && result.notes.length).toBeGreaterThan(5)
  })
})

it('never throws, whatever the stations hold', () => {
  const any = fc.oneof(fc.double(), fc.double({ min: -2, max: 2 }), fc.constant(0))
  const knuckle = fc.constantFrom('chine' as const, 'rail' as const, 'none' as const)
  const point = fc.record({ y: any, z: any, knuckle })
  const station = fc.record({ id: fc.string(), x: any, points: fc.array(point, { maxLength: 5 }) })
  fc.assert(
    fc.property(fc.array(station, { maxLength: 6 }), (stations) => {
      const result = hullFromStations(stations)
      expect(result.ok || result.faults.length > 0).toBe(true)
    }),
    { numRuns: 500 },
  )
})

const total = (parts: readonly number[]) => parts.reduce((sum, part) => sum + part, 0)

it('takes no station of next to no breadth, however small the number', () => {
  const flat = (x: number, y: number) => ({
    id: `${x}`,
    x,
    points: [
      { y: 0, z: -0.5 },
      { y, z: 0.5 },
    ],
  })
  for (const y of [0, 5e-324, 1e-9]) {
    const result = hullFromStations([flat(0.1, 1), flat(1, y), flat(2, 0)])
    expect(result.ok ? [] : result.faults.map(({ code }) => code)).toContain('boat.stationNoBreadth')
  }
})

it('gives finite areas for any stations it takes', () => {
  const figure = (min: number, max: number) => fc.double({ min, max, noNaN: true })
  const points = fc.array(fc.record({ y: figure(0, 2), rise: figure(0, 0.6) }), {
    minLength: 2,
    maxLength: 6,
  })
  const tables = fc.array(fc.record({ step: figure(0.1, 3), points }), { minLength: 3, maxLength: 6 })
  fc.assert(
    fc.property(tables, (table) => {
      const stations = table.map((_, i) => ({
        id: `${i}`,
        x: total(table.slice(0, i + 1).map((row) => row.step)),
        points: table[i]!.points.map(({ y }, j, all) => ({
          y,
          z: total(all.slice(0, j + 1).map((p) => p.rise)) - 0.5,
        })),
      }))
      const result = hullFromStations(stations)
      if (!result.ok) return
      for (const value of Object.values(result.hull.particulars)) expect(value).toSatisfy(Number.isFinite)
    }),
    { numRuns: 300 },
  )
})
