import { describe, expect, it } from 'vitest'
import { createWords } from '#words'
import { MIDNIGHT, paperPlan } from '../../../../test/support/paper-plan.ts'
import { rainLong, rainTotals, unknownRain } from './rain-strokes.tsx'
import { weatherHours } from './weather-hours.ts'
import { rainText, windText } from './weather-table.tsx'

const sky = {
  firstMinute: MIDNIGHT,
  rainMm: [0, 4, Number.NaN, Number.NaN],
  rainChanceShare: [0, 1, 0.3, Number.NaN],
  windMps: [0.2, 6, Number.NaN, 6],
  windFromRad: [0, Math.PI, 0, Number.NaN],
}
const plan = { ...paperPlan, conditions: { ...paperPlan.conditions, sky } }
const hours = weatherHours(plan, { fromMinute: MIDNIGHT - 60, toMinute: MIDNIGHT + 6 * 60 })
const words = createWords({ locale: 'en-GB', system: 'metric' })
const plain = (text: string) => text.replaceAll(/[\u2009\u00a0]/g, ' ')

describe('the weather over the days', () => {
  it('is there for every hour, and what nobody knows is never dry', () => {
    expect(hours.map(({ rain }) => rain.kind)).toEqual([
      'unknown',
      'dry',
      'fell',
      'chance',
      'unknown',
      'unknown',
      'unknown',
    ])
    expect(unknownRain(hours)).toEqual([
      { fromMinute: MIDNIGHT - 60, toMinute: MIDNIGHT },
      { fromMinute: MIDNIGHT + 180, toMinute: MIDNIGHT + 360 },
    ])
    expect(rainTotals(hours)).toEqual({ count: 1, rainMm: 4, chances: 1, unknown: 4 })
  })
  it('hangs the longer the more it rains, and not at all where it stays dry', () => {
    const long = (mm: number) => rainLong({ kind: 'fell', mm })
    expect([long(0.1), long(1), long(4), long(40)]).toEqual([8, 14, 23, 30])
    expect(rainLong({ kind: 'dry' })).toBe(0)
  })
  it('says in its table what the drawing shows', () => {
    expect(hours.map(({ rain }) => plain(rainText(rain, words)))).toEqual([
      'not known',
      'none',
      '4 mm',
      '30 % chance',
      'not known',
      'not known',
      'not known',
    ])
    const wind = hours.map((hour) => plain(windText(hour.wind, words)))
    expect(wind.slice(0, 5)).toEqual([
      'not known',
      '0.2 m/s, 0 kn from 0°',
      '6 m/s, 12 kn from 180°',
      'not known',
      '6 m/s, 12 kn',
    ])
  })
  it('is not known at all without any weather', () => {
    const { sky: _sky, ...bare } = plan.conditions
    const none = weatherHours({ ...plan, conditions: bare }, { fromMinute: 0, toMinute: 120 })
    expect(none.map(({ rain, wind }) => [rain.kind, wind])).toEqual([
      ['unknown', undefined],
      ['unknown', undefined],
    ])
  })
})
