import { describe, expect, it } from 'vitest'
import { floorAt } from './wet-floor.ts'

const known = {
  wetFloorMarginK: { value: 5, certainty: 'assumed' as const },
  wetFloorHumidity: { value: 0.65, certainty: 'assumed' as const },
}
const air = (surfaceC: number, dewC: number, humidity: number) => ({
  firstMinute: 600,
  surfaceC: [Number.NaN, surfaceC],
  dewC: [Number.NaN, dewC],
  humidityShare: [Number.NaN, humidity],
})
const at = (hours: ReturnType<typeof air> | undefined, minute = 665) => floorAt(hours, { minute, known })

describe('the floor against dust', () => {
  // Trade rule: wet it only with a margin of at least 5 K and up to 65 % relative humidity.
  it('is damped only with the margin to dew and in dry air, both', () => {
    expect(at(air(20, 15, 0.65))).toBe('damp')
    expect(at(air(20, 15.1, 0.65))).toBe('dry')
    expect(at(air(20, 10, 0.66))).toBe('dry')
  })

  it('is not known without weather, outside it, or in an hour that it does not know', () => {
    expect(at(undefined)).toBe('unknown')
    expect(at(air(20, 10, 0.5), 610)).toBe('unknown')
    expect(at(air(20, 10, 0.5), 9999)).toBe('unknown')
    expect(at(air(20, 10, 0.5), 0)).toBe('unknown')
  })
})
