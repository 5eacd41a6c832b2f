import { describe, expect, it } from 'vitest'
import { hourMs, percent, shareOf, tapeTicks } from './time-axis.ts'

const at = (text: string) => Date.parse(text)

describe('tapeTicks', () => {
  it('stand at every full hour of the place, longer at three, six and midnight', () => {
    const ticks = tapeTicks({
      fromMs: at('2027-05-14T00:00Z'),
      toMs: at('2027-05-15T00:00Z'),
      timeZone: 'UTC',
    })
    expect(ticks).toHaveLength(25)
    const sizes = ticks.slice(0, 7).map((tick) => tick.size)
    expect(sizes).toEqual(['day', 'hour', 'hour', 'third', 'hour', 'hour', 'sixth'])
  })

  it('follow a zone that is off by three quarters of an hour', () => {
    const fromMs = at('2027-05-14T00:00Z')
    const [first] = tapeTicks({ fromMs, toMs: fromMs + 3 * hourMs, timeZone: 'Asia/Kathmandu' })
    expect(first).toMatchObject({ atMs: fromMs + hourMs / 4, hour: 6 })
  })

  it('skip the hour that the clocks leave out', () => {
    const fromMs = at('2027-03-28T00:00Z')
    const ticks = tapeTicks({ fromMs, toMs: fromMs + 2 * hourMs, timeZone: 'Europe/Paris' })
    expect(ticks.map((tick) => tick.hour)).toEqual([1, 3, 4])
  })

  it('stay few and finite whatever the stretch and the zone', () => {
    expect(tapeTicks({ fromMs: 5, toMs: 1, timeZone: 'UTC' })).toEqual([])
    expect(tapeTicks({ fromMs: 0, toMs: 1e15, timeZone: 'UTC' })).toHaveLength(24 * 366)
    expect(tapeTicks({ fromMs: Number.NaN, toMs: 0, timeZone: 'UTC' })).toEqual([])
    expect(tapeTicks({ fromMs: 0, toMs: hourMs, timeZone: 'Mars/North' })).toHaveLength(2)
  })
})

describe('shareOf', () => {
  it('keeps to the line', () => {
    const span = { fromMs: 100, toMs: 200 }
    expect([50, 100, 150, 300].map((moment) => shareOf(moment, span))).toEqual([0, 0, 0.5, 1])
    expect(shareOf(5, { fromMs: 7, toMs: 7 })).toBe(0)
    expect(percent(1 / 3)).toBe('33.333%')
  })
})
