/** Tape lines on the hull and non-skid panels on the deck, with the numbers to strike them. */

// Non-skid panels.
export type { Panel, PanelInput, PanelResult } from './panel.ts'
export { panel } from './panel.ts'

// The boot stripe.
export type { StripeInput } from './settle-stripe.ts'
export { leastHeightM } from './settle-stripe.ts'
export type { StripeResult, StripeTable } from './stripe.ts'
export { bootStripe } from './stripe.ts'
export type { StripeRow } from './stripe-rows.ts'

// Single lines.
export type { TapeLineInput, TapeLineResult, TapeLineRow, TapeLineTable } from './tape-line.ts'
export { tapeLine } from './tape-line.ts'
