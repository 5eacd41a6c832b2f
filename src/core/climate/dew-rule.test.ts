import { describe, expect, it } from 'vitest'
import { dewLimitFiveFahrenheitK, dewLimitK, dewRule } from './dew-rule.ts'

describe('dew rule', () => {
  it('lets a surface 4 K above the dew point be painted', () => {
    const verdict = dewRule({ surfaceC: 19, dewC: 15, limitK: dewLimitK })
    expect(verdict).toEqual({ go: true, state: 'dry', marginK: 4, limitK: 3 })
  })

  it('stops a surface 2 K above the dew point', () => {
    expect(dewRule({ surfaceC: 13, dewC: 11, limitK: dewLimitK })).toMatchObject({
      go: false,
      state: 'close',
    })
  })

  it('calls a surface at or under the dew point wet', () => {
    expect(dewRule({ surfaceC: 9, dewC: 9.7, limitK: dewLimitK }).state).toBe('wet')
    expect(dewRule({ surfaceC: 9, dewC: 9, limitK: dewLimitK }).state).toBe('wet')
  })

  it('counts a margin equal to the limit as a go, also between decimals', () => {
    expect(dewRule({ surfaceC: 13, dewC: 10, limitK: dewLimitK }).go).toBe(true)
    expect(dewRule({ surfaceC: 13.3, dewC: 10.3, limitK: dewLimitK }).go).toBe(true)
    expect(dewRule({ surfaceC: 12.999, dewC: 10, limitK: dewLimitK }).go).toBe(false)
  })

  it('keeps 5 °F apart from 3 °C', () => {
    expect(dewLimitFiveFahrenheitK).toBeCloseTo(2.7778, 4)
    const skin = { surfaceC: 12.9, dewC: 10 }
    expect(dewRule({ ...skin, limitK: dewLimitFiveFahrenheitK }).go).toBe(true)
    expect(dewRule({ ...skin, limitK: dewLimitK }).go).toBe(false)
  })
})
