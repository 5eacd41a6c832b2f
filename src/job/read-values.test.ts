import { describe, expect, it } from 'vitest'
import { readClockTable } from './read-clock-table.ts'
import { isDate, isInstant } from './read-date.ts'
import { namesHours, readWeekdays } from './read-weekdays.ts'

describe('weekdays', () => {
  it.each([
    ['Mon-Fri', [1, 2, 3, 4, 5]],
    ['Sat, Sun', [6, 7]],
    ['Tue, Thu', [2, 4]],
    ['Tue and Thu', [2, 4]],
    ['Sat & Sun', [6, 7]],
    ['Saturday', [6]],
    ['fri–mon', [1, 5, 6, 7]],
    ['Monday to Wednesday, Sat', [1, 2, 3, 6]],
    ['Mon, Mon-Tue', [1, 2]],
    ['Wed.', [3]],
    ['Sun-Sun', [7]],
    ['weekends', [6, 7]],
    ['Weekend', [6, 7]],
    ['at weekends', [6, 7]],
    ['at the weekend', [6, 7]],
    ['weekdays', [1, 2, 3, 4, 5]],
    ['weekends and Fri', [5, 6, 7]],
    ['every day', [1, 2, 3, 4, 5, 6, 7]],
    ['Daily', [1, 2, 3, 4, 5, 6, 7]],
    ['on Saturdays', [6]],
    ['Mondays to Wednesdays', [1, 2, 3]],
  ])('%s', (text, days) => expect(readWeekdays(text)).toEqual(days))

  it.each([
    '',
    ',',
    'S',
    'Su',
    'Monsday',
    'Mon-',
    '-Fri',
    'Mon-Tue-Wed',
    '1-5',
    'workdays',
    'evenings',
    'Sat morning',
  ])('%j is none', (text) => expect(readWeekdays(text)).toBeUndefined())
})

describe('hours where days belong', () => {
  it.each(['evenings', 'weekday evenings', 'Sat morning', 'Sun 9:00', 'Sat 2 pm', 'nights'])('%s', (text) =>
    expect(namesHours(text)).toBe(true),
  )
  it.each(['Mon-Fri', 'weekends', '1-5', 'someday'])('%s names none', (text) =>
    expect(namesHours(text)).toBe(false),
  )
})

describe('dates', () => {
  it.each(['2027-04-12', '2028-02-29', '2000-02-29', '1999-12-31'])('%s is one', (text) =>
    expect(isDate(text)).toBe(true),
  )
  it.each([
    '2027-02-29',
    '1900-02-29',
    '2027-04-31',
    '2027-13-01',
    '2027-00-10',
    '2027-4-12',
    '12.04.2027',
    '2027-04-12 ',
    '1827-04-12',
    '',
  ])('%j is none', (text) => expect(isDate(text)).toBe(false))
})

describe('instants', () => {
  it.each(['2027-04-14T09:30+02:00', '2027-04-14T09:30:15Z', '2027-04-14T09:30:15.123-05:30'])(
    '%s is one',
    (text) => expect(isInstant(text)).toBe(true),
  )
  it.each([
    '2027-04-14T09:30',
    '2027-04-14 09:30Z',
    '2027-04-31T09:30Z',
    '2027-04-14T24:30Z',
    '2027-04-14T09:60Z',
    '2027-04-14T09:30+15:00',
  ])('%j is none', (text) => expect(isInstant(text)).toBe(false))
})

describe('clock tables', () => {
  const pointsOf = (text: string) => {
    const reading = readClockTable(text)
    return reading.ok ? reading.points.map(({ airC, hours }) => [airC, hours]) : reading.code
  }

  it.each([
    [
      '5C: 24h, 15C: 10h, 25C: 6h',
      [
        [5, 24],
        [15, 10],
        [25, 6],
      ],
    ],
    [
      '25 °C: 6 h; 5 °C: 1 d',
      [
        [5, 24],
        [25, 6],
      ],
    ],
    [
      '5C: 1,5h, 15C: 1h',
      [
        [5, 1.5],
        [15, 1],
      ],
    ],
    ['50F: 90min', [[10, 1.5]]],
    ['10h', [[20, 10]]],
    ['2 h 30 min', [[20, 2.5]]],
  ])('%s', (text, points) => expect(pointsOf(text)).toEqual(points))

  it.each([
    ['5C: 24h; 10h', 'job.clockTable'],
    ['5C: 24h, 10h', 'units.leftOver'],
    ['5C: 24h, 5 °C: 20h', 'job.clockTwice'],
    ['5C: 0h', 'units.outOfRange'],
    ['5C: -1h', 'units.negative'],
    ['5C:', 'units.empty'],
    ['5: 24h', 'units.missingUnit'],
    [': 24h', 'job.clockTable'],
    ['5C: 24', 'units.missingUnit'],
    ['', 'units.empty'],
  ])('%j is %s', (text, code) => expect(pointsOf(text)).toBe(code))

  it('one that takes longer when warmer is odd, one that stays the same is not', () => {
    expect(readClockTable('5C: 6h, 15C: 10h')).toMatchObject({ ok: true, odd: true })
    expect(readClockTable('5C: 6h, 15C: 6h')).toMatchObject({ ok: true, odd: false })
  })
})
