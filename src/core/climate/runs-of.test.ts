import { expect, it } from 'vitest'
import type { HourVerdict, Verdict } from './paint-limits.ts'
import { runsOf } from './runs-of.ts'

const letters: Readonly<Record<string, Verdict>> = { g: 'go', r: 'risky', n: 'no', u: 'unknown' }
const verdicts = (text: string): HourVerdict[] =>
  [...text].map((letter) => ({ verdict: letters[letter]!, failing: [] }))

it('finds whole runs of go, also at both ends', () => {
  expect(runsOf(verdicts('ggnggguggggr'), 1)).toEqual([
    { fromHour: 0, hours: 2 },
    { fromHour: 3, hours: 3 },
    { fromHour: 7, hours: 4 },
  ])
  expect(runsOf(verdicts('nggg'), 3)).toEqual([{ fromHour: 1, hours: 3 }])
})

it('leaves out runs too short for the coat', () => {
  expect(runsOf(verdicts('ggngggugggg'), 4)).toEqual([{ fromHour: 7, hours: 4 }])
  expect(runsOf(verdicts('ggg'), 4)).toEqual([])
  expect(runsOf([], 1)).toEqual([])
})
