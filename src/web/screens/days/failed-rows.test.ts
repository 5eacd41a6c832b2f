import { describe, expect, it } from 'vitest'
import { createWords } from '#words'
import type { Failing, ShownPlan } from '../../worker/messages.ts'
import { failedRows } from './failed-rows.ts'
import { worstOfEach } from './failing-hours.ts'
import { hourRows } from './limit-rows.ts'

const words = createWords({ locale: 'en-GB', system: 'metric', timeZone: 'UTC' })
const plain = (text: string) => text.replace(/[\u00a0\u2009\u202f]/g, ' ')
const failing = (change: Partial<Failing[number]>): Failing[number] => ({
  limit: 'wind',
  effect: 'no',
  needed: 6,
  had: 8,
  inHours: 0,
  ...change,
})

describe('rows of limits that failed', () => {
  const rows = failedRows({ words }, [
    failing({}),
    failing({ limit: 'airLeast' }),
    failing({ limit: 'hotSun', effect: 'risky', needed: 5, had: 8 }),
    failing({ limit: 'dark', needed: 0, had: 1.5 }),
    failing({ limit: 'evening', effect: 'risky', needed: 0, had: 0.5 }),
    failing({ limit: 'wetSince', effect: 'risky', needed: 1, had: 0 }),
    failing({ limit: 'wind', effect: 'risky', needed: 4, had: null }),
  ])

  it('say what was needed, what there was and by how much it misses', () => {
    expect(
      rows.map(({ limit, had, needed, by, so }) =>
        [limit, had, needed, by, so].map((text) => plain(`${text}`)),
      ),
    ).toEqual([
      ['Wind at the hull', '8 m/s', 'at most 6 m/s', '2 m/s', 'not'],
      ['Sun on this side', '8 °C over air', 'at most 5 °C over air', '3 °C', 'risky'],
      ['Light', '1 h 30 min from daylight', 'daylight or lamps', '1 h 30 min', 'not'],
      ['Evening stop', '30 min past it', 'done by then', '30 min', 'risky'],
      ['Dry since the wet', '0 min', 'at least 1 h', '1 h', 'risky'],
      ['Wind at the hull', 'not known', 'at most 4 m/s', 'undefined', 'risky'],
    ])
  })

  it('come once for each limit, from the hour that misses by most', () => {
    const found = worstOfEach([failing({ had: 7 }), failing({ had: 9 }), failing({ limit: 'dark', had: 1 })])
    expect(found.map(({ limit, had }) => [limit, had])).toEqual([
      ['wind', 9],
      ['dark', 1],
    ])
  })
})

describe('the row of the skin', () => {
  const sure = (value: number) => ({ value, certainty: 'sheet' })
  const rowOf = (surfaceC: number, own: object = {}, warmestC?: number) => {
    const sheet = {
      id: 's',
      airLeastC: sure(8),
      airMostC: sure(30),
      humidityMost: sure(0.8),
      dewMarginK: sure(3),
      ...own,
    }
    const plan = {
      buildUps: { sheets: [sheet] },
      conditions: {
        air: [
          {
            ...{ key: 'boat', shelter: 'cover', firstMinute: 0, airC: [20], humidityShare: [0.5], dewC: [9] },
            surfaceC: [surfaceC],
            ...(warmestC === undefined ? {} : { warmestC: [warmestC] }),
          },
        ],
      },
    } as unknown as ShownPlan
    const hours = {
      sheet: 's',
      place: 'boat',
      firstMinute: 0,
      hoursAfter: [0],
      verdicts: ['go'],
      key: 'k',
    } as const
    const rows = hourRows({
      view: { words, timeZone: 'UTC' },
      plan,
      hours,
      of: { fromMinute: 0, toMinute: 60 },
    })
    const { needed, by, so } = rows.find(({ id }) => id === 'skin')!
    return [plain(needed), by === undefined ? '' : plain(by), so]
  }

  it('goes by the air of a sheet that does not tell the skin, with a band of risk', () => {
    expect(rowOf(29)).toEqual(['8 °C to 30 °C', '', 'ok'])
    expect(rowOf(33)).toEqual(['8 °C to 30 °C', '3 °C', 'risky'])
    expect(rowOf(36)).toEqual(['8 °C to 30 °C', '6 °C', 'not'])
    expect(rowOf(6)).toEqual(['8 °C to 30 °C', '2 °C', 'risky'])
    expect(rowOf(2)).toEqual(['8 °C to 30 °C', '6 °C', 'not'])
  })

  it('goes by the sheet where it does tell it, and by the warmer of two sides', () => {
    expect(rowOf(29, { skinLeastC: sure(10), skinMostC: sure(28) })).toEqual([
      '10 °C to 28 °C',
      '1 °C',
      'not',
    ])
    expect(rowOf(20, {}, 37)).toEqual(['8 °C to 30 °C', '7 °C', 'not'])
  })
})
