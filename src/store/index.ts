/** Where jobs are kept: one port, and what stands behind it. */
export type * from './port.ts'
