import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { currencies, minorDigitsOf, read, writeMoney } from './index.ts'

/** Points and commas, currency before and after, two signs for minus, other digits. */
const locales = [
  'en-US',
  'en-GB',
  'de-DE',
  'fr-FR',
  'sv-SE',
  'de-CH',
  'nb-NO',
  'pt-PT',
  'pl-PL',
  'ar-EG',
] as const

const coins = (text: string, currency?: string) =>
  read(text, 'money', { sign: 'any', ...(currency ? { currency } : {}) })

describe('reading money', () => {
  it.each([
    ['EUR 12.50', 1250, 'EUR'],
    ['12.50 EUR', 1250, 'EUR'],
    ['12.50eur', 1250, 'EUR'],
    ['12,50 €', 1250, 'EUR'],
    ['€12.5', 1250, 'EUR'],
    ['$12.50', 1250, 'USD'],
    ['US$ 12.50', 1250, 'USD'],
    ['$ -12.50', -1250, 'USD'],
    ['−$12.50', -1250, 'USD'],
    ['£1', 100, 'GBP'],
    ['C$2', 200, 'CAD'],
    ['$1,250', 125000, 'USD'],
    ['1,250 €', 125000, 'EUR'],
    ['1.250,75 €', 125075, 'EUR'],
    ['1,250,000 USD', 125000000, 'USD'],
    ['12.5000 EUR', 1250, 'EUR'],
    ['1/2 EUR', 50, 'EUR'],
    ['1e3 EUR', 100000, 'EUR'],
    ['JPY 1250', 1250, 'JPY'],
    ['KWD 1.250', 1250, 'KWD'],
    ['about $12', 1200, 'USD'],
    ['1.15 EUR', 115, 'EUR'],
    ['90071992547409.91 EUR', 9007199254740991, 'EUR'],
  ])('reads %s as %i coins of %s', (text, value, currency) => {
    expect(coins(text)).toMatchObject({ ok: true, quantity: { value, currency, unit: currency, text } })
  })

  it.each([
    ['12.50', 'units.missingUnit', {}],
    ['12.505 EUR', 'units.ambiguous', { readings: '"12505 EUR", "12.51 EUR"' }],
    ['12.5051 EUR', 'units.tooFine', { decimals: 2, currency: 'EUR' }],
    ['0.125 EUR', 'units.tooFine', {}],
    ['1/3 EUR', 'units.tooFine', {}],
    ['JPY 12.5', 'units.tooFine', { decimals: 0 }],
    ['KWD 1,250', 'units.ambiguous', { readings: '"1250", "1.250"' }],
    ['12 kr', 'units.ambiguous', { readings: '"SEK 12", "NOK 12", "DKK 12", "ISK 12"' }],
    ['¥500', 'units.ambiguous', {}],
    ['12 XQZ', 'units.unknownUnit', { got: 'XQZ' }],
    ['12 kg', 'units.wrongDimension', { got: 'mass' }],
    ['EUR', 'units.notANumber', {}],
    ['EUR 12 USD', 'units.leftOver', { got: 'USD' }],
    ['EUR 12 each', 'units.leftOver', {}],
    ['-$-5', 'units.notANumber', {}],
    ['90071992547409.92 EUR', 'units.outOfRange', {}],
  ])('refuses %s: %s', (text, code, data) => {
    expect(coins(text)).toMatchObject({ ok: false, fault: { code, data } })
  })

  it('takes a negative amount only where the caller allows one', () => {
    expect(read('-5 EUR', 'money')).toMatchObject({ ok: false, fault: { code: 'units.negative' } })
  })

  it('takes the currency of the caller for an amount without one', () => {
    expect(coins('12.50', 'SEK')).toMatchObject({ ok: true, quantity: { value: 1250, currency: 'SEK' } })
    expect(coins('$12.50', 'SEK')).toMatchObject({ ok: true, quantity: { currency: 'USD' } })
  })
})

describe('writing money', () => {
  it.each([
    [1250, 'USD', 'en-US', '$12.50'],
    [1250, 'GBP', 'en-GB', '£12.50'],
    [1250, 'EUR', 'de-DE', '12,50\u2009€'],
    [1250, 'EUR', 'fr-FR', '12,50\u2009€'],
    [1250050, 'SEK', 'sv-SE', '12\u202f500,50\u2009SEK'],
    [-1250, 'SEK', 'en-US', '\u2212SEK\u200912.50'],
    [125000, 'USD', 'en-US', '$1250.00'],
    [1250, 'JPY', 'en-US', 'JPY\u20091250'],
    [5, 'EUR', 'en-GB', '€0.05'],
    [0, 'EUR', 'de-DE', '0,00\u2009€'],
    [1250, 'KWD', 'de-DE', '1,2500\u2009KWD'],
  ])('writes %i coins of %s in %s', (value, currency, locale, text) => {
    expect(writeMoney(value, currency, locale)).toBe(text)
  })

  it('refuses a broken coin and an unknown currency', () => {
    expect(() => writeMoney(12.5, 'EUR', 'en-US')).toThrow('money: not a whole number')
    expect(() => writeMoney(12, 'XQZ', 'en-US')).toThrow('money: unknown unit')
  })

  it('writes what reads back to the same coin, in every currency and locale', () => {
    for (const locale of locales) {
      const holds = fc.property(fc.maxSafeInteger(), fc.constantFrom(...currencies), (coinsWritten, code) => {
        const value = coinsWritten === 0 ? 0 : coinsWritten
        const reading = coins(writeMoney(value, code, locale))
        expect(reading).toMatchObject({ ok: true, quantity: { value, currency: code } })
      })
      fc.assert(holds, { numRuns: 50, seed: 20270412 })
    }
  })
})

describe('the smallest coin', () => {
  it('has no digits for the yen, three for the Kuwaiti dinar and two for most', () => {
    expect(['JPY', 'KRW', 'ISK', 'KWD', 'BHD', 'CLF', 'EUR', 'USD', 'SEK'].map(minorDigitsOf)).toEqual([
      0, 0, 0, 3, 3, 4, 2, 2, 2,
    ])
    expect(minorDigitsOf('XQZ')).toBeUndefined()
  })
})
