/** How the cells of each table are read. Sheets are read by the job's own `sheetFields`. */
import { abrasiveFields } from './abrasives.ts'
import {
  bondFields,
  guessFields,
  hidingFields,
  orderFields,
  practiceFields,
  stripFields,
} from './bond-fields.ts'
import { consumableFields } from './consumables.ts'
import { finishFields } from './finish-standards.ts'
import { ladderFields } from './grit-ladder.ts'
import { limitFields } from './limit-fields.ts'
import { rateFields } from './rate-fields.ts'
import { vocFields } from './voc-limits.ts'

export const catalogueFields = {
  rates: rateFields,
  abrasives: abrasiveFields,
  gritLadder: ladderFields,
  consumables: consumableFields,
  limits: limitFields,
  finishStandards: finishFields,
  bonds: bondFields,
  workOrder: orderFields,
  coatPractice: practiceFields,
  hidings: hidingFields,
  strips: stripFields,
  oldCoatings: guessFields,
  vocLimits: vocFields,
} as const
