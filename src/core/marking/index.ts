/** Tape lines on the hull and non-skid panels on the deck, with the numbers to strike them. */

export type { Panel, PanelInput, PanelResult } from './panel.ts'
export { panel } from './panel.ts'
