import { expect, test } from 'vitest'
import { summary } from './summary.mjs'

const good = {
  checkStatus: 0,
  checks: { passed: 9, failed: 0, skipped: ['docs: examples'] },
  testStatus: 0,
  tests: {
    numPassedTests: 100,
    numFailedTests: 0,
    testResults: [
      {
        name: 'a.test.ts',
        status: 'passed',
        assertionResults: [
          { status: 'passed', fullName: 'a holds' },
          { status: 'skipped', fullName: 'b holds' },
        ],
      },
    ],
  },
}
const last = (ended: Parameters<typeof summary>[0]) => summary(ended).lines.at(-1)

test('checks and tests are added up, and what was skipped is named before', () => {
  expect(summary(good)).toEqual({
    lines: ['skipped: docs: examples', 'skipped: b holds', '109 passed, 0 failed'],
    failed: 0,
  })
})

test('a failed check and failed tests count', () => {
  const checks = { passed: 8, failed: 2, skipped: [] }
  const tests = { ...good.tests, numPassedTests: 97, numFailedTests: 3 }
  expect(last({ checkStatus: 1, checks, testStatus: 1, tests })).toBe('105 passed, 5 failed')
})

test('a file that fails before its tests counts as one', () => {
  const broken = { name: 'b.test.ts', status: 'failed', assertionResults: [] }
  const tests = { ...good.tests, testResults: [...good.tests.testResults, broken, broken] }
  expect(last({ ...good, testStatus: 1, tests })).toBe('109 passed, 2 failed')
})

test('a run that fails outside of every test counts as one', () => {
  expect(last({ ...good, testStatus: 1 })).toBe('109 passed, 1 failed')
})

test('a run that leaves no report counts as one failed, whatever its exit code', () => {
  expect(last({ ...good, tests: undefined })).toBe('9 passed, 1 failed')
  expect(last({ ...good, testStatus: 1, tests: undefined })).toBe('9 passed, 1 failed')
  expect(last({ ...good, checks: undefined })).toBe('100 passed, 1 failed')
  expect(last({ ...good, checkStatus: 1, checks: undefined })).toBe('100 passed, 1 failed')
})
