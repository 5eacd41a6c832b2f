/** How tightly a day is set: the first of these that fits the page is used; the last cuts lists and says so. */
import type { CautionDetail } from './day-cautions.ts'
import type { StepMode } from './steps-list.ts'

export type Density = {
  /** Height of the curves, mm; 0 leaves only their figures. */
  readonly chart: number
  readonly mixing: 'large' | 'small' | 'table'
  readonly steps: StepMode
  readonly cautions: CautionDetail
  readonly mostPeople: number
  readonly mostStrips: number
  readonly mostPours: number
}

const roomy: Density = {
  chart: 28,
  mixing: 'large',
  steps: 'roomy',
  cautions: 'whole',
  mostPeople: 8,
  mostStrips: 6,
  mostPours: 12,
}

export const densities: readonly Density[] = [
  roomy,
  { ...roomy, cautions: 'dangers whole' },
  { ...roomy, cautions: 'first sentence' },
  { ...roomy, cautions: 'first sentence', chart: 20 },
  { ...roomy, cautions: 'first sentence', chart: 20, mixing: 'small' },
  { ...roomy, cautions: 'first sentence', chart: 0, mixing: 'small' },
  { ...roomy, cautions: 'first sentence', chart: 0, mixing: 'small', steps: 'tight' },
  { ...roomy, cautions: 'first sentence', chart: 0, mixing: 'small', steps: 'coats first' },
  { ...roomy, cautions: 'first sentence', chart: 0, mixing: 'table', steps: 'tight' },
  { ...roomy, cautions: 'first sentence', chart: 0, mixing: 'table', steps: 'coats first' },
  { ...roomy, cautions: 'first sentence', chart: 0, mixing: 'table', steps: 'columns' },
  { ...roomy, cautions: 'first sentence', chart: 0, mixing: 'table', steps: 'one line each' },
]

/** When not even that fits: fewer of everything, and the lists take what room is left. */
export const tightest: Density = {
  ...roomy,
  cautions: 'first sentence',
  chart: 0,
  mixing: 'table',
  steps: 'one line each',
  mostPeople: 4,
  mostStrips: 2,
  mostPours: 4,
}
