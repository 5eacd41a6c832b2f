// Runs checks one after the other, all of them whatever fails, and says a line about each.

/**
 * @typedef {object} Outcome
 * @property {boolean} ok
 * @property {string} output shown when it failed
 * @property {readonly string[]} [remarks] shown whatever the outcome
 * @property {string} [skipped] why it did not run
 *
 * @typedef {{ name: string, run: () => Outcome | Promise<Outcome> }} Check
 * @typedef {{ passed: number, failed: number, skipped: string[] }} Tally
 */

/**
 * @param {readonly Check[]} checks
 * @param {(line: string) => void} say
 * @returns {Promise<Tally>}
 */
export async function runChecks(checks, say) {
  /** @type {Tally} */
  const tally = { passed: 0, failed: 0, skipped: [] }
  for (const check of checks) {
    const start = performance.now()
    const outcome = await outcomeOf(check)
    const seconds = ((performance.now() - start) / 1000).toFixed(1).padStart(6)
    const word = outcome.skipped !== undefined ? 'skip' : outcome.ok ? 'ok' : 'FAIL'
    say(
      `${word.padEnd(4)} ${seconds} s  ${check.name}${outcome.skipped === undefined ? '' : `: ${outcome.skipped}`}`,
    )
    const lines = [...(outcome.remarks ?? []), ...(outcome.ok ? [] : [outcome.output])]
    for (const text of lines) say(text.replaceAll(/^/gm, '     '))
    if (outcome.skipped !== undefined) tally.skipped.push(check.name)
    else if (outcome.ok) tally.passed += 1
    else tally.failed += 1
  }
  return tally
}

/**
 * @param {Check} check
 * @returns {Promise<Outcome>}
 */
async function outcomeOf(check) {
  try {
    return await check.run()
  } catch (error) {
    return { ok: false, output: error instanceof Error ? (error.stack ?? error.message) : String(error) }
  }
}
