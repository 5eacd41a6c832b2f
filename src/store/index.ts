/** Where jobs are kept: one port, and what stands behind it. */
export { storeLimits } from './limits.ts'
export { createMemoryStore } from './memory-store.ts'
export type * from './port.ts'
export type { SqliteOptions, SqliteStore } from './sqlite-store.ts'
export { openSqliteStore } from './sqlite-store.ts'
export type { StoreErrorCode, StoreErrorData } from './store-error.ts'
export { StoreError } from './store-error.ts'
