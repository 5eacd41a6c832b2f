import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { HourlySeries } from '#core/climate'
import { readWeather } from '../read-weather.ts'
import type { WeatherRead } from '../weather-read.ts'
import { localClock } from './local-clock.ts'
import type { TableHints } from './table-mapping.ts'
import { asUtc, orderOf, readWritten } from './table-time.ts'

const bytes = (text: string) => new TextEncoder().encode(text)
const read = (text: string, hints: TableHints = { zone: 'Europe/Stockholm' }) =>
  readWeather(bytes(text), hints)
function seriesIn(result: WeatherRead): HourlySeries {
  if (!result.ok) throw new Error(JSON.stringify(result.problems))
  return result.series
}
const list = (column: ArrayLike<number>) =>
  Array.from(column, (value) => (Number.isNaN(value) ? null : Math.round(value * 1000) / 1000))
const errors = (result: WeatherRead) =>
  result.problems
    .filter(({ severity }) => severity === 'error')
    .map(({ code, line }) => [code.replace('intake.', ''), line ?? '-'].join(' '))
const codes = (result: WeatherRead) => result.problems.map(({ code }) => code)

/** Four hours of one morning, each time written by a form of its own. */
const morning = (head: string, row: (hour: number) => string) => [head, ...[6, 7, 8, 9].map(row)].join('\n')
const two = (value: number) => String(value).padStart(2, '0')

describe('loggers of many makes', () => {
  const expected = {
    startMs: Date.parse('2027-04-14T06:00+02:00'),
    airC: [6, 7, 8, 9],
    humidityShare: [0.86, 0.87, 0.88, 0.89],
  }
  it.each([
    [
      'semicolons and decimal commas',
      morning(
        'Datum;Uhrzeit;Temperatur (°C);Luftfeuchte (%)',
        (h) => `14.04.2027;${two(h)}:00;${h},0;8${h},0`,
      ),
    ],
    [
      'a mark of byte order, quotes and a number in front',
      `\ufeff${morning('"No.","Date Time","Temperature °C","Humidity %RH"', (h) => `"${h}","2027/04/14 ${two(h)}:00:00","${h}.0","8${h}.0"`)}`,
    ],
    [
      'lines of its own before the head',
      `Model,X\nSerial number,12345\n\n${morning('Time,Temp(°C),RH(%)', (h) => `2027-04-14 ${two(h)}:00:00,${h},8${h}`)}`,
    ],
    [
      'twelve hours and the month first',
      morning('Timestamp,Temperature_C,Relative_Humidity', (h) => `04/14/2027 ${h}:00 AM,${h},8${h}`),
    ],
    [
      'degrees Fahrenheit',
      morning(
        'Time,Temp (°F),Humidity (%)',
        (h) => `14/04/2027 ${two(h)}:00,${(h * 1.8 + 32).toFixed(2)},8${h}`,
      ),
    ],
    [
      'units behind the figures',
      morning('time;temperature;humidity', (h) => `14.04.2027 ${two(h)}:00;${h} °C;8${h} %`),
    ],
    [
      'the newest first and an empty last field',
      ['Time,Temp(°C),RH(%)', ...[9, 8, 7, 6].map((h) => `2027-04-14 ${two(h)}:00,${h},8${h},`)].join('\n'),
    ],
    ['two digits for the year', morning('Date,Time,Temp (C),RH (%)', (h) => `14.4.27,${h}:00,${h},8${h}`)],
    [
      'humidity as a share that is said to be one',
      morning('Time,Temp(°C),RH (0..1)', (h) => `2027-04-14 ${two(h)}:00,${h},0.8${h}`),
    ],
  ])('with %s', (name, text) => {
    const hints = name.includes('share')
      ? { columns: { 'RH (0..1)': { to: 'humidityPct', unit: '0..1' } } }
      : {}
    const series = seriesIn(read(text, { zone: 'Europe/Stockholm', ...hints }))
    expect([series.startMs, list(series.airC), list(series.humidityShare)]).toEqual([
      expected.startMs,
      expected.airC,
      expected.humidityShare,
    ])
  })

  it('in Windows letters and in UTF-16', () => {
    const text = morning('Zeit;Temperatur °C;Feuchte %', (h) => `14.04.2027 ${two(h)}:00;${h};8${h}`)
    const latin = Uint8Array.from([...text].map((letter) => letter.charCodeAt(0)))
    const wide = new Uint8Array(2 + 2 * text.length)
    wide.set([0xff, 0xfe])
    for (let at = 0; at < text.length; at++)
      wide.set([text.charCodeAt(at) & 255, text.charCodeAt(at) >> 8], 2 + 2 * at)
    for (const file of [latin, wide])
      expect(list(seriesIn(readWeather(file, { zone: 'Europe/Stockholm' })).airC)).toEqual([6, 7, 8, 9])
  })

  it('say what was taken for what, and what was left out', () => {
    const { problems } = read(
      morning('Time,Battery,Temp(°C),RH(%)', (h) => `14/04/2027 ${two(h)}:00,3.1,${h},8${h}`),
    )
    expect(problems.map(({ code, data }) => [code, data.found])).toEqual([
      ['intake.columnsTaken', 'Temp(°C) = airC, °C; RH(%) = humidityPct, %'],
      ['intake.columnsIgnored', 'Battery'],
    ])
  })
})

describe('readings at any minute', () => {
  it('are thinned to the one nearest to each full hour', () => {
    const rows = Array.from(
      { length: 13 },
      (_, step) =>
        `2027-04-14 ${two(6 + Math.floor((step * 10 + 2) / 60))}:${two((step * 10 + 2) % 60)},${step},80`,
    )
    const result = read(['Time,Temp(°C),RH(%)', ...rows].join('\n'))
    expect(list(seriesIn(result).airC)).toEqual([0, 6, 12])
    expect(result.problems.find(({ code }) => code === 'intake.thinned')?.data).toEqual({
      count: 13,
      hours: 3,
    })
  })

  it('add their rain up in the hour in which it fell, and average their sun', () => {
    const rows = ['06:00,5,80,9,9', '06:20,5,80,1,30', '06:40,5,80,2,60', '07:00,5,80,3,90', '07:20,5,80,4,5']
    const series = seriesIn(
      read(
        ['Time,Temp(°C),RH(%),Rain (mm),Solar (W/m²)', ...rows.map((row) => `2027-04-14 ${row}`)].join('\n'),
      ),
    )
    expect(list(series.rainMm ?? [])).toEqual([6, 4])
    expect(list(series.sunWm2 ?? [])).toEqual([60, 5])
  })

  it('leave a gap where the logger was off', () => {
    const text = 'Time,Temp(°C),RH(%)\n2027-04-14 06:00,5,80\n2027-04-14 09:00,6,80\n'
    expect(seriesIn(read(text)).gaps).toEqual([{ fromHour: 1, hours: 2 }])
  })
})

describe('clocks', () => {
  const night = (times: readonly string[]) =>
    ['Time,Temp(°C),RH(%)', ...times.map((time, at) => `${time},${at},80`)].join('\n')

  it('put back give the hour twice, and both are read', () => {
    const series = seriesIn(
      read(night(['2027-10-31 01:00', '2027-10-31 02:00', '2027-10-31 02:00', '2027-10-31 03:00'])),
    )
    expect(series.startMs).toBe(Date.parse('2027-10-31T01:00+02:00'))
    expect(list(series.airC)).toEqual([0, 1, 2, 3])
  })

  it('put forward leave no hole', () => {
    expect(list(seriesIn(read(night(['2027-03-28 01:00', '2027-03-28 03:00']))).airC)).toEqual([0, 1])
  })

  it('never put forward show an hour that the zone skips: that is an error, and an offset puts it right', () => {
    const text = night(['2027-03-28 01:00', '2027-03-28 02:00', '2027-03-28 03:00'])
    expect(errors(read(text))).toEqual(['clockSkips 3'])
    expect(list(seriesIn(read(text, { zone: '+01:00' })).airC)).toEqual([0, 1, 2])
  })

  it('of the south go the other way round', () => {
    const text = night(['2027-04-04 02:00', '2027-04-04 02:00', '2027-04-04 03:00'])
    const series = seriesIn(read(text, { zone: 'Australia/Hobart' }))
    expect(series.startMs).toBe(Date.parse('2027-04-04T02:00+11:00'))
    expect(series.hours).toBe(3)
  })

  it('that say their offset need no zone', () => {
    const text = 'Timestamp,Temp(°C),RH(%)\n2027-04-14T06:00:00+0200,5,80\n2027-04-14T07:00:00+0200,6,80\n'
    expect(seriesIn(read(text, {})).startMs).toBe(Date.parse('2027-04-14T06:00+02:00'))
  })

  it('of a zone agree with the zone through a whole year of hours', () => {
    const clock = localClock('America/New_York')!
    const local = new Intl.DateTimeFormat('en-CA', {
      timeZone: 'America/New_York',
      dateStyle: 'short',
      timeStyle: 'medium',
      hourCycle: 'h23',
    })
    let afterMs = 0
    for (let utcMs = Date.UTC(2027, 0, 1); utcMs < Date.UTC(2028, 0, 1); utcMs += 3_600_000) {
      const shown = Date.parse(`${local.format(utcMs).replace(', ', 'T')}Z`)
      const back = clock.toUtc(shown, afterMs)
      expect(back).toBe(utcMs)
      afterMs = utcMs
    }
  })

  it.each([['+15:00'], ['Nowhere/Land'], ['']])('of zone “%s” are asked for', (zone) => {
    expect(errors(read(night(['2027-04-14 06:00']), { zone }))).toEqual([
      zone === '' ? 'zoneAsked -' : 'zoneUnknown -',
    ])
  })
})

describe('what a table does not say', () => {
  it('is asked for, all at once, with the table as it looks', () => {
    const result = read('Time,Temp,Second\n01/02/2027 06:00,15,80\n', {})
    expect(errors(result)).toEqual(['unitAsked -', 'columnAsked -', 'zoneAsked -', 'datesAsked -'])
    expect(!result.ok && result.table).toEqual({
      columns: [
        { name: 'Time', to: 'time', unit: '' },
        { name: 'Temp', to: 'airC', unit: '' },
        { name: 'Second', to: 'ignore', unit: '' },
      ],
      samples: [['01/02/2027 06:00', '15', '80']],
      dates: undefined,
      zoned: false,
    })
  })

  it('is taken from a person', () => {
    const hints: TableHints = {
      zone: '+01:00',
      dates: 'dmy',
      columns: { Temp: { to: 'airC', unit: '°F' }, Second: { to: 'humidityPct', unit: '%' } },
    }
    const series = seriesIn(read('Time,Temp,Second\n01/02/2027 06:00,50,80\n', hints))
    expect([series.startMs, list(series.airC), list(series.humidityShare)]).toEqual([
      Date.parse('2027-02-01T06:00+01:00'),
      [10],
      [0.8],
    ])
  })

  it('of two columns of a kind takes the first, unless told', () => {
    const text = 'Time,Temp inside °C,Temp outside °C,RH %\n2027-04-14 06:00,20,5,50\n'
    expect(list(seriesIn(read(text)).airC)).toEqual([20])
    const told = { zone: '+02:00', columns: { 'Temp outside °C': { to: 'airC', unit: '' } } }
    expect(list(seriesIn(read(text, told)).airC)).toEqual([5])
  })

  it('day or month first, shows in dates that go on', () => {
    const times = (texts: readonly string[]) => texts.map((text) => readWritten(`${text} 06:00`)!)
    expect(orderOf(times(['01/04/2027', '02/04/2027', '03/04/2027']))).toBe('dmy')
    expect(orderOf(times(['04/01/2027', '04/02/2027', '04/03/2027']))).toBe('mdy')
    expect(orderOf(times(['04/13/2027']))).toBe('mdy')
    // One day that there is not does not unsay the others.
    expect(orderOf(times(['2027-04-30', '2027-04-31']))).toBe('ymd')
    expect(orderOf(times(['2027-04-05']))).toBe('ymd')
    expect(orderOf(times(['04.05.2027']))).toBe('dmy')
    expect(orderOf(times(['04/05/2027']))).toBeUndefined()
  })

  it.each([
    ['14/04/2027 12:30 AM', '00:30'],
    ['14/04/2027 12:30 p.m.', '12:30'],
    ['14/04/2027, 1:05:09 PM', '13:05'],
    ['14-4-27 23:59', '23:59'],
    ['14.04.2027 8.30', '08:30'],
  ])('takes %s for %s', (text, clock) => {
    const time = readWritten(text)
    const ms = time && asUtc(time, 'dmy')
    expect(new Date(ms ?? 0).toISOString().slice(0, 16)).toBe(`2027-04-14T${clock}`)
  })

  it.each([
    '13:00 PM',
    '14/04/2027 13:30 PM',
    '14/04/2027 24:00',
    '14/04',
    '14/04/2027',
    '14/04-2027',
    'noon',
    '14/04/2027 06:00 +15:00',
  ])('does not take %s for a time', (text) => {
    expect(readWritten(text)).toBeUndefined()
  })
})

describe('a table that cannot be right', () => {
  const hours = (count: number, row: (hour: number) => string) =>
    Array.from(
      { length: count },
      (_, hour) => `2027-04-${two(1 + Math.floor(hour / 24))} ${two(hour % 24)}:00,${row(hour)}`,
    ).join('\n')
  const day = (hour: number) => Math.sin(((hour - 9) / 12) * Math.PI)

  it('has humidity as a share: caught', () => {
    expect(
      errors(read(`Time,Temp(°C),RH(%)\n${hours(48, (h) => `${10 + 5 * day(h)},${0.7 - 0.2 * day(h)}`)}`)),
    ).toEqual(['shareNotPercent -'])
  })

  it('has its columns swapped: said in a sentence of its own', () => {
    expect(
      errors(read(`Time,Temp(°C),RH(%)\n${hours(48, (h) => `${80 - 15 * day(h)},${10 + 5 * day(h)}`)}`)),
    ).toEqual(['columnsSwapped -'])
    expect(
      errors(readWeather(bytes(`time,airC,humidityPct\n2027-04-01T00:00Z,96,4\n2027-04-01T01:00Z,90,-2\n`))),
    ).toEqual(['columnsSwapped -'])
  })

  it('has Fahrenheit called Celsius: caught in summer by its warmth and in spring by its dew', () => {
    expect(
      errors(read(`Time,Temp(°C),RH(%)\n${hours(48, (h) => `${68 + 9 * day(h)},${60 - 15 * day(h)}`)}`)),
    ).toEqual(['airInFahrenheit -'])
    expect(
      errors(read(`Time,Temp(°C),RH(%)\n${hours(48, (h) => `${43 + 5 * day(h)},${80 - 15 * day(h)}`)}`)),
    ).toEqual(['airTooDamp -'])
  })

  it('is a hot dry day in degrees Celsius: taken', () => {
    expect(
      errors(read(`Time,Temp(°C),RH(%)\n${hours(48, (h) => `${33 + 9 * day(h)},${25 - 12 * day(h)}`)}`)),
    ).toEqual([])
    expect(
      errors(read(`Time,Temp(°F),RH(%)\n${hours(48, (h) => `${90 + 15 * day(h)},${25 - 12 * day(h)}`)}`)),
    ).toEqual([])
  })

  it('ends in the middle of a row', () => {
    expect(errors(read('Time,Temp(°C),RH(%)\n2027-04-14 06:00,5,80\n2027-04-14 07:00,5'))).toEqual([
      'endsMidRow 3',
    ])
  })

  it('has one moment twice: taken once when the figures are the same, refused when not', () => {
    const twice = (second: string) =>
      `Time,Temp(°C),RH(%)\n2027-04-14 06:00,5,80\n2027-04-14 06:00,${second}\n`
    expect(codes(read(twice('5,80')))).toContain('intake.hourRepeated')
    expect(errors(read(twice('6,80')))).toEqual(['readingTwice 3'])
  })

  it('has commas both between fields and in figures', () => {
    expect(errors(read('Time,Temp(°C),RH(%)\n2027-04-14 06:00,5,5,80,2\n'))).toEqual(['commasClash 2'])
  })

  it('has a word for a figure, and names its place; a dash is nothing measured', () => {
    expect(errors(read('Time,Temp(°C),RH(%)\n2027-04-14 06:00,warm,80\n'))).toEqual(['numberNotRead 2'])
    expect(
      list(seriesIn(read('Time,Temp(°C),RH(%)\n2027-04-14 06:00,--,80\n2027-04-14 07:00,5,N/A\n')).airC),
    ).toEqual([null, 5])
  })

  it('has a unit that no such column has', () => {
    const hints = { zone: '+01:00', columns: { RH: { to: 'humidityPct', unit: 'mph' } } }
    expect(errors(read('Time,Temp(°C),RH\n2027-04-14 06:00,5,80\n', hints))).toEqual(['unitNotOfColumn -'])
  })
})

it('any spoiling of a good table gives a series or errors and never throws', () => {
  const good = `Time;Temp(°C);RH(%);Rain\n${Array.from({ length: 20 }, (_, h) => `14.04.2027 ${two(h)}:00;${h},5;8${h % 10};0`).join('\n')}`
  const piece = fc.constantFrom(
    ',',
    ';',
    '"',
    '\n',
    '-',
    ':',
    '9',
    '',
    '.',
    '\t',
    ' ',
    '\0',
    'é',
    '+',
    'PM',
    '/',
  )
  fc.assert(
    fc.property(fc.array(fc.tuple(fc.nat(good.length), piece), { minLength: 1, maxLength: 6 }), (cuts) => {
      const text = cuts.reduce((whole, [at, put]) => whole.slice(0, at) + put + whole.slice(at + 1), good)
      const result = read(text)
      expect(result.problems.some(({ severity }) => severity === 'error')).toBe(!result.ok)
      if (!result.ok) return
      const { airC, humidityShare, hours, gaps } = result.series
      expect([airC.length, humidityShare.length]).toEqual([hours, hours])
      expect(
        Array.from(humidityShare).every((share) => Number.isNaN(share) || (share >= 0 && share <= 1)),
      ).toBe(true)
      expect(gaps.every((gap) => gap.fromHour > 0 && gap.fromHour + gap.hours < hours)).toBe(true)
    }),
    { seed: 31, numRuns: 3000 },
  )
})

describe('a table whose names say nothing', () => {
  const read = (text: string, hints: Parameters<typeof readWeather>[1]) =>
    readWeather(new TextEncoder().encode(text), hints)
  const rows = ['u;v;w', '2027-04-03 00:00;12,5;61', '2027-04-03 01:00;12,0;63', '2027-04-03 02:00;11,5;66']

  it('is no weather by itself, and is asked about once a person is there to say', () => {
    expect(read(rows.join('\n'), {})).not.toHaveProperty('table')
    const asked = read(rows.join('\n'), { columns: {} })
    expect(asked).toMatchObject({
      ok: false,
      table: { columns: [{ name: 'u' }, { name: 'v' }, { name: 'w' }] },
    })
    expect(asked.problems.map(({ code }) => code)).not.toContain('intake.datesAsked')
    const said = read(rows.join('\n'), {
      zone: 'UTC',
      columns: {
        u: { to: 'time', unit: '' },
        v: { to: 'airC', unit: '°C' },
        w: { to: 'humidityPct', unit: '%' },
      },
    })
    expect(said).toMatchObject({ ok: true, series: { hours: 3 } })
  })

  it('is not seen in what is no table', () => {
    for (const text of ['a: 1, b: 2\nc: 3, d: 4', 'Dear yard,\nplease, paint, her', 'u;v\nx;y', ''])
      expect(read(text, { columns: {} })).not.toHaveProperty('table')
  })
})
