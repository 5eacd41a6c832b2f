import { describe, expect, it } from 'vitest'
import { lightLimits } from './light-limits.ts'

describe('dark and evening', () => {
  it('lose an hour that is not light to its end, and tell how far it is to daylight', () => {
    const [light, dusk] = lightLimits({ hours: 2, darkHours: [0, 0.4], eveningEffect: 'risky' })
    expect(light).toBeUndefined()
    expect(dusk).toEqual({
      verdict: 'no',
      failing: [{ limit: 'dark', effect: 'no', needed: 0, had: 0.4, inHours: 0 }],
    })
  })

  it('make an hour past the stop a risk, or lose it where somebody has set the stop', () => {
    const pastStopHours = [-1, 0, 0.5]
    const usual = lightLimits({ hours: 3, pastStopHours, eveningEffect: 'risky' })
    expect(usual.map((hour) => hour?.verdict)).toEqual([undefined, undefined, 'risky'])
    const set = lightLimits({ hours: 3, pastStopHours, eveningEffect: 'no' })
    expect(set[2]?.failing).toEqual([{ limit: 'evening', effect: 'no', needed: 0, had: 0.5, inHours: 0 }])
  })

  it('say nothing where lamps burn under a roof, and of days without a sunset', () => {
    expect(lightLimits({ hours: 1, eveningEffect: 'no' })).toEqual([undefined])
    expect(lightLimits({ hours: 1, pastStopHours: [Number.NaN], eveningEffect: 'no' })).toEqual([undefined])
  })
})
