import { describe, expect, it } from 'vitest'
import { hourSpans, openStretch } from './hour-spans.ts'

const hours = { firstMinute: 600, verdicts: ['no', 'go', 'go', 'risky'] as const }

describe('hourSpans', () => {
  it('joins neighbours, cuts at the ends, and knows nothing outside the weather', () => {
    const spans = hourSpans(hours, { fromMinute: 630, toMinute: 900 })
    expect(spans.map(({ kind, fromMs, toMs }) => [kind, fromMs / 60_000, toMs / 60_000])).toEqual([
      ['no', 630, 660],
      ['go', 660, 780],
      ['risky', 780, 840],
      ['unknown', 840, 900],
    ])
  })
})

describe('openStretch', () => {
  const spans = hourSpans(hours, { fromMinute: 600, toMinute: 840 })
  it('is the one under way, or the next', () => {
    expect(openStretch(spans, 600)?.fromMs).toBe(660 * 60_000)
    expect(openStretch(spans, 700)?.toMs).toBe(780 * 60_000)
    expect(openStretch(spans, 790)).toBeUndefined()
  })
})
