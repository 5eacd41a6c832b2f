// `npm run check`: format, lint, types, build, layers and docs, every one of them whatever fails.

import { writeFileSync } from 'node:fs'
import { checksOf } from './check/checks.mjs'
import { runChecks } from './check/run-checks.mjs'
import { ROOT, ready } from './ready/main.mjs'

try {
  await ready({ build: false })
} catch (error) {
  console.error(error instanceof Error && 'sentence' in error ? error.sentence : error)
  process.exit(1)
}
const tally = await runChecks(checksOf(ROOT), console.log)
const report = process.env.HARDSTAND_CHECK_REPORT
if (report) writeFileSync(report, JSON.stringify(tally))
process.exitCode = tally.failed === 0 ? 0 : 1
