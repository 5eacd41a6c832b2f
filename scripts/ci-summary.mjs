// Prints the closing lines of a run: `node scripts/ci-summary.mjs DIR CHECK_STATUS TEST_STATUS`, reports in DIR.

import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { summary } from './ci/summary.mjs'

const [directory = '.', checkStatus = '1', testStatus = '1'] = process.argv.slice(2)

/** @param {string} name */
function report(name) {
  try {
    return JSON.parse(readFileSync(join(directory, name), 'utf8'))
  } catch {
    return undefined
  }
}

const { lines, failed } = summary({
  checkStatus: Number(checkStatus),
  checks: report('checks.json'),
  testStatus: Number(testStatus),
  tests: report('tests.json'),
})
console.log(lines.join('\n'))
process.exitCode = failed === 0 ? 0 : 1
