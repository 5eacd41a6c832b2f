import { describe, expect, it } from 'vitest'
import { cellsWith } from './weather-cells.ts'

const given = { hash: 'new', file: 'new.csv', typicalYear: false, nowAt: 'now', soleTypical: false }
const year = { ...given, typicalYear: true }

describe('the cells of a weather that was given', () => {
  it('of a forecast are its own, and leave the typical year', () => {
    expect(cellsWith({ hash: 'old', typicalHash: 'year' }, given)).toEqual({
      hash: 'new',
      file: 'new.csv',
      read: 'now',
    })
  })

  it('of a typical year stand behind the forecast, which keeps when it was read', () => {
    expect(cellsWith({ hash: 'old' }, year)).toEqual({ typicalHash: 'new', typicalFile: 'new.csv' })
    expect(cellsWith({}, year)).toEqual({ typicalHash: 'new', typicalFile: 'new.csv', read: 'now' })
  })

  it('move a typical year that stood as the weather behind the first forecast', () => {
    const before = { hash: 'year', file: 'year.epw' }
    expect(cellsWith(before, { ...given, soleTypical: true })).toMatchObject({
      hash: 'new',
      typicalHash: 'year',
      typicalFile: 'year.epw',
    })
    expect(cellsWith(before, { ...year, soleTypical: true })).toEqual({
      hash: '',
      file: '',
      typicalHash: 'new',
      typicalFile: 'new.csv',
      read: 'now',
    })
  })
})
