import { describe, expect, it } from 'vitest'
import { inSi } from '../../test/written-cell.ts'
import { abrasives } from './abrasives.ts'
import { type ConsumableId, consumables } from './consumables.ts'
import { finishStandards } from './finish-standards.ts'
import { gritLadder } from './grit-ladder.ts'
import { limits } from './limits.ts'

const grain = (id: string | undefined): number => inSi(abrasives[id as 'P80']?.cells.size ?? '', 'length')

describe('abrasives', () => {
  it.each(['FEPA', 'CAMI'])('of %s get finer as the number goes up', (system) => {
    const grades = Object.entries(abrasives)
      .filter(([, row]) => row.cells.system === system)
      .map(([id, row]) => ({
        grade: Number(id.replace('P', '')),
        size: inSi(row.cells.size ?? '', 'length'),
      }))
      .sort((one, other) => one.grade - other.grade)
    expect(grades.length).toBe(16)
    for (const [at, { size }] of grades.entries()) expect(size).toBeLessThan(grades[at - 1]?.size ?? 1)
  })

  it('count as the disc and the work of the same step', () => {
    for (const { cells } of Object.values(abrasives))
      expect(cells.rate).toBe(cells.disc?.replace('disc', 'sand'))
  })
})

describe('the grit ladder', () => {
  it('takes a grit between its coarsest and its finest', () => {
    for (const [purpose, { cells }] of Object.entries(gritLadder)) {
      expect(grain(cells.grit), purpose).toBeLessThanOrEqual(grain(cells.coarsest))
      expect(grain(cells.grit), purpose).toBeGreaterThanOrEqual(grain(cells.finest))
    }
  })

  it('ends finer under a dark finish than under a light one', () => {
    expect(gritLadder['before-finish'].cells.grit).toBe('P320')
    expect(gritLadder['before-dark-finish'].cells.grit).toBe('P400')
  })

  it('gets finer from grinding to the sanding between coats of finish', () => {
    const rungs = [
      'grind-laminate',
      'before-filler',
      'before-primer',
      'block-primer',
      'before-finish',
      'between-finishes',
    ] as const
    const sizes = rungs.map((rung) => grain(gritLadder[rung].cells.grit))
    expect(sizes).toEqual([...sizes].sort((one, other) => other - one))
  })
})

describe('consumables', () => {
  it('say how much by exactly one of pieces, volume and length', () => {
    for (const [id, { cells }] of Object.entries(consumables))
      expect([cells.pieces, cells.volume, cells.length].filter((cell) => cell !== undefined).length, id).toBe(
        1,
      )
  })

  it('go by area where a surface is worked, by length where an edge is masked, else by the time or pour', () => {
    for (const [id, { cells }] of Object.entries(consumables)) {
      const surface = ['sanding pass', 'wiping', 'coat'].includes(cells.each ?? '')
      expect(cells.area !== undefined, id).toBe(surface)
      expect(cells.run !== undefined, id).toBe(cells.each === 'masking')
    }
  })

  it('give the amounts of the trade for a square metre', () => {
    const perM2 = (id: ConsumableId) =>
      inSi(consumables[id].cells.pieces ?? '', 'number') / inSi(consumables[id].cells.area ?? '', 'area')
    const ids = ['disc-80', 'disc-120', 'disc-220', 'disc-320', 'long-board-strip'] as const
    expect(ids.map(perM2)).toEqual([0.7, 0.5, 0.4, 0.4, 0.5])
    expect(1 / perM2('foam-cover')).toBeCloseTo(14, 9)
  })
})

describe('finish standards', () => {
  it('ask for more work the nearer the eye comes', () => {
    const { 'work boat': low, tidy, best } = finishStandards
    const seen = [low, tidy, best].map(({ cells }) => ({
      from: inSi(cells.judgedFrom ?? '', 'length'),
      rounds: Number(cells.blockRounds) + Number(cells.pinholeRounds) + Number(cells.longBoardPasses),
    }))
    expect(seen.map(({ from }) => from)).toEqual([5, 3, 1])
    expect(seen.map(({ rounds }) => rounds)).toEqual([2, 4, 7])
  })
})

describe('limits', () => {
  it('put every warning before its stop', () => {
    const { windGo, windStop, rainRisky, rainStop, quoteWarn, quoteAlarm, humidityBest, humidityMost } =
      limits.cells
    const pairs = [
      [windGo, windStop, 'speed'],
      [rainRisky, rainStop, 'share'],
      [quoteWarn, quoteAlarm, 'share'],
      [humidityBest, humidityMost, 'share'],
      [limits.cells.pullBeadLeast, limits.cells.pullBeadMost, 'time'],
      [limits.cells.pullTwoPartLeast, limits.cells.pullTwoPartMost, 'time'],
    ] as const
    for (const [first, last, dimension] of pairs)
      expect(inSi(first ?? '', dimension)).toBeLessThan(inSi(last ?? '', dimension))
  })

  it('let covers touch last', () => {
    const days = (text: string | undefined) => inSi(text ?? '', 'time') / 24
    const { coverTwoPart, coverOnePart } = limits.cells
    expect([coverTwoPart, coverOnePart].map(days)).toEqual([14, 28])
  })
})
