import { describe, expect, it } from 'vitest'
import { curveOf, farthest, linePath, rangeOf } from './weather-curves.ts'

const hourly = { firstMinute: 600, values: [10, 12, Number.NaN, 14, 16] }
const scale = { fromMinute: 600, toMinute: 840, width: 240, top: 0, bottom: 100, least: 10, most: 20 }

describe('curves of hours', () => {
  it('leave out hours that are not known and days that are not shown', () => {
    const curve = curveOf(hourly, { fromMinute: 660, toMinute: 780 })
    expect(curve.map(({ minute, value }) => [minute, value])).toEqual([
      [660, 12],
      [780, 14],
    ])
    expect(curveOf(hourly, { fromMinute: 9000, toMinute: 9900 })).toEqual([])
  })
  it('are broken over a gap', () => {
    const path = linePath(curveOf(hourly, { fromMinute: 600, toMinute: 840 }), scale)
    expect(path.match(/M/g)?.length).toBe(2)
    expect(path.startsWith('M0.0 100.0')).toBe(true)
  })
  it('stand between whole fives', () => {
    const range = rangeOf([curveOf(hourly, { fromMinute: 600, toMinute: 840 })])
    expect(range).toEqual({ least: 10, most: 20, ticks: [10, 15, 20] })
    expect(rangeOf([[]])).toBeUndefined()
  })
  it('are named where they are farthest apart', () => {
    const flat = (value: number, minute: number) => ({ minute, value })
    const low = [0, 0, 0, 0].map(flat)
    expect(farthest([0, 1, -3, 0].map(flat), low)).toEqual({ at: 0.5, over: false })
    expect(farthest([], [])).toEqual({ at: 0, over: true })
  })
})
