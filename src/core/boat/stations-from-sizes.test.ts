import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { hullFromSizes } from './hull-from-stations.ts'
import type { HullSizes } from './hull-sizes.ts'
import { stationsFromSizes } from './stations-from-sizes.ts'

const powerboat: HullSizes = { form: 'hard-chine', lengthOverall: 7.7, beam: 2.5, freeboardStem: 1.25 }
const full: HullSizes = {
  ...powerboat,
  lengthWaterline: 6.7,
  beamTransom: 2.3,
  draft: 0.42,
  freeboardMid: 1,
  freeboardStern: 0.9,
  deadrise: 0.35,
  deadriseTransom: 0.3,
  chineBeam: 2.1,
}

const hullOf = (sizes: HullSizes) => {
  const result = hullFromSizes(sizes)
  if (!result.ok) throw new Error(JSON.stringify(result.faults))
  return result.hull
}

const codes = (sizes: HullSizes) => stationsFromSizes(sizes).notes.map((note) => note.code)

describe('a hull from sizes', () => {
  it('has the sizes it was asked for', () => {
    const got = hullOf(full).particulars
    expect(got.lengthOverall).toBeCloseTo(7.7, 9)
    expect(got.lengthWaterline).toBeCloseTo(6.7, 2)
    expect(got.beamOverall).toBeCloseTo(2.5, 2)
    expect(got.draft).toBeCloseTo(0.42, 3)
    expect(got.freeboardStem).toBeCloseTo(1.25, 9)
    expect(got.freeboardMid).toBeCloseTo(1, 3)
    expect(got.freeboardStern).toBeCloseTo(0.9, 9)
  })

  it('has its deadrise and its transom where they were asked for', () => {
    const { stations } = stationsFromSizes(full)
    const angle = (i: number) =>
      Math.atan2(stations[i]!.points[1]!.z - stations[i]!.points[0]!.z, stations[i]!.points[1]!.y)
    expect(angle(0)).toBeCloseTo(0.3, 9)
    expect(stations[0]!.points.at(-1)!.y).toBeCloseTo(1.15, 9)
    const middle = stations.findIndex((station) => station.x > 7.7 / 2)
    expect(angle(middle)).toBeCloseTo(0.35, 1)
  })

  it('says of every size whether it was assumed', () => {
    expect(codes(full)).toEqual(['boat.shapeAssumed'])
    expect(codes(powerboat)).toEqual([
      'boat.lengthWaterlineAssumed',
      'boat.beamTransomAssumed',
      'boat.freeboardMidAssumed',
      'boat.freeboardSternAssumed',
      'boat.draftAssumed',
      'boat.chineBeamAssumed',
      'boat.deadriseAssumed',
      'boat.deadriseTransomAssumed',
      'boat.shapeAssumed',
    ])
  })

  it('numbers its stations from the stem, with a chine on a hard-chine hull only', () => {
    const { stations } = stationsFromSizes(powerboat)
    expect([stations[0]!.id, stations.at(-1)!.id]).toEqual(['20', '0'])
    expect(stations[5]!.points[1]!.knuckle).toBe('chine')
    const round = stationsFromSizes({ ...powerboat, form: 'round-bilge' }).stations
    expect(round[5]!.points.every((point) => point.knuckle === undefined)).toBe(true)
  })

  it('works sizes out of one another where it can', () => {
    const { draft: _, ...noDraft } = full
    const worked = stationsFromSizes({ ...noDraft, chineHeight: -0.05 }).notes
    const draft = Math.tan(0.35) * 1.05 + 0.05
    expect(worked[0]).toMatchObject({ code: 'boat.draftWorked', data: { valueM: expect.closeTo(draft, 12) } })

    const { chineBeam: __, ...noChine } = full
    const flared = stationsFromSizes({ ...noChine, flare: 0.2 }).notes
    const chine = flared.find((note) => note.code === 'boat.chineBeamWorked')!.data.valueM as number
    const rise = 1 + 0.42 - Math.tan(0.35) * (chine / 2)
    expect(Math.atan2((2.5 - chine) / 2, rise)).toBeCloseTo(0.2, 9)
  })

  it('takes the heights and beams where an angle contradicts them, and says so', () => {
    expect(codes({ ...full, chineHeight: 0.1 })).toContain('boat.deadriseDisagrees')
    expect(codes({ ...full, flare: 0.6 })).toContain('boat.flareDisagrees')
    expect(codes({ ...full, chineHeight: Math.tan(0.35) * 1.05 - 0.42 })).toEqual(['boat.shapeAssumed'])
  })
})

describe('sizes that make no boat', () => {
  it.each([
    ['no beam', { beam: 0 }, 'boat.sizeOutOfRange', 'beam'],
    ['a negative beam', { beam: -2.5 }, 'boat.sizeOutOfRange', 'beam'],
    ['a length that is no number', { lengthOverall: Number.NaN }, 'boat.sizeNotNumber', 'lengthOverall'],
    [
      'an endless freeboard',
      { freeboardStem: Number.POSITIVE_INFINITY },
      'boat.sizeNotNumber',
      'freeboardStem',
    ],
    ['a waterline longer than the boat', { lengthWaterline: 8 }, 'boat.sizeOutOfRange', 'lengthWaterline'],
    ['a transom wider than the boat', { beamTransom: 2.6 }, 'boat.sizeOutOfRange', 'beamTransom'],
    ['a bottom like a wall', { deadrise: 1.2 }, 'boat.angleOutOfRange', 'deadrise'],
  ] as const)('are refused: %s', (_, wrong, code, size) => {
    const { stations, notes } = stationsFromSizes({ ...powerboat, ...wrong })
    expect(stations).toEqual([])
    expect(notes.map((note) => [note.code, note.severity, note.data.size])).toEqual([[code, 'fault', size]])
    expect(hullFromSizes({ ...powerboat, ...wrong }).ok).toBe(false)
  })

  it('are refused when the chine would stand over the sheer', () => {
    const { stations, notes } = stationsFromSizes({ ...full, chineHeight: 1.2 })
    expect(stations).toEqual([])
    expect(notes.map((note) => note.code)).toContain('boat.chineOutsideSection')
  })

  it('never throw, whatever they are', () => {
    const any = fc.oneof(fc.double(), fc.double({ min: 0, max: 10 }))
    const names = [
      'lengthWaterline',
      'beamTransom',
      'draft',
      'freeboardMid',
      'deadrise',
      'chineBeam',
      'chineHeight',
      'flare',
    ]
    fc.assert(
      fc.property(
        any,
        any,
        any,
        fc.dictionary(fc.constantFrom(...names), any),
        (lengthOverall, beam, freeboardStem, more) => {
          const result = hullFromSizes({ form: 'hard-chine', lengthOverall, beam, freeboardStem, ...more })
          expect(result.ok || result.faults.length > 0).toBe(true)
        },
      ),
      { numRuns: 300 },
    )
  })
})

describe('sensible sizes', () => {
  const share = (min: number, max: number) => fc.double({ min, max, noNaN: true })

  it('always make a hull, between the box round it and nothing', () => {
    const sizes = fc.record({
      form: fc.constantFrom('hard-chine' as const, 'round-bilge' as const),
      lengthOverall: share(4, 14),
      slender: share(0.25, 0.42),
      stem: share(0.1, 0.18),
      waterline: share(0.75, 1),
      transom: share(0, 1),
    })
    fc.assert(
      fc.property(sizes, ({ form, lengthOverall, slender, stem, waterline, transom }) => {
        const beam = slender * lengthOverall
        const { particulars } = hullOf({
          form,
          lengthOverall,
          beam,
          freeboardStem: stem * lengthOverall,
          lengthWaterline: waterline * lengthOverall,
          beamTransom: transom * beam,
        })
        const { lengthWaterline, beamWaterline, draft, displacedVolume } = particulars
        const block = displacedVolume / (lengthWaterline * beamWaterline * draft)
        expect(block).toBeGreaterThan(0.2)
        expect(block).toBeLessThan(0.75)
        expect(particulars.sheerPlanArea / (lengthOverall * beam)).toBeGreaterThan(0.55)
        expect(particulars.sheerPlanArea / (lengthOverall * beam)).toBeLessThan(0.95)
      }),
      { numRuns: 40 },
    )
  })
})
