import { describe, expect, it } from 'vitest'
import { quoteWatch } from './quote-watch.ts'

const codes = (forecastCoins: number): string[] =>
  quoteWatch({ quoteCoins: 1_000_000, forecastCoins }).map((note) => note.code)

describe('quoteWatch', () => {
  it.each([
    [900_000, []],
    [1_099_999, []],
    [1_100_000, ['money.forecastOverQuote']],
    [1_149_999, ['money.forecastOverQuote']],
    [1_150_000, ['money.forecastFarOverQuote']],
    [2_000_000, ['money.forecastFarOverQuote']],
  ])('answers a forecast of %s on a quote of 1000000 with %s', (forecast, expected) => {
    expect(codes(forecast)).toEqual(expected)
  })

  it('says by how much', () => {
    const [note] = quoteWatch({ quoteCoins: 200, forecastCoins: 250 })
    expect(note?.data).toEqual({ quoteCoins: 200, forecastCoins: 250, overCoins: 50, overShare: 0.25 })
  })

  it('has nothing to compare with while there is no quote', () => {
    expect(quoteWatch({ quoteCoins: 0, forecastCoins: 100 })).toEqual([])
  })
})
