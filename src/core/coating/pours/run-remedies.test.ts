import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { PotClock } from './chain-pours.ts'
import { airThatDoes, type Crew, type RunInput, runFault, runRemedies } from './run-remedies.ts'

const alone: Crew = { people: 1, pace: 4 / 60, break: 5, most: 8 }
const pair: Crew = { people: 2, pace: 7 / 60, break: 0, most: Number.POSITIVE_INFINITY }
const run = (area: number, life: number, more: Partial<RunInput> = {}): RunInput => ({
  area,
  start: 0,
  lead: 5,
  wetEdge: 3,
  leastWork: 5,
  potAt: () => ({ induction: 0, life }),
  ...more,
})

describe('runFault', () => {
  it('lets one person lay eight square metres and no more', () => {
    expect(runFault(run(8, 600), alone)).toBeUndefined()
    expect(runFault(run(8.1, 600), alone)).toBe('width')
    expect(runFault(run(28, 600), pair)).toBeUndefined()
  })

  it('finds that one alone cannot mix in the middle of a run when the edge does not wait', () => {
    expect(runFault(run(6, 60), alone)).toBe('edge')
    expect(runFault(run(6, 60, { wetEdge: 5 }), alone)).toBeUndefined()
    expect(runFault(run(6, 60), pair)).toBeUndefined()
  })

  it('finds a pot that is mixed for longer than it is laid', () => {
    expect(runFault(run(1, 10), pair)).toBe('pot')
    expect(runFault(run(1, 11), pair)).toBeUndefined()
    expect(runFault(run(1, 5), pair)).toBe('pot')
    // From one pot it does not chain.
    expect(runFault(run(0.3, 10), pair)).toBeUndefined()
    expect(runFault(run(1, 10, { leastWork: 0 }), pair)).toBeUndefined()
  })
})

describe('runRemedies', () => {
  it('says what one alone can lay from one pot, in how many pieces, and how long it would have to last', () => {
    const { area, pieces, life, pair: two } = runRemedies(run(6, 60), { now: alone, pair })
    expect(area).toBeCloseTo((55 * 4) / 60, 12)
    expect(pieces).toBe(2)
    expect(life).toBeCloseTo(5 + 90, 12)
    expect(two?.minutes).toBeCloseTo((6 / 7) * 60, 9)
    expect(two?.pours).toBe(1)
  })

  it('gives no piece and no pair where the pot gives no time', () => {
    expect(runRemedies(run(6, 5), { now: alone, pair })).toMatchObject({ area: 0, pieces: 0 })
    expect(runRemedies(run(6, 5), { now: alone, pair }).pair).toBeUndefined()
  })

  it('never names a remedy that would not do', () => {
    const inputs = fc.record({
      area: fc.double({ min: 0.1, max: 40, noNaN: true }),
      life: fc.double({ min: 1, max: 400, noNaN: true }),
      induction: fc.double({ min: 0, max: 60, noNaN: true }),
      wetEdge: fc.double({ min: 1, max: 20, noNaN: true }),
    })
    fc.assert(
      fc.property(inputs, ({ area, life, induction, wetEdge }) => {
        const potAt = (): PotClock => ({ induction, life })
        const asked = run(area, life, { potAt, wetEdge })
        if (runFault(asked, alone) === undefined) return
        const remedies = runRemedies(asked, { now: alone, pair })
        if (remedies.area > 0)
          expect(runFault({ ...asked, area: area / remedies.pieces }, alone)).toBeUndefined()
        if (remedies.pair) expect(runFault(asked, pair)).toBeUndefined()
        const slower = { ...asked, potAt: (): PotClock => ({ induction, life: remedies.life + 1e-6 }) }
        expect(runFault({ ...slower, area: Math.min(area, 8) }, alone)).toBeUndefined()
      }),
    )
  })
})

describe('airThatDoes', () => {
  // Halving per 10 °C: 60 min at 20 °C are 120 at 10 °C.
  const potIn = (airC: number): PotClock => ({ induction: 0, life: 60 * 2 ** ((20 - airC) / 10) })

  it('finds the warmest whole degree whose pot lasts', () => {
    expect(airThatDoes({ life: 120, from: 24, least: 5, potIn, induction: 0 })).toBe(10)
    expect(airThatDoes({ life: 61, from: 24.6, least: 5, potIn, induction: 0 })).toBe(19)
    expect(airThatDoes({ life: 500, from: 24, least: 5, potIn, induction: 0 })).toBeUndefined()
  })

  it('counts that the pot has to stand for longer in the cold', () => {
    const stands = (airC: number): PotClock => ({ ...potIn(airC), induction: airC < 15 ? 30 : 10 })
    expect(airThatDoes({ life: 100, from: 20, least: 0, potIn: stands, induction: 10 })).toBe(10)
  })
})
