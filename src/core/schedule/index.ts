/** Steps, crew and the calendar. */
export { createGrid, type Grid, type GridInput } from './grid.ts'
export { worse } from './hours.ts'
export { type Calendar, type PlaceInput, placeSteps } from './place-steps.ts'
export { type AirAt, clockMinute } from './ready.ts'
export type * from './step.ts'
export { wholeSlots } from './timeline.ts'
