import { spawnSync } from 'node:child_process'
import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { startStore } from '../../test/support/store-child.ts'
import { inFolder } from '../../test/support/stores.ts'

const traced = spawnSync('strace', ['-o', '/dev/null', 'true']).status === 0
const appends = 60

describe('an append', () => {
  it.skipIf(!traced)(
    `is acknowledged only after the disk has it: strace shows a flush before each of ${appends} (needs strace)`,
    () =>
      inFolder(async (folder) => {
        const path = join(folder, 'jobs.db')
        const trace = join(folder, 'trace')
        const calls = 'trace=fsync,fdatasync,write,pwrite64'
        const under = ['strace', '-f', '-y', '-e', calls, '-o', trace]
        const child = startStore({ mode: 'few', path, start: appends, under })
        await child.gone
        expect(child.lines().at(-1)).toBe(`u ${appends}`)
        const bare = acknowledgedBare(await readFile(trace, 'utf8'), `${path}-wal`)
        expect(bare).toEqual({ acknowledged: appends, unflushed: [] })
      }),
  )
})

/** Acknowledgements whose bytes were written to the log of the database and not flushed after, or not written. */
function acknowledgedBare(trace: string, wal: string) {
  const unflushed: string[] = []
  let acknowledged = 0
  let state: 'nothing' | 'written' | 'flushed' = 'nothing'
  for (const line of trace.split('\n')) {
    const acknowledgement = /write\(1<[^>]*>, "u (\d+)\\n"/.exec(line)
    if (line.includes('pwrite64(') && line.includes(`<${wal}>`)) state = 'written'
    if (/f(data)?sync\(/.test(line) && line.includes(`<${wal}>) = 0`) && state === 'written')
      state = 'flushed'
    if (!acknowledgement) continue
    acknowledged += 1
    if (state !== 'flushed') unflushed.push(`${acknowledgement[1]}: ${state}`)
    state = 'nothing'
  }
  return { acknowledged, unflushed }
}
