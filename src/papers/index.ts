/** The door of the room: papers of a plan, as PDF and CSV. */
export { papersFor } from './node-papers.ts'
export { nodePress } from './node-press.ts'
export { changeOrders, daySheet, papersFrom, planSummary, quote, shoppingList } from './papers-for.ts'
export type { PaperFonts, PdfWriter, Press } from './press.ts'
export type { PageSize, Paper, PaperInput, PaperJob, PaperKind } from './types.ts'
export { unpackWoff } from './unpack-woff.ts'
