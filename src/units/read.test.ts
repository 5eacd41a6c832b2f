import { describe, expect, it } from 'vitest'
import { type Dimension, dimensions, type Quantity, read, readOrThrow, UnitError, unitsOf } from './index.ts'

/** Sums of at most three correctly rounded products: a few units in the last place. */
const relative = 1e-14

const close = (value: number, expected: number): void =>
  expect(Math.abs(value - expected)).toBeLessThanOrEqual(Math.abs(expected) * relative)

const quantity = (text: string, dimension: Dimension): Quantity => {
  const reading = read(text, dimension)
  if (!reading.ok) throw new UnitError(reading.fault)
  return reading.quantity
}

const fault = (text: string, dimension: Dimension) => {
  const reading = read(text, dimension)
  if (reading.ok) throw new Error(`"${text}" was read as ${reading.quantity.value}`)
  return reading.fault
}

type Accepted = readonly [text: string, dimension: Dimension, value: number, unit: string]

const inch = 0.0254
const foot = 0.3048
const gallon = 3.785411784e-3

const accepted: readonly Accepted[] = [
  ['25 ft 4 in', 'length', 304 * inch, 'ft'],
  [`25'4"`, 'length', 304 * inch, 'ft'],
  [`25'-4 1/2"`, 'length', 304.5 * inch, 'ft'],
  [`25' - 4 1/2"`, 'length', 304.5 * inch, 'ft'],
  ['25′ 4¾″', 'length', 304.75 * inch, 'ft'],
  ['25’ 4”', 'length', 304 * inch, 'ft'],
  [`25' 4''`, 'length', 304 * inch, 'ft'],
  [`25'4`, 'length', 304 * inch, 'ft'],
  ['25ft4in', 'length', 304 * inch, 'ft'],
  ['8ft6', 'length', 102 * inch, 'ft'],
  ['8 ft 6', 'length', 102 * inch, 'ft'],
  ['8 feet 6 1/2', 'length', 102.5 * inch, 'ft'],
  ["8'6", 'length', 102 * inch, 'ft'],
  ['5ft2in', 'length', 62 * inch, 'ft'],
  ['5 ft3/4 in', 'length', 60.75 * inch, 'ft'],
  ['25 feet, 4 inches', 'length', 304 * inch, 'ft'],
  ['25 feet and 4 inches', 'length', 304 * inch, 'ft'],
  ['25 ft. 4 in.', 'length', 304 * inch, 'ft'],
  ['25 ft 4 3/16 in', 'length', 304.1875 * inch, 'ft'],
  ['3/8 in', 'length', 0.375 * inch, 'in'],
  ['3⁄8 in', 'length', 0.375 * inch, 'in'],
  ['⅜ in', 'length', 0.375 * inch, 'in'],
  ['1 1/2"', 'length', 1.5 * inch, 'in'],
  ['1-1/2 in', 'length', 1.5 * inch, 'in'],
  ['1½"', 'length', 1.5 * inch, 'in'],
  ['1 ½ in', 'length', 1.5 * inch, 'in'],
  ['.5 in', 'length', 0.5 * inch, 'in'],
  ['7.72 m', 'length', 7.72, 'm'],
  ['7.72m', 'length', 7.72, 'm'],
  ['7.72\u2009m', 'length', 7.72, 'm'],
  ['7.72\u00a0m', 'length', 7.72, 'm'],
  ['  7.72 m  ', 'length', 7.72, 'm'],
  ['7,72 m', 'length', 7.72, 'm'],
  ['0,5 mm', 'length', 0.0005, 'mm'],
  ['0,125 mm', 'length', 0.000125, 'mm'],
  ['1,25 m', 'length', 1.25, 'm'],
  ['1234,567 m', 'length', 1234.567, 'm'],
  ['1.250 m', 'length', 1.25, 'm'],
  ['1.250,5 m', 'length', 1250.5, 'm'],
  ['1,250.5 m', 'length', 1250.5, 'm'],
  ['1,250,000 mm', 'length', 1250, 'mm'],
  ['1.250.000 mm', 'length', 1250, 'mm'],
  ['1 250 mm', 'length', 1.25, 'mm'],
  ['12\u202f500 m', 'length', 12500, 'm'],
  ['12 500,250 m', 'length', 12500.25, 'm'],
  ['1e3 m', 'length', 1000, 'm'],
  ['1E-3m', 'length', 0.001, 'm'],
  ['1e−3 m', 'length', 0.001, 'm'],
  ['7 m 20 cm', 'length', 7.2, 'm'],
  ['2 mil', 'length', 2e-3 * inch, 'mil'],
  ['10 thou', 'length', 10e-3 * inch, 'mil'],
  ['50 \u00b5m', 'length', 5e-5, 'µm'],
  ['50 \u03bcm', 'length', 5e-5, 'µm'],
  ['50 um', 'length', 5e-5, 'µm'],
  ['50 microns', 'length', 5e-5, 'µm'],
  ['1 micron', 'length', 1e-6, 'µm'],
  ['2 NMI', 'length', 3704, 'nmi'],
  ['300 sq ft', 'area', 300 * foot ** 2, 'ft²'],
  ['300 sq. ft.', 'area', 300 * foot ** 2, 'ft²'],
  ['300 ft^2', 'area', 300 * foot ** 2, 'ft²'],
  ['300 Ft2', 'area', 300 * foot ** 2, 'ft²'],
  ['12 sqm', 'area', 12, 'm²'],
  ['12 square metres', 'area', 12, 'm²'],
  ['4 fl oz', 'volume', gallon / 32, 'fl oz'],
  ['4 fl. oz.', 'volume', gallon / 32, 'fl oz'],
  ['4 US fl oz', 'volume', gallon / 32, 'fl oz'],
  ['1 qt', 'volume', gallon / 4, 'qt'],
  ['1 gal', 'volume', gallon, 'gal'],
  ['1 gal 2 qt', 'volume', 1.5 * gallon, 'gal'],
  ['1 imp gal', 'volume', 4.54609e-3, 'imp gal'],
  ['2 imperial quarts', 'volume', 2.273045e-3, 'imp qt'],
  ['5 imp fl oz', 'volume', 4.54609e-3 / 32, 'imp fl oz'],
  ['3/4 L', 'volume', 7.5e-4, 'L'],
  ['750 ML', 'volume', 7.5e-4, 'ml'],
  ['15 cc', 'volume', 1.5e-5, 'ml'],
  ['2 cu ft', 'volume', 2 * foot ** 3, 'ft³'],
  ['4 oz', 'mass', 4 * 0.028349523125, 'oz av'],
  ['5 lb 4 oz', 'mass', 5.25 * 0.45359237, 'lb'],
  ['300 g/m²', 'areicMass', 0.3, 'g/m²'],
  ['300 g/m2', 'areicMass', 0.3, 'g/m²'],
  ['300 gsm', 'areicMass', 0.3, 'g/m²'],
  ['300 g per square metre', 'areicMass', 0.3, 'g/m²'],
  ['20 lb/100 ft2', 'areicMass', (0.2 * 0.45359237) / foot ** 2, 'lb/ft²'],
  ['60 °F', 'temperature', 140 / 9, '°F'],
  ['32F', 'temperature', 0, '°F'],
  ['16C', 'temperature', 16, '°C'],
  ['16 °C', 'temperature', 16, '°C'],
  ['16 º C', 'temperature', 16, '°C'],
  ['16 ℃', 'temperature', 16, '°C'],
  ['16 deg C', 'temperature', 16, '°C'],
  ['16 degrees Celsius', 'temperature', 16, '°C'],
  ['−5 °C', 'temperature', -5, '°C'],
  ['-5 °C', 'temperature', -5, '°C'],
  ['+5 °C', 'temperature', 5, '°C'],
  ['289 K', 'temperature', 15.85, 'K'],
  ['3 K', 'temperatureDifference', 3, 'K'],
  ['3 °C', 'temperatureDifference', 3, '°C'],
  ['9 °F', 'temperatureDifference', 5, '°F'],
  ['10 kn', 'speed', 18520 / 3600, 'kn'],
  ['5 mph', 'speed', 2.2352, 'mph'],
  ['5 miles per hour', 'speed', 2.2352, 'mi/h'],
  ['18 km/h', 'speed', 5, 'km/h'],
  ['18 kph', 'speed', 5, 'km/h'],
  ['5 m/s', 'speed', 5, 'm/s'],
  ['100 ft/min', 'speed', 0.508, 'ft/min'],
  ['2 h 30 min', 'time', 2.5, 'h'],
  ['2h30', 'time', 2.5, 'h'],
  ['2h30m', 'time', 2.5, 'h'],
  ['2:30 h', 'time', 2.5, 'h'],
  ['2:30:36', 'time', 2.51, 'h'],
  ['2:30 min', 'time', 2.5 / 60, 'min'],
  ['1 1/2 h', 'time', 1.5, 'h'],
  ['90 min', 'time', 1.5, 'min'],
  ['3 d', 'time', 72, 'd'],
  ['1 week', 'time', 168, 'wk'],
  ['180°', 'angle', Math.PI, '°'],
  [`4° 30'`, 'angle', Math.PI / 40, '°'],
  ['0.08 rad', 'angle', 0.08, 'rad'],
  ['45 %', 'share', 0.45, '%'],
  ['45%', 'share', 0.45, '%'],
  ['65 % RH', 'share', 0.65, '%'],
  ['45 per cent', 'share', 0.45, '%'],
  ['0.45', 'share', 0.45, ''],
  ['18 g/kg', 'share', 0.018, 'g/kg'],
  ['9.84 m²/L', 'coverage', 9840, 'm²/L'],
  ['100 ft²/qt', 'coverage', (100 * foot ** 2) / (gallon / 4), 'ft²/qt'],
  ['100 sq ft per quart', 'coverage', (100 * foot ** 2) / (gallon / 4), 'ft²/qt'],
  ['401 ft2/gal', 'coverage', (401 * foot ** 2) / gallon, 'ft²/gal'],
  ['125 ml/m²', 'coverage', 8000, 'ml/m²'],
  ['1 gal per 400 ft2', 'coverage', (400 * foot ** 2) / gallon, 'gal/ft²'],
  ['1.1 g/ml', 'density', 1100, 'g/ml'],
  ['1.1 kg/L', 'density', 1100, 'kg/L'],
  ['1100 kg/m3', 'density', 1100, 'kg/m³'],
  ['10 lb/gal', 'density', 4.5359237 / gallon, 'lb/gal'],
  ['4 fl oz/qt', 'volumeShare', 0.125, 'fl oz/qt'],
  ['50 ml/L', 'volumeShare', 0.05, 'ml/L'],
  ['2 ml/100 ml', 'volumeShare', 0.02, 'ml/ml'],
  ['5 %', 'volumeShare', 0.05, '%'],
  ['400 m³/h', 'volumeRate', 400, 'm³/h'],
  ['250 cfm', 'volumeRate', 250 * 60 * foot ** 3, 'ft³/min'],
  ['8 m²/h', 'pace', 8, 'm²/h'],
  ['7.5 min/m²', 'pace', 8, 'min/m²'],
  ['30 min/m²', 'workRate', 0.5, 'min/m²'],
  ['1013 hPa', 'pressure', 101300, 'hPa'],
  ['2 bar', 'pressure', 200000, 'bar'],
  ['5 kW', 'power', 5000, 'kW'],
  ['30,000,000 BTU/h', 'power', 8792133, 'BTU/h'],
  ['07:30', 'clock', 7.5, 'h'],
  ['7:30 am', 'clock', 7.5, 'h'],
  ['12:15 a.m.', 'clock', 0.25, 'h'],
  ['7 PM', 'clock', 19, 'h'],
  ['24:00', 'clock', 24, 'h'],
  ['3', 'count', 3, ''],
  ['-1.5', 'number', -1.5, ''],
  ['2:1', 'ratio', 2, ':'],
  ['100 : 45', 'ratio', 100 / 45, ':'],
  ['2 to 1', 'ratio', 2, ':'],
  ['2,5:1', 'ratio', 2.5, ':'],
  ['12', 'ratio', 12, ''],
]

describe('accepted', () => {
  it.each(accepted)('reads %s as %s', (text, dimension, value, unit) => {
    const seen = quantity(text, dimension)
    close(seen.value, value)
    expect(seen.unit).toBe(unit)
    expect(seen.text).toBe(text)
    expect(seen.about).toBe(false)
  })

  it('gives short decimals without a binary tail', () => {
    expect(quantity('50 µm', 'length').value).toBe(0.00005)
    expect(quantity('25 ft 4 in', 'length').value).toBe(7.7216)
    expect(quantity('300 g/m²', 'areicMass').value).toBe(0.3)
    expect(quantity('1.1 kg/L', 'density').value).toBe(1100)
    expect(quantity('289 K', 'temperature').value).toBe(15.85)
  })

  it('never gives negative zero', () => {
    for (const [text, dimension] of [
      ['-0 m', 'length'],
      ['−0 °C', 'temperature'],
      ['-0', 'number'],
      ['-0.00 EUR', 'money'],
    ] as const) {
      expect(Object.is(quantity(text, dimension).value, 0)).toBe(true)
    }
  })

  it('keeps every part of a ratio', () => {
    expect(quantity('2:1', 'ratio').parts).toEqual([2, 1])
    expect(quantity('4:1:1', 'ratio').parts).toEqual([4, 1, 1])
    expect(quantity('12', 'ratio').parts).toBeUndefined()
  })

  it.each([
    'about 7.7 m',
    '~7.7 m',
    '≈ 7.7 m',
    'ca. 7.7 m',
    'ca 7.7 m',
    'approx. 7.7 m',
    '7.7 m?',
    '7.7 m ?',
    'c. 7.7 m',
  ])('marks %s as rough', (text) => {
    expect(quantity(text, 'length')).toMatchObject({ value: 7.7, about: true, text })
  })

  it('reads every example and every listed unit of a dimension', () => {
    for (const dimension of dimensions) {
      if (dimension === 'money' || dimension === 'ratio') continue
      for (const unit of unitsOf(dimension))
        expect(quantity(`2 ${unit}`, 'share' === dimension ? 'volumeShare' : dimension).value).not.toBe(0)
    }
    for (const code of unitsOf('money')) expect(quantity(`${code} 2`, 'money').currency).toBe(code)
  })
})

type Refused = readonly [
  text: string,
  dimension: Dimension,
  code: string,
  data: Record<string, string | number>,
]

const refused: readonly Refused[] = [
  ['', 'length', 'units.empty', { at: 0 }],
  ['  \u2009', 'length', 'units.empty', { at: 0 }],
  ['about ', 'length', 'units.empty', {}],
  ['?', 'length', 'units.empty', {}],
  ['NaN', 'length', 'units.notANumber', { at: 0 }],
  ['NaN m', 'length', 'units.notANumber', { at: 0 }],
  ['Infinity m', 'length', 'units.notANumber', {}],
  ['∞ m', 'length', 'units.notANumber', {}],
  ['m', 'length', 'units.notANumber', {}],
  ['1.2.3 m', 'length', 'units.notANumber', { got: '1.2.3' }],
  ['1,25,000 m', 'length', 'units.notANumber', {}],
  ['12.5,5 m', 'length', 'units.notANumber', {}],
  ['3/0 in', 'length', 'units.notANumber', { got: '3/0' }],
  ['1 9/8 in', 'length', 'units.notANumber', { got: '1 9/8' }],
  ['1/2/3 in', 'length', 'units.notANumber', {}],
  ['1e999 m', 'length', 'units.outOfRange', { got: '1e999' }],
  ['1e308 km', 'length', 'units.outOfRange', {}],
  ['1e-999 m', 'length', 'units.outOfRange', {}],
  ['1e-320 µm', 'length', 'units.outOfRange', {}],
  ['-3 m', 'length', 'units.negative', { got: '-3 m' }],
  ['7', 'length', 'units.missingUnit', { at: 0, got: '7' }],
  ['7 m 4', 'length', 'units.missingUnit', { at: 4, got: '4' }],
  ['8 ft 12', 'length', 'units.missingUnit', { at: 5, got: '12' }],
  ['8 ft 300', 'length', 'units.missingUnit', { at: 5, got: '300' }],
  ['8 yd 6', 'length', 'units.missingUnit', { at: 5, got: '6' }],
  ['8.5 ft 6', 'length', 'units.leftOver', { at: 7, got: '6' }],
  ['7 feets', 'length', 'units.unknownUnit', { at: 2, length: 5, got: 'feets', nearest: 'ft' }],
  ['7 metrs', 'length', 'units.unknownUnit', { nearest: 'm' }],
  ['7 qqqqq', 'length', 'units.unknownUnit', { got: 'qqqqq' }],
  ['7 kg', 'length', 'units.wrongDimension', { at: 2, got: 'mass' }],
  ['7 EUR', 'length', 'units.wrongDimension', { got: 'money' }],
  ['7 €', 'length', 'units.wrongDimension', { got: 'money' }],
  ['5 kg/s', 'length', 'units.wrongDimension', { got: 'mass/time' }],
  ['30 m', 'time', 'units.wrongDimension', { got: 'length' }],
  ['7 m long', 'length', 'units.leftOver', { at: 4, got: 'long' }],
  ['3-4 mm', 'length', 'units.leftOver', { at: 1 }],
  ['3 mm - 4 mm', 'length', 'units.leftOver', {}],
  ['1 m - 20 mm', 'length', 'units.leftOver', {}],
  ['25.5 ft 4 in', 'length', 'units.leftOver', { at: 8 }],
  ['4 in 25 ft', 'length', 'units.leftOver', { at: 5 }],
  ['3 m² 4 m²', 'area', 'units.leftOver', {}],
  ['1,250 m', 'length', 'units.ambiguous', { readings: '"1250 m", "1.250 m"' }],
  ['12,500', 'ratio', 'units.ambiguous', { readings: '"12500", "12.500"' }],
  ['4 oz', 'volume', 'units.ambiguous', { readings: '"4 fl oz", "4 oz av"' }],
  ['1 gal 4 oz', 'volume', 'units.ambiguous', { readings: '"1 gal 4 fl oz", "1 gal 4 oz av"' }],
  ['4oz/qt', 'volumeShare', 'units.ambiguous', { readings: '"4 fl oz/qt", "4 oz av/qt"' }],
  ['1.5 oz', 'areicMass', 'units.ambiguous', { readings: '"1.5 oz/ft²", "1.5 oz/yd²"' }],
  ['16°', 'temperature', 'units.ambiguous', { readings: '"16 °C", "16 °F"' }],
  ['2 tons', 'mass', 'units.ambiguous', { readings: '"2 t", "2 long ton", "2 short ton"' }],
  ['2:30', 'time', 'units.ambiguous', { readings: '"2 h 30 min", "2 min 30 s"' }],
  ['2:75 h', 'time', 'units.notANumber', {}],
  ['16', 'temperature', 'units.missingUnit', {}],
  ['-300 °C', 'temperature', 'units.outOfRange', { atLeast: -273.15 }],
  ['45', 'share', 'units.outOfRange', { atMost: 1 }],
  ['120 %', 'share', 'units.outOfRange', { atMost: 1 }],
  ['0.05', 'volumeShare', 'units.missingUnit', {}],
  ['0 m²/L', 'coverage', 'units.outOfRange', { above: 0 }],
  ['0 ml/m²', 'coverage', 'units.outOfRange', {}],
  ['1 m²/0 L', 'coverage', 'units.notANumber', {}],
  ['9 m²/', 'coverage', 'units.missingUnit', {}],
  ['2:0', 'ratio', 'units.outOfRange', { above: 0 }],
  ['2:', 'ratio', 'units.notANumber', {}],
  ['-2:1', 'ratio', 'units.negative', {}],
  ['2.5', 'count', 'units.notWhole', { got: '2.5' }],
  ['25:00', 'clock', 'units.outOfRange', { atMost: 24 }],
  ['24:30', 'clock', 'units.outOfRange', { atMost: 24 }],
  ['13:00 pm', 'clock', 'units.outOfRange', {}],
  ['7:5', 'clock', 'units.notANumber', {}],
  ['7', 'clock', 'units.missingUnit', {}],
  ['9'.repeat(201), 'length', 'units.tooLong', { at: 200, length: 1 }],
]

describe('refused', () => {
  it.each(refused)('refuses "%s" as %s: %s', (text, dimension, code, data) => {
    const seen = fault(text, dimension)
    expect(seen.code).toBe(code)
    expect(seen.data).toMatchObject({ dimension, ...data })
    expect(seen.data.accepted).toMatch(/^".+"$/)
  })

  it('throws an error that names dimension, problem, text, place and examples', () => {
    expect(() => readOrThrow('7 feets', 'length')).toThrow(
      'length: unknown unit, got "7 feets" at 2, expected for example "7.72 m", "25 ft 4 in"',
    )
    expect(() => readOrThrow('7 kg', 'length')).toThrow('length: wrong kind of unit, got "7 kg" (mass) at 2')
    expect(() => readOrThrow('1,250 m', 'length')).toThrow('expected either "1250 m", "1.250 m"')
  })

  it('carries code and data on the error', () => {
    expect.assertions(2)
    try {
      readOrThrow('', 'mass')
    } catch (error) {
      expect(error).toBeInstanceOf(UnitError)
      expect(error).toMatchObject({ code: 'units.empty', data: { dimension: 'mass', at: 0, length: 0 } })
    }
  })
})

describe('bounds given by the caller', () => {
  it('replaces the sign rule of the dimension', () => {
    expect(read('-3 m', 'length', { sign: 'any' })).toMatchObject({ ok: true, quantity: { value: -3 } })
    expect(read('0 m', 'length', { sign: 'positive' })).toMatchObject({
      ok: false,
      fault: { code: 'units.outOfRange' },
    })
    expect(read('-3 °C', 'temperature', { sign: 'notNegative' })).toMatchObject({ ok: false })
    expect(read('-25 ft 4 in', 'length', { sign: 'any' })).toMatchObject({
      ok: true,
      quantity: { value: -7.7216 },
    })
  })

  it('refuses what lies outside them', () => {
    expect(read('80 m', 'length', { atMost: 60 })).toMatchObject({
      ok: false,
      fault: { data: { atMost: 60 } },
    })
    expect(read('1 m', 'length', { atLeast: 2 })).toMatchObject({
      ok: false,
      fault: { data: { atLeast: 2 } },
    })
    expect(read('150 %', 'share', { atMost: 2 })).toMatchObject({ ok: true, quantity: { value: 1.5 } })
  })
})
