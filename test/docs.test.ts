// The docs are held against the program here too, so that `npm test` alone finds a page that has gone stale.
import { describe, expect, test } from 'vitest'
import { docsChecks } from '../scripts/docs/checks.mjs'
import { ROOT } from '../scripts/ready/main.mjs'

const PATIENCE_MS = 300_000

describe('docs', () => {
  for (const { name, run } of docsChecks) {
    test(name, { timeout: PATIENCE_MS }, ({ skip }) => {
      const { faults, skipped } = run(ROOT)
      skip(skipped !== undefined, skipped)
      expect(faults).toEqual([])
    })
  }
})
