import { describe, expect, it } from 'vitest'
import { readAir } from './read-air.ts'

const none = { air: '', humidity: '', skin: '' }
const metric = { system: 'metric' } as const

describe('a reading as it is typed', () => {
  it('takes bare numbers in the units of the job', () => {
    const texts = { air: '14', humidity: '65', skin: ' 12,5 ' }
    expect(readAir(texts, metric).cells).toEqual({ air: '14 °C', humidity: '65 %', skin: '12,5 °C' })
    expect(readAir({ ...texts, air: '57°' }, { system: 'us' }).cells.air).toBe('57 °F')
  })
  it('keeps what has a unit as it was written, and a share as a share', () => {
    expect(readAir({ air: '57 °F', humidity: '0.65', skin: '' }, metric).cells).toEqual({
      air: '57 °F',
      humidity: '0.65',
    })
  })
  it('names what cannot be a reading, and keeps nothing of it', () => {
    const read = readAir({ air: 'warm', humidity: '130', skin: '400' }, metric)
    expect(read).toEqual({ cells: {}, wrong: ['air', 'humidity', 'skin'] })
    expect(readAir(none, metric)).toEqual({ cells: {}, wrong: [] })
  })
  // 16 °C and 71 % drop water at 10.7 °C: the worked example of the quick sum, after WMO-No. 8, Annex 4.B.
  it('gives the dew point, and holds the skin against it with the margin of the product', () => {
    const air = { air: '16', humidity: '71' }
    const dew = readAir({ ...air, skin: '' }, metric)
    expect(dew.dewC).toBeCloseTo(10.7, 1)
    expect(dew.leastSkinC).toBeCloseTo(13.7, 1)
    expect(dew.verdict).toBeUndefined()
    const verdict = (skin: string, limitK?: number) =>
      readAir({ ...air, skin }, { ...metric, limitK }).verdict
    expect(['14', '13', '10'].map((skin) => verdict(skin))).toEqual(['enough', 'close', 'wet'])
    expect(verdict('14', 5)).toBe('close')
    expect(readAir({ ...air, skin: '13' }, metric).marginK).toBeCloseTo(2.3, 1)
  })
  it('says nothing of dew where the air is without water', () => {
    expect(readAir({ air: '16', humidity: '0', skin: '12' }, metric).dewC).toBeUndefined()
  })
})
