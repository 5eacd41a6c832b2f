import { describe, expect, it } from 'vitest'
import { areaBetween } from '#core/boat'
import type { RawDocument } from '#job'
import { plan } from '#plan'
import { planInput, projectRaw, sampleRaw } from '../../test/support/samples.ts'

type Cells = Readonly<Record<string, string>>

const raw = sampleRaw('open-powerboat')

/** The sample with zones and marks of its hull as asked; its own stripe stays. */
const planWith = (
  zones: Readonly<Record<string, Cells>>,
  marks: Readonly<Record<string, Cells>> = {},
  girths: Readonly<Record<string, Cells>> = {},
) => {
  const document: RawDocument = {
    ...raw,
    work: {
      ...raw.work,
      zones: { ...raw.work.zones, ...zones },
      marks: { ...raw.work.marks, ...marks },
      girths,
    },
  }
  return plan(planInput(projectRaw(document), undefined))
}
type Made = ReturnType<typeof planWith>

const area = ({ surfaces }: Made, id: string): number =>
  surfaces.zones.find((zone) => zone.id === id)?.areaM2 ?? Number.NaN
const sides = (made: Made): number => area(made, 'topsides-port') + area(made, 'topsides-starboard')
const codes = (made: Made): readonly string[] => made.notes.map(({ code }) => code)
const bottom = (more: Cells = {}) => ({ bottom: { kind: 'bottom', name: 'Bottom', ...more } })
const bootTop = (more: Cells = {}) => ({ band: { kind: 'boot-top', name: 'Boot-top', ...more } })
const line = (zone: string, height: string) => ({
  line: { kind: 'tape line', name: 'Line', zone, heightStem: height, heightLow: height, heightStern: height },
})

describe('the bottom', () => {
  it('ends where it is said to, and what it loses the sides and the transom gain', () => {
    const chine = planWith(bottom({ upTo: 'chine' }))
    for (const other of [
      planWith(bottom({ upTo: 'waterline' })),
      planWith(bottom({ upTo: 'boot stripe' })),
    ]) {
      const whole = (made: Made) => area(made, 'bottom') + sides(made) + area(made, 'transom')
      expect(area(other, 'bottom')).not.toBeCloseTo(area(chine, 'bottom'), 1)
      expect(whole(other)).toBeCloseTo(whole(chine), 6)
    }
    expect(planWith(bottom()).surfaces.zones).toEqual(chine.surfaces.zones.map((zone) => zone))
  })

  it('ends at a tape line struck for it, whatever else is said', () => {
    const level = planWith(bottom({ upTo: 'chine' }), line('bottom', '0 m'))
    expect(area(level, 'bottom')).toBeCloseTo(area(planWith(bottom({ upTo: 'waterline' })), 'bottom'), 4)
    const higher = planWith(bottom(), line('bottom', '0.1 m'))
    const { hull } = higher.surfaces
    const strip = areaBetween(hull!, { zLow: 0, zHigh: 0.1 })
    expect(area(higher, 'bottom') - area(level, 'bottom')).toBeCloseTo(strip.total, 6)
    expect(higher.marks.lines[0]!.table.rows.length).toBeGreaterThan(10)
  })

  it('takes from taped sides what their cut takes from the drawn ones', () => {
    const girths = Object.fromEntries(
      [0.5, 2, 3.5, 5, 6.5].map((x, k) => [
        `girth-${k}`,
        { fromStern: `${x} m`, sheerToWater: '1.10 m', waterToChine: '0.10 m' },
      ]),
    )
    const taped = (zones: Parameters<typeof planWith>[0]) => planWith(zones, {}, girths)
    const [whole, cut] = [taped(bottom()), taped({ ...bottom({ upTo: 'waterline' }), ...bootTop() })]
    const [drawnWhole, drawnCut] = [
      planWith(bottom()),
      planWith({ ...bottom({ upTo: 'waterline' }), ...bootTop() }),
    ]
    expect(sides(whole)).not.toBeCloseTo(sides(drawnWhole), 1)
    expect(sides(cut) / sides(whole)).toBeCloseTo(sides(drawnCut) / sides(drawnWhole), 9)
    expect(sides(cut)).toBeLessThan(0.99 * sides(whole))
  })

  it('says so when the stripe it should end at is not there', () => {
    const { marks: _, ...rest } = raw.work
    const made = plan(
      planInput(
        projectRaw({
          ...raw,
          work: { ...rest, zones: { ...raw.work.zones, ...bottom({ upTo: 'boot stripe' }) } },
        }),
        undefined,
      ),
    )
    expect(codes(made)).toContain('surfaces.stripeMissing')
    expect(area(made, 'bottom')).toBeGreaterThan(0)
  })
})

describe('a boot-top', () => {
  it('runs from the bottom to the top of the stripe, across the transom, and is taken off the sides', () => {
    const before = planWith(bottom({ upTo: 'waterline' }))
    const made = planWith({ ...bottom({ upTo: 'waterline' }), ...bootTop() })
    const band = area(made, 'band')
    const [high, low] = [made.marks.stripes[0]!.table.rows[0]!.upperM, 0]
    const girth = 2 * before.surfaces.hull!.particulars.lengthWaterline + 2.3
    expect(band).toBeGreaterThan(0.8 * (high - low) * girth)
    expect(band).toBeLessThan(2 * (high - low) * girth)
    expect(sides(made) + area(made, 'transom') + band).toBeCloseTo(sides(before) + area(before, 'transom'), 6)
    expect(area(made, 'bottom')).toBeCloseTo(area(before, 'bottom'), 9)
    expect(made.surfaces.zones.find(({ id }) => id === 'band')!.perimeterM).toBeGreaterThan(2 * girth * 0.9)
  })

  it('is wet at rest unless its lower edge stands clear of the water', () => {
    const gloss = { gloss: { name: 'Gloss', zones: 'band', sheet: 'hull-gloss', coats: '2' } }
    const blisters = (height: string) => {
      const document: RawDocument = {
        ...raw,
        work: {
          ...raw.work,
          zones: { ...raw.work.zones, ...bottom(), ...bootTop({ existing: 'two-part' }) },
          marks: { ...raw.work.marks, ...line('bottom', height) },
          layers: gloss,
        },
      }
      const { stacks } = plan(planInput(projectRaw(document), undefined)).bonds
      const { faults } = stacks.find(({ zones }) => zones.includes('band'))!
      return faults.some((fault) => fault.kind === 'fails' && fault.reason === 'blisters')
    }
    expect(['0 m', '0.03 m', '0.05 m', '0.055 m'].map(blisters)).toEqual([true, true, false, false])
  })

  it('over a chine begins at the chine', () => {
    const before = planWith(bottom({ upTo: 'chine' }))
    const made = planWith({ ...bottom({ upTo: 'chine' }), ...bootTop() }, line('band', '0.3 m'))
    expect(area(made, 'bottom')).toBeCloseTo(area(before, 'bottom'), 9)
    expect(area(made, 'band')).toBeGreaterThan(1)
    expect(sides(made) + area(made, 'transom') + area(made, 'band')).toBeCloseTo(
      sides(before) + area(before, 'transom'),
      6,
    )
  })

  it('without a stripe or a line of its own is asked for one', () => {
    const { marks: _, ...rest } = raw.work
    const made = plan(
      planInput(
        projectRaw({ ...raw, work: { ...rest, zones: { ...raw.work.zones, ...bootTop() } } }),
        undefined,
      ),
    )
    expect(codes(made)).toEqual(
      expect.arrayContaining(['surfaces.stripeMissing', 'surfaces.zoneWithoutArea']),
    )
  })

  it('that would lie under the bottom or over the sheer is told, and nothing is lost of the rest', () => {
    const closed = planWith({ ...bottom({ upTo: 'waterline' }), ...bootTop() }, line('band', '-0.2 m'))
    expect(codes(closed)).toContain('boat.bootTopClosed')
    expect(sides(closed)).toBeCloseTo(sides(planWith(bottom({ upTo: 'waterline' }))), 6)
    const over = planWith({ ...bottom(), ...bootTop() }, line('band', '2.9 m'))
    expect(codes(over).some((code) => /stripeHeight|stripeOffHull/.test(code))).toBe(true)
    expect(sides(over)).toBeGreaterThan(5)
  })
})
