/** Estimate, change orders and the watch over the quote. */

export type { ChangeOrder } from './change-order.ts'
export { changeOrder } from './change-order.ts'
export type { Estimate, EstimateGroup, EstimateInput } from './estimate.ts'
export { estimate, estimateGroups } from './estimate.ts'
export type { Line, LineInput } from './line.ts'
export { lineTotal } from './line.ts'
export { quoteWatch } from './quote-watch.ts'
