import { describe, expect, it } from 'vitest'
import { unitHint, withUnit } from './unit-hint.ts'

describe('a bare number', () => {
  it('means the unit that the box shows', () => {
    expect(withUnit(' 6.2 ', unitHint({ dimension: 'length' }, 'metric'))).toBe('6.2 m')
    expect(withUnit('60', unitHint({ dimension: 'length', scale: 'film' }, 'metric'))).toBe('60 µm')
    expect(withUnit('3', unitHint({ dimension: 'length', scale: 'hand' }, 'us'))).toBe('3 in')
    expect(withUnit('20', unitHint({ dimension: 'length' }, 'us'))).toBe('20 ft')
    expect(withUnit('12', unitHint({ dimension: 'power' }, 'metric'))).toBe('12 kW')
  })

  it('is left as it is where a unit was written, and where the box shows none', () => {
    expect(withUnit('25 ft 4 in', 'm')).toBe('25 ft 4 in')
    expect(withUnit('six', 'm')).toBe('six')
    expect(withUnit('', 'm')).toBe('')
    expect(withUnit('6.2', undefined)).toBe('6.2')
  })
})
