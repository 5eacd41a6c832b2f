// What a program that was run to its end leaves for us.

/**
 * @param {Pick<import('node:child_process').SpawnSyncReturns<string>, 'status' | 'stdout' | 'stderr' | 'error'>} done
 * @returns {{ ok: boolean, output: string }} whether it ended well, and all that it said
 */
export function ended(done) {
  const output = [done.stdout, done.stderr, done.error?.message].filter(Boolean).join('\n').trim()
  return { ok: done.status === 0, output }
}
