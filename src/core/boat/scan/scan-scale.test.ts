import { describe, expect, it } from 'vitest'
import { guessUnit, scaleByTape } from './scan-scale.ts'

describe('the unit of a scan', () => {
  it('is guessed from its size, and told as a guess with what else it could be', () => {
    expect(guessUnit(7700, undefined)).toMatchObject({ unit: 'mm', length: 7.7, others: [] })
    expect(guessUnit(7.7, undefined)).toMatchObject({ unit: 'm', others: ['ft'] })
    expect(guessUnit(303, undefined)).toMatchObject({ unit: 'in', others: ['cm'] })
    expect(guessUnit(25.3, undefined).unit).toBe('ft')
    expect(guessUnit(7700, undefined).notes).toMatchObject([
      { code: 'boat.scanUnitGuessed', severity: 'assumed' },
    ])
  })

  it('is what the file says where it says it', () => {
    expect(guessUnit(0.77, 'm')).toEqual({ unit: 'm', length: 0.77, others: [], notes: [] })
  })
})

describe('a taped length', () => {
  it('puts the scale right, 1 % as usual, and says so when it was 4 %', () => {
    // trade.md, section 11, row 22: a scan of a telephone is about 1 % off.
    expect(scaleByTape({ seen: 7.575, taped: 7.5 })).toMatchObject({
      ok: true,
      notes: [{ code: 'boat.scanScalePut' }],
    })
    expect(scaleByTape({ seen: 7.8, taped: 7.5 })).toMatchObject({
      ok: true,
      notes: [{ code: 'boat.scanScaleFarOff' }],
    })
  })

  it('is refused beyond 10 %, and when it is no length', () => {
    for (const [seen, taped] of [
      [7.5, 8.3],
      [7.5, 6.7],
      [0, 7.5],
      [7.5, Number.NaN],
    ] as const)
      expect(scaleByTape({ seen, taped })).toMatchObject({
        ok: false,
        notes: [{ code: 'boat.scanScaleRefused' }],
      })
  })
})
