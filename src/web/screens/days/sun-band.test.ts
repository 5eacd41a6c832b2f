import { describe, expect, it } from 'vitest'
import { hillPath, sunCurve } from './sun-band.tsx'

describe('the band of the sun', () => {
  it('stands at the middle of each hour, and leaves out hours nobody knows', () => {
    const curve = sunCurve(
      { firstMinute: 0, sunWm2: [0, 550, Number.NaN, 1100] },
      { fromMinute: 0, toMinute: 240 },
    )
    expect(curve.map(({ minute, value }) => [minute, value])).toEqual([
      [30, 0],
      [90, 550],
      [210, 1100],
    ])
  })

  it('is one closed hill on the ground', () => {
    const curve = [
      { minute: 30, value: 0 },
      { minute: 90, value: 1100 },
      { minute: 330, value: 0 },
    ]
    const path = hillPath(curve, { fromMinute: 0, toMinute: 360, width: 360 })
    expect(path.match(/M/g)).toHaveLength(1)
    expect(path.endsWith('Z')).toBe(true)
    expect(path).toContain('90.0 2.0')
    expect(hillPath([], { fromMinute: 0, toMinute: 60, width: 10 })).toBe('')
  })
})
