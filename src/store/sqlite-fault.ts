/** What the SQLite library or the file system throws, as an error of the store with the file that it is about. */
import { StoreError, type StoreErrorCode } from './store-error.ts'

/** The first piece of a result code that fits. Whatever is left is told as it came. */
const codes: readonly (readonly [string, StoreErrorCode])[] = [
  ['SQLITE_BUSY', 'store.locked'],
  ['SQLITE_LOCKED', 'store.locked'],
  ['SQLITE_FULL', 'store.diskFull'],
  ['SQLITE_NOTADB', 'store.notADatabase'],
  ['SQLITE_CORRUPT', 'store.damaged'],
  ['SQLITE_READONLY', 'store.forbidden'],
  ['SQLITE_PERM', 'store.forbidden'],
  ['SQLITE_CANTOPEN', 'store.forbidden'],
  ['SQLITE_IOERR', 'store.diskFailed'],
  ['ENOSPC', 'store.diskFull'],
  ['EDQUOT', 'store.diskFull'],
  ['EACCES', 'store.forbidden'],
  ['EPERM', 'store.forbidden'],
  ['EROFS', 'store.forbidden'],
  ['EIO', 'store.diskFailed'],
]

/** The library fails to open with a text alone, in which the result code stands last. */
const cannotOpen = /ConnectionFailed/

export function sqliteFault(file: string, error: unknown): StoreError {
  if (error instanceof StoreError) return error
  const text = error instanceof Error ? error.message : String(error)
  const code = codeOf(error, text)
  const data = code === 'store.failed' || code === 'store.diskFailed' || code === 'store.damaged'
  return new StoreError(code, data ? { file, text } : { file }, `database: ${text}, got ${file}`, error)
}

function codeOf(error: unknown, text: string): StoreErrorCode {
  if (cannotOpen.test(text)) return 'store.forbidden'
  const said = error instanceof Error && 'code' in error ? String(error.code) : ''
  return codes.find(([piece]) => said.startsWith(piece))?.[1] ?? 'store.failed'
}

/** Runs something of the library, and tells its failure as one of the store's. */
export function telling<Result>(file: string, work: () => Result): Result {
  try {
    return work()
  } catch (error) {
    throw sqliteFault(file, error)
  }
}
