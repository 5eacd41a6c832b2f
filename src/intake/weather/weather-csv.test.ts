import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { HourlySeries } from '#core/climate'
import { problemsTold } from '../problem.ts'
import { seriesHash } from './series-hash.ts'
import { readWeatherCsv } from './weather-csv.ts'
import { mostWeatherBytes } from './weather-read.ts'
import { writeWeatherCsv } from './write-weather-csv.ts'

const bytes = (text: string) => new TextEncoder().encode(text)
const read = (text: string) => readWeatherCsv(bytes(text))
const plain = 'time,airC,humidityPct\n2027-04-01T00:00Z,5,80\n2027-04-01T01:00Z,4.5,82.5\n'

function readSeries(text: string): HourlySeries {
  const result = read(text)
  if (!result.ok) throw new Error(`weather not read: ${JSON.stringify(result.problems)}`)
  return result.series
}

/** Code, line and column of every problem. */
function problemsIn(text: string): readonly string[] {
  return read(text).problems.map(({ code, line, column }) =>
    [code.replace('intake.', ''), line ?? '-', column ?? '-'].join(' '),
  )
}

const rows = (count: number, row: (hour: number) => string) =>
  Array.from({ length: count }, (_, hour) => {
    const at = new Date(Date.UTC(2027, 3, 1, hour)).toISOString().slice(0, 16)
    return `${at}Z,${row(hour)}`
  }).join('\n')
const header = 'time,airC,humidityPct\n'

describe('a good file', () => {
  it('becomes a series with shares and what it says of itself', () => {
    const text = `# a remark\n# Source: invented\n# license: free to copy\n${plain}`
    expect(read(text).problems).toEqual([])
    expect(readSeries(text)).toEqual({
      kind: 'hourlySeries',
      startMs: Date.UTC(2027, 3, 1),
      hours: 2,
      airC: Float64Array.of(5, 4.5),
      humidityShare: Float64Array.of(0.8, 0.825),
      gaps: [],
      source: 'invented',
      licence: 'free to copy',
    })
  })

  it('may have every column in any order, and any of three delimiters, quotes and line ends', () => {
    const wide =
      'windMps;TIME;humiditypct;airC;rainMm;cloudPct;rainChancePct;sunWm2;windFromDeg\r\n"3";"2027-04-01 02:00:00+0200";80;"−5";0.4;25;30;0;270\r\n'
    const series = readSeries(`\ufeff${wide}`)
    const columns = ['airC', 'humidityShare', 'windMps', 'rainMm', 'cloudShare', 'rainChanceShare', 'sunWm2']
    const first = columns.map((key) => (series as unknown as Record<string, Float64Array>)[key]?.[0])
    expect(series.startMs).toBe(Date.UTC(2027, 3, 1))
    expect(first).toEqual([-5, 0.8, 3, 0.4, 0.25, 0.3, 0])
    expect(series.windFromRad?.[0]).toBeCloseTo(1.5 * Math.PI, 12)
    expect(readSeries(wide.replaceAll(';', '\t').replaceAll('\r\n', '\r'))).toEqual(series)
  })

  it('keeps an empty field unknown, says so, and does not mind a last line without an end', () => {
    const result = read(`${header}2027-04-01T00:00Z,,80\n2027-04-01T01:00Z,4,\n2027-04-01T02:00Z,4,81`)
    expect(result.ok && Array.from(result.series.airC)).toEqual([Number.NaN, 4, 4])
    expect(result.problems.map(({ code, data }) => [code, data])).toEqual([
      ['intake.figuresUnknown', { name: 'airC', count: 1, rows: 3 }],
      ['intake.figuresUnknown', { name: 'humidityPct', count: 1, rows: 3 }],
    ])
  })

  it('runs through the hour at which clocks go back', () => {
    const times = ['2027-10-31T02:00+02:00', '2027-10-31T02:00+01:00', '2027-10-31T03:00+01:00']
    const text = header + times.map((time) => `${time},9,90`).join('\n')
    expect(read(text).problems).toEqual([])
    expect(readSeries(text).hours).toBe(3)
  })

  it('may stand off the UTC hour as long as its own hours keep step', () => {
    expect(readSeries(`${header}2027-04-01T00:00+05:30,9,90\n2027-04-01T01:00+05:30,9,90`).hours).toBe(2)
  })
})

describe('hours', () => {
  it('are put in order with a note', () => {
    const text = `${header}2027-04-01T01:00Z,4,82\n2027-04-01T00:00Z,5,80\n2027-04-01T02:00Z,3,84\n`
    expect(problemsIn(text)).toEqual(['rowsSorted 3 -'])
    expect(Array.from(readSeries(text).airC)).toEqual([5, 4, 3])
  })

  it('without a row are gaps, kept unknown, with a note from when to when', () => {
    const text = `${header}2027-04-01T00:00Z,5,80\n2027-04-01T03:00Z,4,82\n`
    const series = readSeries(text)
    expect(series.gaps).toEqual([{ fromHour: 1, hours: 2 }])
    expect(Array.from(series.airC)).toEqual([5, Number.NaN, Number.NaN, 4])
    expect(read(text).problems).toEqual([
      {
        code: 'intake.gap',
        severity: 'note',
        line: 3,
        data: { fromAtMs: Date.UTC(2027, 3, 1, 1), toAtMs: Date.UTC(2027, 3, 1, 3), hours: 2 },
      },
    ])
  })

  it('that stand there twice are an error when they differ and a note when they do not', () => {
    const twice = (second: string) => `${header}2027-04-01T00:00Z,5,80\n2027-04-01T00:00Z,${second}\n`
    expect(problemsIn(twice('6,80'))).toEqual(['hourTwice 3 -'])
    expect(problemsIn(twice('5,80'))).toEqual(['hourRepeated 3 -'])
    expect(readSeries(twice('5,80')).hours).toBe(1)
  })

  it('must lie whole hours apart', () => {
    const text = `${header}2027-04-01T00:00Z,5,80\n2027-04-01T00:15Z,5,80\n2027-04-01T01:00Z,5,80\n`
    expect(problemsIn(text)).toEqual(['notHourly 3 -'])
  })

  it('may not span centuries, however few rows there are', () => {
    expect(problemsIn(`${header}1950-01-01T00:00Z,5,80\n2100-01-01T00:00Z,5,80\n`)).toEqual([
      'spanTooLong - -',
      'gap 3 -',
    ])
  })
})

describe('a bad file', () => {
  it('names an unknown column with the nearest known one', () => {
    const result = read('time,airC,humidtyPct,Temperature,wibble\n')
    expect(
      result.problems.map(({ code, column, data }) => [code, column, data.nearest ?? data.name]),
    ).toEqual([
      ['intake.columnUnknownNear', 3, 'humidityPct'],
      ['intake.columnUnknownNear', 4, 'airC'],
      ['intake.columnUnknown', 5, 'wibble'],
      ['intake.columnMissing', undefined, 'humidityPct'],
    ])
  })

  it('names a column that is missing, doubled, or a name off the object of names', () => {
    expect(problemsIn('airC,airC,constructor\n1,2,3\n')).toEqual([
      'columnTwice 1 2',
      'columnUnknown 1 3',
      'columnMissing 1 -',
      'columnMissing 1 -',
    ])
  })

  it('says where a number, a time or a line is wrong', () => {
    const text = `# remark\n${header}2027-04-01T00:00Z,five,80\nyesterday,5,80\n2027-04-01T02:00,5,80\n2027-04-01T03:00Z,5\n2027-04-01T04:00Z,5,80,9\n2027-04-01T05:00Z,NaN,0x10\n2027-04-01T06:00Z,"5,80\n`
    expect(problemsIn(text).filter((told) => !told.startsWith('figuresUnknown'))).toEqual(
      [
        'numberNotRead 3 2',
        'timeNotRead 4 1',
        'timeWithoutOffset 5 1',
        'fieldCount 6 -',
        'fieldCount 7 -',
        'numberNotRead 8 2',
        'numberNotRead 8 3',
        'quotesOpen 9 -',
      ].concat(problemsIn(text).filter((told) => told.startsWith('gap'))),
    )
  })

  it('asks for a decimal point where there is a comma', () => {
    expect(problemsIn('time;airC;humidityPct\n2027-04-01T00:00Z;5,5;80\n')[0]).toBe('decimalComma 2 2')
  })

  it.each([
    '2027-02-29T00:00Z',
    '2027-13-01T00:00Z',
    '2027-00-01T00:00Z',
    '2027-04-01T24:00Z',
    '2027-04-01T00:60Z',
    '2027-04-01T00:00+15:00',
    '2027-04-01T00:00+01:60',
    '1027-04-01T00:00Z',
    '2027-04-01',
    '1743465600',
    '=NOW()',
  ])('does not take %s for a time', (time) => {
    expect(problemsIn(`${header}${time},5,80\n`)).toEqual(['timeNotRead 2 1'])
  })

  it.each([
    ['60.1,80', 'outOfRange 2 2'],
    ['-60.1,80', 'outOfRange 2 2'],
    ['5,100.1', 'outOfRange 2 3'],
    ['5,-1', 'outOfRange 2 3'],
    ['1e999,80', 'outOfRange 2 2'],
  ])('does not take %s for weather', (row, problem) => {
    const text = `${header}${rows(1, () => row)}\n${rows(9, () => '5,80')
      .split('\n')
      .slice(1)
      .join('\n')}`
    expect(problemsIn(text)).toEqual([problem])
  })

  it('catches humidity written as a share', () => {
    expect(problemsIn(header + rows(5, (hour) => `5,${0.5 + hour / 10}`))).toEqual(['shareNotPercent - 3'])
    expect(problemsIn(header + rows(5, () => '5,1'))).toEqual(['shareNotPercent - 3'])
  })

  it('catches cloud written as a share but takes a sky clear throughout', () => {
    const cloudy = 'time,airC,humidityPct,cloudPct\n'
    expect(problemsIn(cloudy + rows(3, (hour) => `5,80,${hour / 2}`))).toEqual(['shareNotPercent - 4'])
    expect(problemsIn(cloudy + rows(3, () => '5,80,0'))).toEqual([])
  })

  it('catches air in Fahrenheit, once and not line by line', () => {
    expect(problemsIn(header + rows(100, (hour) => `${50 + (hour % 30)},80`))).toEqual([
      'airInFahrenheit - 2',
    ])
    expect(problemsIn(header + rows(100, (hour) => `${15 + (hour % 30)},30`))).toEqual([])
  })

  it('that ends in the middle of a line says so', () => {
    expect(problemsIn(`${plain}2027-04-01T02:00Z,4`)).toEqual(['endsMidRow 4 -'])
    expect(problemsIn(`${plain}2027-04-`)).toEqual(['endsMidRow 4 -'])
  })

  it('tells fifty problems and counts the rest', () => {
    const result = read(`time,airC,humidityPct\n${rows(200, () => 'warm,damp')}`)
    const errors = result.problems.filter((problem) => problem.severity === 'error')
    expect(errors).toHaveLength(problemsTold + 1)
    // Two fields a row.
    expect(errors.at(-1)).toEqual({ code: 'intake.moreErrors', severity: 'error', data: { count: 350 } })
  })

  it('is told in the order of its lines', () => {
    const text = header + rows(30, (hour) => (hour % 2 ? '99,80' : 'warm,80'))
    const lines = read(text).problems.flatMap(({ line }) => line ?? [])
    expect(lines).toEqual([...lines].sort((a, b) => a - b))
  })
})

describe('what is no weather file at all', () => {
  it.each([
    ['nothing', new Uint8Array(0), 'intake.empty'],
    ['blanks', bytes(' \n\r\n\t'), 'intake.empty'],
    ['remarks only', bytes('# source: none\n'), 'intake.noHeader'],
    ['a header only', bytes(header), 'intake.noRows'],
    ['zeros', new Uint8Array(1000), 'intake.binary'],
    ['a picture', Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10, 0, 0), 'intake.binary'],
    [
      'Latin-1',
      Uint8Array.from([...'Température'].map((letter) => letter.charCodeAt(0))),
      'intake.columnUnknown',
    ],
    ['half of UTF-16', Uint8Array.of(0xff, 0xfe, 0x74, 0x00, 0x74), 'intake.binary'],
    ['UTF-16 with zeros in it', Uint8Array.of(0xfe, 0xff, 0x00, 0x74, 0x00, 0x00), 'intake.binary'],
    ['another table', bytes('a,b\n1,2\n'), 'intake.columnUnknown'],
    ['a page', bytes('<!doctype html><html><body>Not found</body></html>'), 'intake.columnUnknown'],
  ])('%s is refused by name', (_, file, code) => {
    const result = readWeatherCsv(file)
    expect(result.ok).toBe(false)
    expect(result.problems[0]?.code).toBe(code)
  })

  it('shows text of the file short and without control or direction characters', () => {
    const name = read(`time,${'x'.repeat(900)}\u202e\u0085\n`).problems[0]?.data.name
    expect(name).toBe(`${'x'.repeat(39)}…`)
    const cell = read(`${header}\u202eevil\u0085,5,80\n`).problems[0]?.data.found
    expect(cell).toBe('evil')
  })
})

/** Memory and time stay bounded; the limits are about ten times what was measured. */
describe('a hostile file', () => {
  const quick = (file: Uint8Array, code: string, mostMs: number) => {
    const from = performance.now()
    const result = readWeatherCsv(file)
    expect(performance.now() - from).toBeLessThan(mostMs)
    expect(result.ok).toBe(false)
    expect(result.problems.map((problem) => problem.code)).toContain(code)
    expect(result.problems.length).toBeLessThanOrEqual(2 * problemsTold + 2)
  }
  const full = (text: string) => bytes(text.repeat(Math.floor(mostWeatherBytes / text.length)))

  it('of 200 MB is not looked at', () => {
    quick(new Uint8Array(200_000_000).fill(65), 'intake.fileTooLarge', 50)
  })

  it.each([
    ['one line of commas', ',', 'intake.lineTooLong'],
    ['quotes', '"', 'intake.lineTooLong'],
    ['quotes and line ends', '"\n', 'intake.quotesOpen'],
    ['line ends', '\n', 'intake.empty'],
    ['short rows of nothing', ',\n', 'intake.columnUnknown'],
    ['remarks', '#\n', 'intake.noHeader'],
  ])('of 20 MB of %s ends soon', (_, text, code) => {
    quick(full(text), code, 10_000)
  })

  it('of 20 MB of rows ends at the most rows', () => {
    const row = '2027-04-01T00:00Z,5,80\n'
    quick(bytes(header + row.repeat(800_000)), 'intake.tooManyRows', 10_000)
    quick(bytes(`${header}${',\n'.repeat(9_000_000)}`), 'intake.tooManyRows', 10_000)
    quick(bytes(header + `"${'""'.repeat(2000)}\n`.repeat(4900)), 'intake.quotesOpen', 10_000)
  })

  it('of any bytes gives a verdict and never throws', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 400 }), (file) => {
        const result = readWeatherCsv(file)
        expect(result.ok || result.problems.length > 0).toBe(true)
      }),
      { seed: 21, numRuns: 2000 },
    )
  })

  it('made by spoiling a good one gives a series or errors, and only true figures', () => {
    const good = header + rows(20, (hour) => `${hour},80`)
    const spoiled = fc
      .array(
        fc.tuple(fc.nat(good.length), fc.constantFrom(',', '"', '\n', '-', 'Z', '9', '', ';', '\0', 'é')),
        {
          minLength: 1,
          maxLength: 4,
        },
      )
      .map((cuts) => cuts.reduce((text, [at, put]) => text.slice(0, at) + put + text.slice(at + 1), good))
    fc.assert(
      fc.property(spoiled, (text) => {
        const result = read(text)
        expect(result.problems.some(({ severity }) => severity === 'error')).toBe(!result.ok)
        if (!result.ok) return
        const { airC, humidityShare, hours } = result.series
        expect([airC.length, humidityShare.length]).toEqual([hours, hours])
        expect(humidityShare.every((share) => Number.isNaN(share) || (share >= 0 && share <= 1))).toBe(true)
        expect(airC.every((air) => Number.isNaN(air) || (air >= -60 && air <= 60))).toBe(true)
      }),
      { seed: 22, numRuns: 2000 },
    )
  })
})

describe('writing', () => {
  const figure = (least: number, most: number) =>
    fc.oneof(
      { weight: 8, arbitrary: fc.double({ min: least, max: most, noNaN: true }) },
      fc.constant(Number.NaN),
    )
  const anySeries = fc.integer({ min: 3, max: 40 }).chain((hours) => {
    const column = (least: number, most: number) =>
      fc
        .array(figure(least, most), { minLength: hours, maxLength: hours })
        .map((list) => Float64Array.from(list))
    return fc.record(
      {
        kind: fc.constant('hourlySeries' as const),
        startMs: fc.integer({ min: 0, max: 1e6 }).map((hour) => hour * 3_600_000),
        hours: fc.constant(hours),
        // Warmer air could not be as damp as some of what is made here.
        airC: column(-60, 32),
        humidityShare: column(0.02, 1),
        windMps: column(0, 40),
        rainMm: column(0, 50),
        rainChanceShare: column(0, 1),
        cloudShare: column(0, 1),
        sunWm2: column(0, 1200),
        gaps: fc.constant([]),
        source: fc.string({ maxLength: 20 }),
        licence: fc.string({ maxLength: 20 }),
      },
      { requiredKeys: ['kind', 'startMs', 'hours', 'airC', 'humidityShare', 'gaps', 'source', 'licence'] },
    )
  })

  it('and reading again keeps every series, its hash included', () => {
    fc.assert(
      fc.property(anySeries, fc.constantFrom(0, 120, -300, 330), (made, offsetMinutes) => {
        // Shares small throughout read as shares called per cent, and that is not what is tested here.
        const raised = ([key, at]: [string, unknown]) => [
          key,
          key.endsWith('Share') ? withFirst(at as Float64Array, 1) : at,
        ]
        const series: HourlySeries = Object.fromEntries(
          Object.entries({ ...made, airC: withFirst(made.airC, 20) }).map(raised),
        )
        const again = readSeries(writeWeatherCsv(series, offsetMinutes))
        expect(seriesHash(again)).toBe(seriesHash(series))
        expect(again.startMs).toBe(series.startMs)
        again.airC.forEach((air, hour) => {
          const meant = series.airC[hour]!
          expect(Number.isNaN(meant) ? Number.isNaN(air) : Math.abs(air - meant) < 1e-6).toBe(true)
        })
      }),
      { seed: 23, numRuns: 300 },
    )
  })

  it('leaves gaps out, so that they are gaps again', () => {
    const text = `${header}2027-04-01T00:00Z,5,80\n2027-04-01T03:00Z,4,82\n`
    expect(writeWeatherCsv(readSeries(text))).toBe(text)
  })

  it('keeps source and licence on one line each', () => {
    const series = { ...readSeries(plain), source: 'two\nlines', licence: '' }
    expect(writeWeatherCsv(series)).toBe(`# source: two lines\n${plain}`)
  })
})

function withFirst(column: Float64Array, value: number): Float64Array {
  return column.map((old, hour) => (hour === 0 ? value : old))
}

describe('the hash of a series', () => {
  it('is the SHA-256 of its canonical text', () => {
    const canonical = `hourly series 1\n${plain}`
    expect(seriesHash(readSeries(plain))).toBe(
      '9acb21c4db6f2ed9d2f037a2a9216bbfd237a5e950f82eb21301c9909238b4c9',
    )
    expect(canonical).toContain('82.5')
  })

  it('does not mind column order, delimiter or offset, and minds every figure', () => {
    const hash = seriesHash(readSeries(plain))
    const same = 'humidityPct;airC;time\n80;5;2027-04-01T02:00+02:00\n82.50;4.5;2027-04-01T03:00+02:00\n'
    expect(seriesHash(readSeries(same))).toBe(hash)
    expect(seriesHash(readSeries(plain.replace('82.5', '82.6')))).not.toBe(hash)
    expect(seriesHash(readSeries(plain.replaceAll('04-01', '04-02')))).not.toBe(hash)
    expect(seriesHash(readSeries(`# source: x\n${plain}`))).not.toBe(hash)
  })
})
