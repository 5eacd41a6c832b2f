import { describe, expect, it } from 'vitest'
import { readWeather, type TableLook } from '#intake'
import { firstSaid, hintsOf, toldApart, withTarget, withUnit } from './table-said.ts'

const text = [
  'stamp;inside;wet',
  ...Array.from({ length: 6 }, (_, hour) => `03/04/2027 0${hour}:00;${60 + hour};0,6${hour}`),
].join('\n')
const bytes = new TextEncoder().encode(text)

function lookOf(): TableLook {
  const read = readWeather(bytes, { columns: {} })
  if (read.ok || !read.table) throw new Error('the table is not asked about')
  return read.table
}

describe('what is said of a table', () => {
  it('is preset with what was guessed, and reads the table once all of it is said', () => {
    const first = firstSaid({ table: lookOf(), zone: 'Europe/Berlin' })
    expect(first.columns.map(({ to }) => to)).toEqual(['ignore', 'ignore', 'ignore'])
    const named = withTarget(withTarget(withTarget(first, 0, 'time'), 1, 'airC'), 2, 'humidityPct')
    const whole = { ...withUnit(withUnit(named, 1, '°F'), 2, '0..1'), dates: 'dmy' as const }
    const read = readWeather(bytes, hintsOf(whole, false))
    expect(read.ok).toBe(true)
    if (!read.ok) return
    expect(read.series.hours).toBe(6)
    expect(read.series.airC[0]).toBeCloseTo((60 - 32) / 1.8, 9)
    expect(read.series.humidityShare[3]).toBeCloseTo(0.63, 9)
    // Midnight of the third of April in summer time.
    expect(read.series.startMs).toBe(Date.parse('2027-04-02T22:00Z'))
  })

  it('takes what a column is from the one that was it, and a unit that does not fit', () => {
    const first = firstSaid({ table: lookOf(), zone: '' })
    const one = withUnit(withTarget(first, 1, 'airC'), 1, '°F')
    const moved = withTarget(one, 2, 'airC')
    expect(moved.columns.map(({ to }) => to)).toEqual(['ignore', 'ignore', 'airC'])
    expect(withTarget(one, 1, 'windMps').columns[1]).toMatchObject({ to: 'windMps', unit: '' })
    expect(withTarget(one, 1, 'windFromDeg').columns[1]?.unit).toBe('°')
    expect(hintsOf(first, false)).not.toHaveProperty('zone')
  })

  it('tells columns of one name apart, and reads each as what was said of it', () => {
    const alike = text.replace('stamp;inside;wet', 'x;x;x')
    const read = readWeather(new TextEncoder().encode(alike), { columns: {} })
    if (read.ok || !read.table) throw new Error('the table is not asked about')
    const first = firstSaid({ table: read.table, zone: 'UTC' })
    expect([0, 1, 2].map((at) => toldApart(first, read.table!, at))).toEqual([
      { at: 1, first: '03/04/2027 00:00' },
      { at: 2, first: '60' },
      { at: 3, first: '0,60' },
    ])
    expect(toldApart(firstSaid({ table: lookOf(), zone: '' }), lookOf(), 1)).toBeUndefined()
    const named = withTarget(withTarget(withTarget(first, 0, 'time'), 1, 'airC'), 2, 'humidityPct')
    const whole = { ...withUnit(withUnit(named, 1, '°F'), 2, '0..1'), dates: 'dmy' as const }
    const again = readWeather(new TextEncoder().encode(alike), hintsOf(whole, false))
    expect(again.ok && [again.series.airC[5]! * 1.8 + 32, again.series.humidityShare[5]]).toEqual([65, 0.65])
  })
})
