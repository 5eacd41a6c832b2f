import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { followed } from '../../../../test/support/followed-pours.ts'
import { type ChainInput, chainPours, type PotClock, poursNeeded, workingMinutes } from './chain-pours.ts'

const pot =
  (life: number, induction = 0) =>
  (): PotClock => ({ life, induction })
const chained = (areas: readonly number[], rest: Partial<ChainInput> = {}) =>
  chainPours({
    runs: areas.map((area) => ({ area })),
    start: 480,
    pace: 7 / 60,
    lead: 5,
    potAt: pot(120),
    ...rest,
  })

describe('chainPours', () => {
  it('takes two mixes for the 28 m² that outlasted one', () => {
    // SOURCE: trade record of a 28 m² hull, two people, 4.5 h against a pot of 2 to 3 h: needs 2 mixes.
    const record = { minutes: 4.5 * 60, at: 0 }
    expect(poursNeeded({ lead: 5, potAt: pot(180, 15) }, record)).toBe(2)
    expect(poursNeeded({ lead: 5, potAt: pot(180, 30) }, record)).toBe(2)
    expect(poursNeeded({ lead: 5, potAt: pot(120, 15) }, record)).toBe(3)
  })

  it('mixes the next so long before the last ends as it has to stand, and five minutes', () => {
    const pours = chained([14], { potAt: pot(120, 20) })
    expect(pours.map(({ mixAt, from, end, until }) => [mixAt, from, end, until])).toEqual([
      [455, 480, 540, 575],
      [515, 540, 600, 635],
    ])
    expect(pours[1]!.mixAt).toBe(pours[0]!.end - 20 - 5)
    expect(pours.map(({ intoWet }) => intoWet)).toEqual([false, true])
  })

  it('lets short runs share a pour and ends it where a run ends', () => {
    const pours = chained([3, 3, 8, 12], { pace: 6 / 60, potAt: pot(95, 0) })
    expect(pours.map(({ stretches }) => stretches.map(({ run, area }) => [run, area]))).toEqual([
      [
        [0, 3],
        [1, 3],
      ],
      [[2, 8]],
      [[3, 6]],
      [[3, 6]],
    ])
  })

  it('pours paint without a pot life once', () => {
    const [only, ...more] = chained([9, 9], { potAt: pot(Number.POSITIVE_INFINITY) })
    expect(more).toEqual([])
    expect(only?.until).toBe(Number.POSITIVE_INFINITY)
  })

  it('leaves one pour, past its life, where the pot gives no time', () => {
    const [only, ...more] = chained([10], { potAt: pot(20, 20) })
    expect(more).toEqual([])
    expect(only!.end).toBeGreaterThan(only!.until)
  })

  it('never breaks a run, keeps to every pot, and stands each pour before it is wanted', () => {
    const cases = fc.record({
      areas: fc.array(fc.double({ min: 0.05, max: 40, noNaN: true }), { minLength: 1, maxLength: 6 }),
      pace: fc.double({ min: 1 / 60, max: 20 / 60, noNaN: true }),
      lead: fc.double({ min: 0, max: 15, noNaN: true }),
      induction: fc.double({ min: 0, max: 40, noNaN: true }),
      work: fc.array(fc.double({ min: 30, max: 300, noNaN: true }), { minLength: 24, maxLength: 24 }),
    })
    fc.assert(
      fc.property(cases, ({ areas, pace, lead, induction, work }) => {
        const potAt = (minute: number): PotClock => ({
          induction,
          life: induction + lead + work[Math.floor(minute / 60) % 24]!,
        })
        const input: ChainInput = { runs: areas.map((area) => ({ area })), start: 480, pace, lead, potAt }
        const pours = chainPours(input)
        const impossible = pours.some(({ end, until }) => end > until + 1e-6)
        // Only a run for which no number of pours will do is laid past its pot.
        if (impossible) {
          const bad = pours.filter(({ end, until }) => end > until + 1e-6)
          for (const { from, stretches } of bad)
            expect(poursNeeded(input, { minutes: stretches[0]!.area / pace, at: from })).toBeUndefined()
        } else expect(followed(pours, { runs: areas, pace, lead, wetEdge: 0 })).toEqual([])
        // No fewer would do: one less, and some piece of an even split outlasts its pot.
        for (const first of pours.filter(({ intoWet }) => !intoWet)) {
          const run = first.stretches.at(-1)!.run
          const own = pours.filter(({ stretches }) => stretches[0]!.run === run)
          if (own.length < 2) continue
          const minutes = areas[run]! / pace / (own.length - 1)
          const fits = own
            .slice(1)
            .every((_, at) => workingMinutes(potAt(own[0]!.from + at * minutes), lead) >= minutes + 1e-6)
          expect(fits).toBe(false)
        }
      }),
    )
  })

  it('is seen through by the slow way when a card is wrong', () => {
    const pours = chained([14], { potAt: pot(120, 20) })
    const asked = { runs: [14], pace: 7 / 60, lead: 5, wetEdge: 0 }
    const [first, second] = [pours[0]!, pours[1]!]
    expect(followed([first, { ...second, mixAt: second.mixAt + 1 }], asked)).toEqual(['not stood'])
    expect(followed([first, { ...second, from: second.from + 1 }], asked)).toEqual(['gap in a run'])
    expect(followed([{ ...first, life: 80 }, second], asked)).toEqual(['pot past its life'])
    expect(followed([first], asked)).toEqual(['not covered'])
    expect(followed(pours, { ...asked, breakMinutes: 5 })).toEqual(['gap in a run'])
  })
})
