import { expect, test } from 'vitest'
import { calibrationLoop, measurePair, table } from './harness.mjs'
import { median, medianRatio, p95, quantile } from './statistics.mjs'

test('the median is the middle value, of an even count the mean of the middle two', () => {
  expect(median([5, 1, 3])).toBe(3)
  expect(median([4, 1, 3, 2])).toBe(2.5)
  expect(median([7])).toBe(7)
})

test('ranks in between are read off the line between their neighbours', () => {
  expect(quantile([10, 20, 30, 40], 0.25)).toBe(17.5)
  expect(quantile([10, 20, 30, 40], 1)).toBe(40)
  expect(p95(Array.from({ length: 101 }, (_, i) => i))).toBe(95)
})

test('numbers are ranked as numbers and the list is left as it was', () => {
  const values = [100, 9, 20]
  expect(median(values)).toBe(20)
  expect(values).toEqual([100, 9, 20])
})

test('no values have no median', () => {
  expect(() => median([])).toThrow('quantile: no values')
})

test('a ratio is taken round by round, so a slow moment of the machine does not move it', () => {
  expect(medianRatio([2, 20, 2], [1, 10, 1])).toBe(2)
  expect(medianRatio([2, 2, 200], [1, 10, 100])).toBe(2)
  expect(() => medianRatio([1], [1, 2])).toThrow('uneven rounds')
})

test('a pair is measured by turns, and its ratio is that of its work', async () => {
  let clock = 0
  const calls: string[] = []
  const look = () => {
    clock += 5
    return clock
  }
  const work = (label: string, ms: number) => ({
    label,
    run: () => {
      calls.push(label)
      clock += ms
    },
  })
  const result = await measurePair(
    { name: 'plan', a: work('edit', 5), b: work('first', 35) },
    // The loop takes no time of this clock, so each look at it takes some.
    { rounds: 4, now: () => look() },
  )
  expect(result.ratio).toBe(10 / 40)
  expect(result.a).toMatchObject({ label: 'edit', medianMs: 10, p95Ms: 10 })
  expect(calls.slice(2)).toEqual(['edit', 'first', 'first', 'edit', 'edit', 'first', 'first', 'edit'])
})

test('work that returns a promise is waited for', async () => {
  let done = 0
  const count = () => {
    done += 1
  }
  const side = {
    label: 'slow',
    run: () => new Promise<void>((resolve) => setTimeout(resolve, 6)).then(count),
  }
  await measurePair({ name: 'x', a: side, b: side }, { rounds: 1 })
  expect(done).toBe(4)
})

test('the calibration loop always does the same work', () => {
  expect(calibrationLoop()).toBe(calibrationLoop())
  expect(calibrationLoop()).toBeGreaterThan(0)
})

test('the table names each side with its figures', () => {
  const side = (label: string, medianMs: number) => ({
    label,
    medianMs,
    p95Ms: medianMs * 1.5,
    calibrations: 3.25,
  })
  expect(table([{ name: 'plan', rounds: 3, a: side('edit', 1), b: side('first', 12.5), ratio: 0.08 }])).toBe(
    [
      'pair  side   median ms  p95 ms  loops   a / b',
      'plan  edit        1.00    1.50   3.25  0.0800',
      '      first       12.5    18.8   3.25',
    ].join('\n'),
  )
})
