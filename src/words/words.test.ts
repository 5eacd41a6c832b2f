import { describe, expect, it } from 'vitest'
import { createWords, sentence } from './words.ts'

const metric = createWords({ locale: 'en-GB', system: 'metric', timeZone: 'Europe/Paris', currency: 'EUR' })
const us = createWords({ locale: 'en-US', system: 'us', timeZone: 'America/New_York' })
const plain = (text: string): string => text.replaceAll(/[\u00a0\u2009\u202f]/g, ' ')

describe('sentence', () => {
  it('writes figures in the units of the reader', () => {
    const data = { volumeL: 4.2 }
    expect(plain(metric.sentence('stores.noPacks', data))).toContain('4.2 L have to')
    expect(plain(us.sentence('stores.noPacks', data))).toContain('1.11 gal have to')
  })

  it('takes the plural of a count', () => {
    const text = (count: number) => metric.sentence('stores.bulkInOnePack', { pack: 'can', count })
    expect(text(1)).toContain('1 pack of can')
    expect(text(12)).toContain('12 packs of can')
    expect(plain(text(12000))).toContain('12 000 packs of can')
  })

  it('writes money in its currency and figures in the locale', () => {
    const data = { quoteCoins: 100000, forecastCoins: 112550, overShare: 0.1255, currency: 'EUR' }
    const german = sentence('money.forecastOverQuote', data, { locale: 'de-DE', system: 'metric' })
    expect(plain(german)).toContain('1125,50 €, 12,6 % over')
  })

  it('gives an unknown code with its data, written out', () => {
    const text = us.sentence('engine.startled', { areaM2: 1, name: 'port side', firm: true })
    expect(plain(text)).toBe('engine.startled: areaM2 10.8 ft², name port side, firm true')
    expect(us.sentence('toString')).toBe('toString')
    expect(us.sentence('__proto__')).toBe('__proto__')
  })

  it('writes the names of figures as people say them', () => {
    const data = { name: 'the primer', count: 2, figures: 'airLeastC, potLife' }
    expect(metric.sentence('buildup.figuresAssumed', data)).toContain('generic sheet: coldest air, pot life.')
  })

  it('writes the bounds of a figure in the unit of its dimension', () => {
    const data = { text: '95 ft', dimension: 'length', atMost: 15.24 }
    expect(plain(us.sentence('units.outOfRange', data))).toContain('out of range, at most 50 ft.')
    expect(plain(metric.sentence('units.outOfRange', data))).toContain('at most 15.2 m.')
  })

  it('marks a value that is missing instead of failing', () => {
    expect(metric.sentence('stores.noPacks')).toContain('? have to')
    expect(metric.sentence('stores.bulkInOnePack', { pack: 'can', count: Number.NaN })).toContain('of can')
  })

  it('never throws on figures that cannot be written', () => {
    const hostile = {
      volumeL: Number.NaN,
      coins: 0.5,
      currency: 'nothing',
      startDate: 'soon',
      timeZone: 'Mars',
    }
    const text = metric.sentence('stores.what', { ...hostile, startAtMs: 9e20, list: [1], none: undefined })
    expect(text).toContain('volumeL NaN')
    expect(text).toContain('startDate soon')
  })
})

describe('a reader whose settings are unusable', () => {
  it('gets dates in universal time and figures in plain English', () => {
    const words = createWords({ locale: 'not a tag', system: 'metric', timeZone: 'Mars/North' })
    expect(words.time(Date.UTC(2027, 3, 12, 6, 30))).toBe('06:30')
    expect(plain(words.figure('lengthM', 7.55))).toBe('7.55 m')
    expect(words.date('tomorrow')).toBe('tomorrow')
    expect(words.moment(Number.NaN)).toBe('NaN')
    expect(words.sentence('stores.bulkInOnePack', { pack: 'can', count: 2 })).toContain('2 packs of can')
  })
})

describe('figure', () => {
  it.each([
    ['lengthM', 7.5, '7.5 m', '24 ft 7 1/4 in'],
    ['wetFilmUm', 110, '110 µm', '4.33 mil'],
    ['heightMm', 65, '65 mm', '2 9/16 in'],
    ['heightByTapeM', 1.0137, '1014 mm', '3 ft 3 15/16 in'],
    ['residualByTapeM', -0.0011, '−1 mm', '−1/16 in'],
    ['residualByTapeM', 0.0002, '0 mm', '0 in'],
    ['areaM2', 18, '18 m²', '194 ft²'],
    ['volumeMl', 250, '250 ml', '8.45 fl oz'],
    ['volumeM3', 0.0042, '4.2 L', '1.11 gal'],
    ['glassKgM2', 0.45, '450 g/m²', '13.3 oz/yd²'],
    ['spreadM2PerL', 9.84, '9.84 m²/L', '401 ft²/gal'],
    ['airC', 16, '16 °C', '60.8 °F'],
    ['marginK', 3, '3 °C', '5.4 °F'],
    ['thinnerShare', 0.25, '25 %', '25 %'],
    ['hours', 2.5, '2 h 30 min', '2 h 30 min'],
    ['hours', 178.25, '178 h 15 min', '178 h 15 min'],
    ['hours', 264, '264 h', '264 h'],
    ['fullCureHours', 168, '7 d', '7 d'],
    ['days', 0.5, '0.5 d', '0.5 d'],
    ['withinDays', 180, '180 d', '180 d'],
    ['xM', 0, '0 m', '0 in'],
    ['gapMm', 0, '0 mm', '0 in'],
    ['leftoverM3', 0, '0 L', '0 fl oz'],
    ['potLifeMinutes', 45, '45 min', '45 min'],
    ['windMps', 4, '4 m/s', '8.95 mph'],
    ['massG', 250, '250 g', '8.82 oz av'],
    ['bowDeg', 12.5, '12.5°', '12.5°'],
    ['deadriseRad', Math.PI / 9, '20°', '20°'],
    ['waterGPerM3', 9.4, '9.4 g/m³', '9.4 g/m³'],
    ['coats', 3, '3', '3'],
    ['factor', 1.73333, '1.73', '1.73'],
  ])('writes %s %s', (key, value, inMetric, inUs) => {
    expect(plain(metric.figure(key, value))).toBe(inMetric)
    expect(plain(us.figure(key, value))).toBe(inUs)
  })

  it('writes moments in the zone of the data, else of the reader', () => {
    const atMs = Date.UTC(2027, 3, 12, 6, 30)
    expect(plain(metric.figure('startAtMs', atMs))).toBe('Mon, 12 Apr 2027, 08:30')
    expect(plain(us.figure('startAtMs', atMs))).toBe('Mon, Apr 12, 2027, 02:30 AM')
    expect(plain(us.figure('startAtMs', atMs, { timeZone: 'Europe/Paris' }))).toContain('08:30 AM')
    expect(metric.time(atMs)).toBe('08:30')
  })

  it('writes a calendar date as that date in every zone', () => {
    expect(plain(metric.figure('launchDate', '2027-04-30'))).toBe('Fri, 30 Apr 2027')
    expect(plain(us.date('2027-04-30'))).toBe('Fri, Apr 30, 2027')
  })

  it('writes coins in the currency of the data, else of the reader', () => {
    expect(plain(metric.figure('costCoins', 125050))).toBe('€1250.50')
    expect(plain(us.figure('costCoins', 125050, { currency: 'USD' }))).toBe('$1250.50')
  })
})

describe('label', () => {
  it('has a word for what is shown', () => {
    expect(metric.label('column.dryFilm')).toBe('Dry film')
    expect(metric.label('protection.sleeves')).toBe('arms and legs covered')
  })

  it('spells out a key that has no word of its own, without its unit', () => {
    expect(metric.label('clock.dryToSand')).toBe('Dry to sand')
    expect(metric.label('particular.beamWaterlineM')).toBe('Beam waterline')
    expect(metric.label('hours')).toBe('Hours')
  })

  it('leaves a text alone that is no key', () => {
    expect(metric.label('value.29 CFR 1915.13(b)')).toBe('29 CFR 1915.13(b)')
  })
})
