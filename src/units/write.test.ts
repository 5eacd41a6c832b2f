import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  type Dimension,
  dimensions,
  read,
  readOrThrow,
  unitsOf,
  write,
  writeAs,
  writeRatio,
} from './index.ts'

const seed = 20270412

/** Points and commas, two signs for minus, other digits. */
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

const us = { system: 'us', locale: 'en-US' } as const
const metric = { system: 'metric', locale: 'en-GB' } as const
const german = { system: 'metric', locale: 'de-DE' } as const
const plain = (text: string): string => text.replaceAll(/[\u2009\u00a0]/g, ' ').replaceAll('\u202f', '_')

describe('writing', () => {
  it.each([
    [7.72, 'length', metric, '7.72 m'],
    [7.72, 'length', german, '7,72 m'],
    [0.42, 'length', metric, '420 mm'],
    [5e-5, 'length', metric, '50 µm'],
    [0.9999, 'length', metric, '1 m'],
    [0, 'length', metric, '0 µm'],
    [-7.72, 'length', metric, '−7.72 m'],
    [7.7216, 'length', us, '25 ft 4 in'],
    [304.1875 * 0.0254, 'length', us, '25 ft 4 3/16 in'],
    [0.3048, 'length', us, '1 ft'],
    [11.97 * 0.0254, 'length', us, '1 ft'],
    [11.96 * 0.0254, 'length', us, '11 15/16 in'],
    [0.09258046, 'area', us, '1 ft²'],
    [0.9994999, 'workRate', metric, '1 h/m²'],
    [0.00635, 'length', us, '1/4 in'],
    [0.003175, 'length', us, '1/8 in'],
    [5.08e-5, 'length', us, '2 mil'],
    [0, 'length', us, '0 in'],
    [-7.7216, 'length', us, '−25 ft 4 in'],
    [12345.6, 'area', german, '12_346 m²'],
    [1234.56, 'area', german, '1235 m²'],
    [27.87, 'area', us, '300 ft²'],
    [0.00075, 'volume', metric, '750 ml'],
    [0.0025, 'volume', metric, '2.5 L'],
    [500, 'volume', metric, '500 m³'],
    [0.0037854, 'volume', us, '1 gal'],
    [0.000946353, 'volume', us, '1 qt'],
    [0.000118294, 'volume', us, '4 fl oz'],
    [0.3, 'mass', metric, '300 g'],
    [0.1134, 'mass', us, '4 oz av'],
    [2.268, 'mass', us, '5 lb'],
    [0.3, 'areicMass', metric, '300 g/m²'],
    [0.61, 'areicMass', us, '18 oz/yd²'],
    [1100, 'density', metric, '1.1 kg/L'],
    [9840, 'coverage', metric, '9.84 m²/L'],
    [9840, 'coverage', us, '401 ft²/gal'],
    [16.04, 'temperature', metric, '16 °C'],
    [-5.55, 'temperature', german, '−5,5 °C'],
    [15.5555555, 'temperature', us, '60 °F'],
    [5 / 3, 'temperatureDifference', us, '3 °F'],
    [-0.01, 'temperature', metric, '0 °C'],
    [5, 'speed', metric, '5 m/s'],
    [2.5, 'time', metric, '2 h 30 min'],
    [1.9999, 'time', metric, '2 h'],
    [0.99999, 'time', metric, '1 h'],
    [0.375, 'time', metric, '22.5 min'],
    [0.01, 'time', metric, '36 s'],
    [0, 'time', metric, '0 min'],
    [47.999, 'time', metric, '2 d'],
    [77, 'time', metric, '3 d 5 h'],
    [-2.5, 'time', metric, '−2 h 30 min'],
    [Math.PI / 40, 'angle', metric, '4.5°'],
    [0.45, 'share', metric, '45 %'],
    [0.05, 'volumeShare', metric, '50 ml/L'],
    [0.125, 'volumeShare', us, '4 fl oz/qt'],
    [400, 'volumeRate', metric, '400 m³/h'],
    [8, 'pace', metric, '8 m²/h'],
    [0.5, 'workRate', metric, '30 min/m²'],
    [101300, 'pressure', metric, '1013 hPa'],
    [5000, 'power', metric, '5 kW'],
    [2, 'ratio', metric, '2:1'],
    [0.5, 'ratio', metric, '1:2'],
    [100 / 45, 'ratio', german, '2,22:1'],
    [7.5, 'clock', metric, '07:30'],
    [7.5, 'clock', us, '7:30 am'],
    [0, 'clock', us, '12:00 am'],
    [12, 'clock', us, '12:00 pm'],
    [24, 'clock', us, '24:00'],
    [3, 'count', metric, '3'],
    [1e18, 'length', german, '1e18 m'],
  ] as const)('writes %d as %s', (value, dimension, options, text) => {
    expect(plain(write(value, dimension, options))).toBe(text)
  })

  it('puts a thin space before a unit and no-break spaces inside feet and inches', () => {
    expect(write(7.72, 'length', metric)).toBe('7.72\u2009m')
    expect(write(304.5 * 0.0254, 'length', us)).toBe('25\u2009ft\u00a04\u00a01/2\u2009in')
    expect(write(12345, 'area', us)).toBe('132\u202f880\u2009ft²')
  })

  it('adds a zero where a decimal comma with three digits would have two readings', () => {
    expect(plain(write(1.234, 'length', { ...german, digits: 4 }))).toBe('1,2340 m')
    expect(plain(write(1.234, 'length', { ...metric, digits: 4 }))).toBe('1.234 m')
    expect(plain(write(0.1234, 'number', { ...german, digits: 3 }))).toBe('0,123')
  })

  it('keeps zeros when a number of decimals is asked for', () => {
    expect(plain(write(7.7, 'length', { ...metric, decimals: 2 }))).toBe('7.70 m')
    expect(plain(write(16, 'temperature', { ...metric, decimals: 1 }))).toBe('16.0 °C')
  })

  it('refuses what cannot be written', () => {
    expect(() => write(Number.NaN, 'length', metric)).toThrow('length: not a number')
    expect(() => write(Number.POSITIVE_INFINITY, 'time', metric)).toThrow('time: not a number')
    expect(() => write(2.5, 'count', metric)).toThrow('count: not a whole number')
    expect(() => write(25, 'clock', metric)).toThrow('clock: out of range')
    expect(() => write(0, 'ratio', metric)).toThrow('ratio: out of range')
    expect(() => write(100, 'money', metric)).toThrow('money: missing unit')
  })
})

describe('writing in a named unit', () => {
  it.each([
    [5.08e-5, 'mil', '2 mil'],
    [7.7216, 'ft', '25.3 ft'],
    [7.7216, 'feet', '25.3 ft'],
    [0.457727591, 'oz/ft²', '1.5 oz/ft²'],
    [9840, 'm²/L', '9.84 m²/L'],
    [5.144444, 'kn', '10 kn'],
    [0.42 * 1000, 'g/L', '420 g/L'],
    [2.5, 'h', '2.5 h'],
    [0.0785398, '°', '4.5°'],
    [15.555555, '°F', '60 °F'],
    [0.018, 'g/kg', '18 g/kg'],
    [0.00454609, 'imp gal', '1 imp gal'],
    [8000, 'ml/m²', '125 ml/m²'],
  ])('writes %d in %s', (value, unit, text) => {
    expect(plain(writeAs(value, unit, { locale: 'en-US' }))).toBe(text)
  })

  it('leaves out the zero of the scale for a difference', () => {
    expect(plain(writeAs(5, '°F', { locale: 'en-US', dimension: 'temperatureDifference' }))).toBe('9 °F')
  })

  it('refuses an unknown unit', () => {
    expect(() => writeAs(1, 'furlong', { locale: 'en-US' })).toThrow('unknown unit')
    expect(() => writeAs(1, 'kg', { locale: 'en-US', dimension: 'length' })).toThrow('wrong kind of unit')
    expect(() => writeAs(1, 'kWh', { locale: 'en-US' })).toThrow('wrong kind of unit')
    expect(() => writeAs(1, 'kg/s', { locale: 'en-US' })).toThrow('wrong kind of unit')
  })

  it('writes in every listed unit what reads back in it', () => {
    for (const dimension of dimensions) {
      if (['money', 'ratio', 'share'].includes(dimension)) continue
      for (const unit of unitsOf(dimension)) {
        const { value } = readOrThrow(`1.5 ${unit}`, dimension)
        const [amount] = plain(
          writeAs(value, unit, {
            locale: 'en-US',
            dimension,
          }),
        ).split(/[ °]/)
        expect.soft(`${amount} ${unit}`).toBe(`1.5 ${unit}`)
      }
    }
  })
})

describe('writing the parts of a ratio', () => {
  it('keeps them as they are', () => {
    expect(writeRatio([100, 45], { locale: 'de-DE' })).toBe('100:45')
    expect(writeRatio([2.5, 1], { locale: 'de-DE' })).toBe('2,5:1')
  })
})

/**
 * Half a unit of the third significant digit, relative to the value; half of the last place written for the
 * dimensions that have a fixed one (temperatures 0.1 degree, clock and long durations a minute, longer ones an
 * hour, feet and inches a sixteenth). One part in 1e12 more for the conversion there and back.
 */
const allowed = (value: number, dimension: Dimension, system: 'metric' | 'us'): number => {
  const size = Math.abs(value)
  const slack = size * 1e-12
  const relative = 0.5e-2 * size + slack
  if (dimension === 'temperature') return 0.05 + (size + 300) * 1e-12
  if (dimension === 'temperatureDifference') return 0.05 + slack
  if (dimension === 'clock') return 0.5 / 60 + slack
  if (dimension === 'count') return size < 1e15 ? 0 : relative
  if (dimension === 'time' && size >= 0.99 && size < 1e6) return (size < 47.99 ? 0.5 / 60 : 0.5) + slack
  if (dimension === 'length' && system === 'us') return Math.max(relative, 0.0254 / 32 + slack)
  return relative
}

const sizes = fc.oneof(
  fc.double({ min: 1e-7, max: 1e7, noNaN: true }),
  fc.double({ min: -7, max: 7, noNaN: true }).map((power) => 10 ** power),
  fc.integer({ min: 1, max: 100_000 }).map((n) => n / 1000),
  fc.integer({ min: 1, max: 5000 }).map((n) => (n * 0.0254) / 16),
  fc.double({ min: -30, max: 30, noNaN: true }).map((power) => 10 ** power),
)

const valueFor = (dimension: Dimension): fc.Arbitrary<number> => {
  if (dimension === 'share') return fc.double({ min: 0, max: 1, noNaN: true })
  if (dimension === 'clock') return fc.double({ min: 0, max: 24, noNaN: true })
  if (dimension === 'count') return fc.maxSafeNat()
  if (dimension === 'temperature') return fc.double({ min: -273, max: 1e6, noNaN: true })
  if (dimension === 'temperatureDifference') return fc.double({ min: -1e6, max: 1e6, noNaN: true })
  return ['angle', 'number'].includes(dimension)
    ? fc.tuple(sizes, fc.constantFrom(-1, 1)).map(([size, sign]) => size * sign)
    : sizes
}

describe('what is written reads back', () => {
  const written = dimensions.filter((dimension) => dimension !== 'money')

  it.each(written)('%s: the same value to the precision shown, and the same text again', (dimension) => {
    const systems = fc.constantFrom('metric' as const, 'us' as const)
    for (const locale of locales) {
      const holds = fc.property(valueFor(dimension), systems, (value, system) => {
        const text = write(value, dimension, { system, locale })
        const back = readOrThrow(text, dimension).value
        expect(Math.abs(back - value)).toBeLessThanOrEqual(allowed(value, dimension, system))
        expect(write(back, dimension, { system, locale })).toBe(text)
      })
      fc.assert(holds, { numRuns: 50, seed })
    }
  })

  it.each(['length', 'area', 'volume', 'mass', 'coverage', 'number'] as const)(
    '%s: with as many digits or decimals as asked for',
    (dimension) => {
      const styles = fc.oneof(
        fc.record({ digits: fc.integer({ min: 1, max: 12 }) }),
        fc.record({ decimals: fc.integer({ min: 0, max: 9 }) }),
      )
      for (const locale of locales) {
        const holds = fc.property(sizes, styles, (value, style) => {
          const text = write(value, dimension, { system: 'metric', locale, ...style })
          const reading = read(text, dimension, { sign: 'notNegative' })
          const zero = dimension === 'coverage' && 'decimals' in style
          expect(reading.ok || zero).toBe(true)
        })
        fc.assert(holds, { numRuns: 20, seed })
      }
    },
  )
})
