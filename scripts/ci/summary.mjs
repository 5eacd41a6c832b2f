// Adds up checks and tests into the closing lines of a run of continuous integration.

/**
 * @typedef {object} Ended
 * @property {number} checkStatus exit code of `npm run check`
 * @property {import('../check/run-checks.mjs').Tally | undefined} checks undefined when it wrote no report
 * @property {number} testStatus exit code of `npm test`
 * @property {TestReport | undefined} tests undefined when it wrote no report
 *
 * @typedef {object} TestReport the part used of what vitest writes
 * @property {number} numPassedTests
 * @property {number} numFailedTests
 * @property {readonly TestFile[]} testResults
 *
 * @typedef {{ name: string, status: string, assertionResults: readonly { status: string, fullName: string }[] }} TestFile
 */

/**
 * @param {Ended} ended
 * @returns {{ lines: string[], failed: number }} the last line is `N passed, N failed`
 */
export function summary({ checkStatus, checks, testStatus, tests }) {
  const failedChecks = atLeastOneWhen(checkStatus !== 0, checks?.failed ?? 0)
  const failedTests = atLeastOneWhen(testStatus !== 0 || tests === undefined, testFailures(tests))
  const failed = failedChecks + failedTests + (checks === undefined && checkStatus === 0 ? 1 : 0)
  const passed = (checks?.passed ?? 0) + (tests?.numPassedTests ?? 0)
  const skipped = [...(checks?.skipped ?? []), ...skippedTests(tests)]
  return {
    lines: [...skipped.map((name) => `skipped: ${name}`), `${passed} passed, ${failed} failed`],
    failed,
  }
}

/**
 * A run may fail without a failed test, by an error outside of every test.
 *
 * @param {boolean} isFailure
 * @param {number} count
 */
function atLeastOneWhen(isFailure, count) {
  return isFailure ? Math.max(1, count) : count
}

/**
 * Failed tests, and one for each file that failed before it came to its tests.
 *
 * @param {TestReport | undefined} tests
 */
function testFailures(tests) {
  if (tests === undefined) return 0
  const files = tests.testResults.filter(
    ({ status, assertionResults }) =>
      status === 'failed' && !assertionResults.some((result) => result.status === 'failed'),
  )
  return tests.numFailedTests + files.length
}

/** @param {TestReport | undefined} tests */
function skippedTests(tests) {
  return (tests?.testResults ?? []).flatMap(({ assertionResults }) =>
    assertionResults
      .filter(({ status }) => !['passed', 'failed'].includes(status))
      .map(({ fullName }) => fullName),
  )
}
