import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { canTrace, readFlushTrace, traced } from '../../test/support/flush-trace.ts'
import { startStore } from '../../test/support/store-child.ts'
import { inFolder } from '../../test/support/stores.ts'

const appends = 60

describe('an append', () => {
  it.skipIf(!canTrace)(
    `is acknowledged only after the disk has it: strace shows a flush before each of ${appends} (needs strace)`,
    () =>
      inFolder(async (folder) => {
        const path = join(folder, 'jobs.db')
        const trace = join(folder, 'trace')
        const child = startStore({ mode: 'few', path, start: appends, under: traced(trace) })
        await child.gone
        expect(child.lines().at(-1)).toBe(`u ${appends}`)
        const acknowledgement = /write\(1<[^>]*>, "u (\d+)\\n"/
        const read = readFlushTrace(await readFile(trace, 'utf8'), { wal: `${path}-wal`, acknowledgement })
        expect(read).toEqual({ acknowledged: appends, unflushed: [] })
      }),
  )
})
