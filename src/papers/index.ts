/** The door of the room: papers of a plan, as PDF and CSV. */
export { nodePress } from './node-press.ts'
export { daySheet, papersFor, planSummary } from './papers-for.ts'
export type { PaperFonts, Press } from './press.ts'
export type { PageSize, Paper, PaperInput, PaperJob, PaperKind } from './types.ts'
