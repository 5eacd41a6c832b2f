import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { edgePointAt, loftLineAt, loftParameterAt, rowPointAt } from '#core/geometry'
import type { Hull } from './hull.ts'
import { hullFromSizes } from './hull-from-sizes.ts'
import type { HullSizes } from './hull-sizes.ts'

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

const notesOf = (sizes: HullSizes) => {
  const result = hullFromSizes(sizes)
  return result.ok ? result.notes : result.faults
}

const codes = (sizes: HullSizes): readonly string[] => notesOf(sizes).map((note) => note.code)

/** A tenth of a millimetre. */
const exact = 1e-4

const sheerAt = (hull: Hull, x: number) =>
  rowPointAt(loftLineAt(hull.surface, loftParameterAt(hull.surface, x)), {
    strip: hull.edges.length - 1,
    v: 1,
  })

const chineAt = (hull: Hull, x: number) => edgePointAt(hull.surface, 1, loftParameterAt(hull.surface, x))
const keelAt = (hull: Hull, x: number) => edgePointAt(hull.surface, 0, loftParameterAt(hull.surface, x))

/** The surface searched densely, without what the loft itself says of its extremes. */
const searched = (hull: Hull) => {
  const places = Array.from({ length: 20001 }, (_, i) => i / 20000)
  const keel = places.map((u) => edgePointAt(hull.surface, 0, u))
  const dry = (i: number) => keel[i]!.z > 0
  const cross = (i: number) => {
    const [a, b] = [keel[i]!, keel[i + 1]!]
    return a.x + ((b.x - a.x) * a.z) / (a.z - b.z)
  }
  const crossings = places.flatMap((_, i) =>
    i + 1 < places.length && dry(i) !== dry(i + 1) ? [cross(i)] : [],
  )
  const aft = dry(0) ? crossings[0]! : keel[0]!.x
  const fore = dry(keel.length - 1) ? crossings.at(-1)! : keel.at(-1)!.x
  const strips = hull.edges.length
  return {
    lengthWaterline: fore - aft,
    beam: 2 * Math.max(...places.map((u) => edgePointAt(hull.surface, strips, u).y)),
    draft: -Math.min(...keel.map((point) => point.z)),
  }
}

describe('a hull from sizes', () => {
  const share = (min: number, max: number) => fc.double({ min, max, noNaN: true })

  it('has on its surface every size it was asked for, to a tenth of a millimetre', () => {
    const asked = fc.record({
      form: fc.constantFrom('hard-chine' as const, 'round-bilge' as const),
      lengthOverall: share(3.5, 14),
      slender: share(0.22, 0.45),
      waterline: fc.oneof(share(0.68, 1), fc.constant(1)),
      transom: fc.oneof(share(0, 1), fc.constantFrom(0, 1)),
      draft: share(0.03, 0.09),
      stem: share(0.1, 0.2),
      mid: share(0.7, 1),
      stern: share(0.7, 1),
      chine: share(0.7, 1),
      chineHeight: share(-0.3, 0.3),
    })
    fc.assert(
      fc.property(asked, (some) => {
        const { form, lengthOverall } = some
        const beam = some.slender * lengthOverall
        const freeboardStem = some.stem * lengthOverall
        const sizes = {
          form,
          lengthOverall,
          beam,
          lengthWaterline: some.waterline * lengthOverall,
          beamTransom: some.transom * beam,
          draft: some.draft * lengthOverall,
          freeboardStem,
          freeboardMid: some.mid * freeboardStem,
          freeboardStern: some.stern * freeboardStem,
          chineBeam: some.chine * beam,
          chineHeight: some.chineHeight * some.draft * lengthOverall,
        }
        const hull = hullOf(sizes)
        const found = searched(hull)
        const { along } = hull.surface
        const middle = lengthOverall / 2
        expect(along.values.at(-1)! - along.values[0]!).toBeCloseTo(lengthOverall, 9)
        for (const size of ['lengthWaterline', 'beam', 'draft'] as const) {
          expect(Math.abs(found[size] - sizes[size]), size).toBeLessThan(exact)
        }
        expect(Math.abs(2 * sheerAt(hull, 0).y - sizes.beamTransom)).toBeLessThan(exact)
        expect(Math.abs(sheerAt(hull, 0).z - sizes.freeboardStern)).toBeLessThan(exact)
        expect(Math.abs(sheerAt(hull, middle).z - sizes.freeboardMid)).toBeLessThan(exact)
        expect(Math.abs(sheerAt(hull, lengthOverall).z - sizes.freeboardStem)).toBeLessThan(exact)
        if (form === 'hard-chine') {
          expect(Math.abs(2 * chineAt(hull, middle).y - sizes.chineBeam)).toBeLessThan(exact)
          expect(Math.abs(chineAt(hull, middle).z - sizes.chineHeight)).toBeLessThan(exact)
        }
        expect(Math.abs(hull.particulars.lengthWaterline - sizes.lengthWaterline)).toBeLessThan(exact)
        expect(Math.abs(hull.particulars.draft - sizes.draft)).toBeLessThan(exact)
        expect(hull.particulars.beamOverall).toBeGreaterThan(sizes.beam - exact)
      }),
      { numRuns: 150 },
    )
  }, 60_000)

  it('has its deadrise and its transom where they were asked for', () => {
    const hull = hullOf(full)
    const angleAt = (x: number) => {
      const [keel, chine] = [keelAt(hull, x), chineAt(hull, x)]
      return Math.atan2(chine.z - keel.z, chine.y)
    }
    expect(angleAt(0)).toBeCloseTo(0.3, 9)
    expect(angleAt(7.7 / 2)).toBeCloseTo(0.35, 6)
    expect(sheerAt(hull, 0).y).toBeCloseTo(1.15, 9)
  })

  it('says which size given does not go with the others', () => {
    const flat = { ...full, deadriseTransom: 1, freeboardStern: 0.1 }
    expect(codes(flat)).toEqual(['boat.angleNotReached', 'boat.shapeAssumed'])
    const deep: HullSizes = {
      ...powerboat,
      form: 'round-bilge',
      draft: 3.5,
      lengthWaterline: 3.9,
      freeboardStem: 0.1,
    }
    expect(codes(deep)).toContain('boat.sizeNotReached')
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
    const { stations } = hullOf(powerboat)
    expect([stations[0]!.id, stations.at(-1)!.id]).toEqual(['21', '0'])
    expect(stations[5]!.points[1]!.knuckle).toBe('chine')
    const round = hullOf({ ...powerboat, form: 'round-bilge' }).stations
    expect(round[5]!.points.every((point) => point.knuckle === undefined)).toBe(true)
  })

  it('works sizes out of one another where it can', () => {
    const { draft: _, ...noDraft } = full
    const worked = notesOf({ ...noDraft, chineHeight: -0.05 })
    const draft = Math.tan(0.35) * 1.05 + 0.05
    expect(worked[0]).toMatchObject({ code: 'boat.draftWorked', data: { valueM: expect.closeTo(draft, 12) } })

    const { chineBeam: __, ...noChine } = full
    const flared = notesOf({ ...noChine, flare: 0.2 })
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
    const sizes = { ...powerboat, ...wrong }
    expect(notesOf(sizes).map((note) => [note.code, note.severity, note.data.size])).toEqual([
      [code, 'fault', size],
    ])
    expect(hullFromSizes(sizes).ok).toBe(false)
  })

  it('are refused when the chine would stand over the sheer', () => {
    const sizes = { ...full, chineHeight: 1.2 }
    expect(hullFromSizes(sizes).ok).toBe(false)
    expect(codes(sizes)).toContain('boat.chineOutsideSection')
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
