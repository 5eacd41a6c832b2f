/** A note's or error's code and data to a sentence, and every plain word the program shows. */

export { type FormulaFigures, type FormulaTerm, writeFormula } from './formula.ts'
export { genericSheetNames } from './generic-sheets.ts'
export { labelOf } from './labels.ts'
export { type LineProblem, problemLine } from './problem-line.ts'
export { problemText, sectionIn } from './problem-text.ts'
export { roomOfSection } from './section-rooms.ts'
export type { Words, WordsData } from './words.ts'
export { createWords, sentence } from './words.ts'
export type { Beside, Reader, Writer } from './writer.ts'
