/** The door of the room: papers of a plan, as PDF and CSV, and what screens share with them to draw alike. */

export { type BandScale, type Bands, bandsOf, dryTogether } from './build-up/bands.ts'
export { bondLine } from './build-up/bond-line.ts'
export { failedSection, failedSize } from './build-up/failed-section.ts'
export type { JointMark } from './build-up/joint-marks.ts'
export { type Section, section } from './build-up/section.ts'
export { type Stack, type StackLayer, stacksOf } from './build-up/stacks.ts'
export { HOURS_A_YEAR, type SuggestionText, sandingName, suggestionText } from './build-up/suggestion-text.ts'
export { figurePieces } from './figure.ts'
export {
  type HatchFamily,
  type HatchKind,
  type HatchName,
  type HatchRule,
  hatchFamilies,
  hatchFor,
  hatchRule,
} from './hatches.ts'
export type { Ink } from './inks.ts'
export { amountText, consumableName, moneyLineName, packsText, panelText, productName } from './line-words.ts'
export { papersFor } from './node-papers.ts'
export { nodePress } from './node-press.ts'
export { noteText } from './note-text.ts'
export { paperJob } from './paper-job.ts'
export { changeOrders, daySheet, papersFrom, planSummary, quote, shoppingList } from './papers-for.ts'
export { type Pen, type PenRule, penRule } from './pens.ts'
export type { PaperFonts, PdfWriter, Press } from './press.ts'
export type { Drawing, Point, Shape } from './shapes.ts'
export { standingText } from './standing-text.ts'
export { mmPerPt, type StyleName, type TypeStyle, typeStyle } from './type-styles.ts'
export type { PageSize, Paper, PaperInput, PaperJob, PaperKind } from './types.ts'
export { unpackWoff } from './unpack-woff.ts'
