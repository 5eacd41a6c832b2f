import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { type Dimension, read, readOrThrow } from './index.ts'
import { unitTable } from './unit-table.ts'

type Multiple = readonly [one: string, count: number, of: string, dimension: Dimension]

/** What the published factors do not list: each unit as a count of another. */
const multiples: readonly Multiple[] = [
  ['km', 1000, 'm', 'length'],
  ['m', 10, 'dm', 'length'],
  ['m', 100, 'cm', 'length'],
  ['m', 1000, 'mm', 'length'],
  ['m²', 100, 'dm²', 'area'],
  ['m²', 10_000, 'cm²', 'area'],
  ['m²', 1_000_000, 'mm²', 'area'],
  ['m³', 1000, 'dm³', 'volume'],
  ['m³', 1_000_000, 'cm³', 'volume'],
  ['m³', 1e9, 'mm³', 'volume'],
  ['m³', 1000, 'L', 'volume'],
  ['L', 10, 'dl', 'volume'],
  ['L', 100, 'cl', 'volume'],
  ['L', 1000, 'ml', 'volume'],
  ['imp gal', 4, 'imp qt', 'volume'],
  ['imp qt', 2, 'imp pt', 'volume'],
  ['imp pt', 20, 'imp fl oz', 'volume'],
  ['t', 1000, 'kg', 'mass'],
  ['kg', 1000, 'g', 'mass'],
  ['g', 1000, 'mg', 'mass'],
  ['lb', 16, 'oz av', 'mass'],
  ['wk', 7, 'd', 'time'],
  // A mean year of the Gregorian calendar: 146,097 days in 400 years.
  ['yr', 146_097 / 400, 'd', 'time'],
  ['month', 146_097 / 4800, 'd', 'time'],
  ['d', 24, 'h', 'time'],
  ['h', 60, 'min', 'time'],
  ['min', 60, 's', 'time'],
  ['rad', 1000, 'mrad', 'angle'],
  ['%', 10, '‰', 'share'],
  ['‰', 1000, 'ppm', 'share'],
  ['MPa', 1000, 'kPa', 'pressure'],
  ['kPa', 10, 'hPa', 'pressure'],
  ['hPa', 100, 'Pa', 'pressure'],
  ['kW', 1000, 'W', 'power'],
  ['m/s', 3.6, 'km/h', 'speed'],
  ['gal/min', 60, 'gal/h', 'volumeRate'],
  ['gsm', 1, 'g/m²', 'areicMass'],
  ['kWh/h', 1, 'kW', 'power'],
]

/** Temperatures and their differences stand in the table of accepted texts. */
const elsewhere = ['°C', '°F', 'K', 'kWh', 'BTU']

describe('the table of units', () => {
  it.each(multiples)('holds that 1 %s is %d %s', (one, count, of, dimension) => {
    const { value } = readOrThrow(`1 ${one}`, dimension)
    const other = readOrThrow(`1 ${of}`, dimension).value
    // Two correctly rounded sizes and one product.
    expect(Math.abs(value / (count * other) - 1)).toBeLessThan(1e-15)
  })

  it('has no unit whose size is not tested here or against a published factor', () => {
    const published = readFileSync(new URL('../../test/published/unit-factors.json', import.meta.url), 'utf8')
    const seen = new Set<string>(elsewhere)
    for (const [one, , of] of multiples) seen.add(one).add(of)
    for (const [, text, dimension] of published.matchAll(/"text": "([^"]+)",\s*"dimension": "([^"]+)"/g)) {
      seen.add(readOrThrow(text as string, dimension as Dimension).unit)
    }
    expect(unitTable.map(({ id }) => id).filter((id) => !seen.has(id))).toEqual([])
  })

  it('shares a spelling, capitals aside, only where that is meant', () => {
    const owners = new Map<string, Set<string>>()
    for (const { id, spellings } of unitTable) {
      for (const spelling of spellings) {
        const key = spelling.toLowerCase()
        owners.set(key, (owners.get(key) ?? new Set()).add(id))
      }
    }
    const shared = [...owners].filter(([, ids]) => ids.size > 1).map(([key]) => key)
    expect(shared.sort()).toEqual(['"', "'", 'deg', 'degree', 'degrees', 'degs', 'ton', 'tons', '°'].sort())
  })

  it('suggests the nearest unit of the right kind first', () => {
    expect(read('3 mixs', 'time')).toMatchObject({ fault: { data: { nearest: 'min' } } })
    expect(read('3 mixs', 'length')).toMatchObject({ fault: { data: { nearest: 'mil' } } })
    expect(read('3 litters', 'volume')).toMatchObject({ fault: { data: { nearest: 'L' } } })
    expect(read('3 galons', 'volume')).toMatchObject({ fault: { data: { nearest: 'gal' } } })
  })
})
