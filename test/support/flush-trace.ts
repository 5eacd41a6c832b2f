// Reads what strace wrote: whether the log of the database was flushed before each acknowledgement went out.
import { spawnSync } from 'node:child_process'

/** strace is there, and this process may trace another. */
export const canTrace = spawnSync('strace', ['-o', '/dev/null', 'true']).status === 0

/** Before the command that is traced: everything that writes or flushes, to `file`, of all threads. */
export const traced = (file: string): readonly string[] => {
  const calls = 'trace=fsync,fdatasync,write,writev,pwrite64,pwritev,sendto,sendmsg'
  // The command stays the child of whoever started it, so that it can be told to stop.
  return ['strace', '-D', '-f', '-y', '-s', '400', '-e', calls, '-o', file]
}

export type FlushTrace = {
  /** File that the database writes before it answers. */
  readonly wal: string
  /** In a call that sends an acknowledgement; its first group is what is acknowledged. */
  readonly acknowledgement: RegExp
}

/** Acknowledgements whose bytes were written to the log of the database and not flushed after, or not written. */
export function readFlushTrace(trace: string, { wal, acknowledgement }: FlushTrace) {
  const unflushed: string[] = []
  /** Threads whose flush of the log has begun and not ended. */
  const flushing = new Set<string>()
  let acknowledged = 0
  let state: 'nothing' | 'written' | 'flushed' = 'nothing'
  for (const line of trace.split('\n')) {
    const thread = /^\d+/.exec(line)?.[0] ?? ''
    const ofLog = line.includes(`<${wal}>`)
    const told = / (?:write|writev|sendto|sendmsg)\(/.test(line) ? acknowledgement.exec(line) : null
    if (ofLog && / pwritev?(?:64)?\(/.test(line)) state = 'written'
    if (ofLog && / f(?:data)?sync\(/.test(line)) flushing.add(thread)
    if (flushing.has(thread) && /sync(?:\(.*>| resumed>)\)\s+= 0/.test(line)) {
      flushing.delete(thread)
      if (state === 'written') state = 'flushed'
    }
    if (!told) continue
    acknowledged += 1
    if (state !== 'flushed') unflushed.push(`${told[1]}: ${state}`)
    state = 'nothing'
  }
  return { acknowledged, unflushed }
}
