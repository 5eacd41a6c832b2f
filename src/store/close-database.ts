/** Gives up a database file so that it is free at once, also for this process. */
import type Database from 'libsql'

/**
 * The library keeps a closed file open, and locked, until the last of its statements is collected. So the lock is
 * given up by name before: that takes leaving the write-ahead log, which puts everything into the one file. Where
 * that fails, as on a full disk, all that was acknowledged stands in the log, and the lock goes with the process.
 */
export function closeDatabase(library: Database.Database): void {
  if (!library.open) return
  try {
    ask(library, 'journal_mode = DELETE')
    unlock(library)
  } catch {
    // Nothing is lost, so the caller has nothing to do about it.
  } finally {
    library.close()
  }
}

/** After a failure: the file may be another program's, so no setting that it keeps is changed, and the failure counts. */
export function abandonDatabase(library: Database.Database): void {
  try {
    ask(library, 'busy_timeout = 0')
    unlock(library)
  } catch {
    // Why the file could not be opened is told already; this is the same fault again.
  } finally {
    library.close()
  }
}

/** The lock goes with the first look into the file after the change of mode. */
function unlock(library: Database.Database): void {
  ask(library, 'locking_mode = NORMAL')
  ask(library, 'user_version')
}

const ask = (library: Database.Database, pragma: string): void => {
  library.prepare(`PRAGMA ${pragma}`).all([])
}
