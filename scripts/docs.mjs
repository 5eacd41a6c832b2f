// Checks the docs against the program: `node scripts/docs.mjs`.

import { docsAsChecks } from './check/checks.mjs'
import { runChecks } from './check/run-checks.mjs'
import { docsChecks } from './docs/checks.mjs'
import { ROOT } from './ready/main.mjs'

const { failed } = await runChecks(docsAsChecks(ROOT, docsChecks), console.log)
process.exitCode = failed === 0 ? 0 : 1
