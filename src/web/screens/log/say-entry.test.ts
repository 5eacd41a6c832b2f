import { describe, expect, it } from 'vitest'
import { createWords } from '#words'
import { paperPlan } from '../../../../test/support/paper-plan.ts'
import type { LogLine } from '../../job/job-view.ts'
import { byDay } from './log-screen.tsx'
import { sayEntry, saySetting } from './say-entry.ts'

const words = createWords({ locale: 'en-GB', system: 'metric', timeZone: 'UTC' })
const view = { plan: paperPlan, words, system: 'metric', timeZone: 'UTC' } as const
const say = (cells: Readonly<Record<string, string>>) => sayEntry(view, cells).replaceAll('\u2009', ' ')
const step = 'coat:port:primer:1'

describe('an entry of the log', () => {
  it('of a mishap says what went wrong, with what, and what became of it', () => {
    expect(say({ kind: 'mishap', mishap: 'runs', step, film: 'stands' })).toMatch(/^Runs: .+\. It stands$/)
    expect(say({ kind: 'mishap', mishap: 'unheard of' })).toBe('Went wrong')
  })
  it('of a coat says batches, quantity, wet film and skin', () => {
    const held = { batch: 'B1/0427', used: '0.9 L', wetFilm: '110 µm', skin: '16 °C', text: 'fine' }
    expect(say({ kind: 'done', step, ...held })).toMatch(
      /^Done: .+\. Skin 16 °C\. Batch B1\/0427, 0\.9 L used, wet film 110 µm\. Fine$/,
    )
  })
  it('of a reading says all of it, with dew and margin', () => {
    expect(say({ kind: 'reading', air: '16 °C', humidity: '71 %', skin: '13 °C' })).toBe(
      'Reading: Air 16 °C, humidity 71 %, skin 13 °C, dew 10.7 °C, margin 2.3 °C',
    )
  })
  it('that was written later, or no longer counts, says so', () => {
    const [written, place] = saySetting(view, { written: '2027-05-12T18:02+00:00' }, true)
    expect(written).toMatch(/^written Wed,? 12 May 2027/)
    expect(place).toBe('a later entry takes its place')
    expect(saySetting(view, {}, false)).toEqual([])
  })
  it('stands by the time it is about, whenever it was written', () => {
    const line = (id: string, at: string): LogLine => ({ id, sent: true, cells: { at, kind: 'note' } })
    const log = [
      line('a', '2027-05-10T08:00+00:00'),
      line('b', '2027-05-12T08:00+00:00'),
      line('c', '2027-05-10T14:00+00:00'),
    ]
    const days = byDay({ log, timeZone: 'UTC', nowMs: 0 })
    expect(days.map(([date, own]) => [date, own.map(({ id }) => id).join('')])).toEqual([
      ['2027-05-12', 'b'],
      ['2027-05-10', 'ca'],
    ])
  })
})
