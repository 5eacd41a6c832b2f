/** Steps, crew and the calendar. */
export { createGrid, createOpenings, type Grid, type GridSpan, type Openings } from './grid.ts'
export { worse } from './hours.ts'
export { type Calendar, type PlaceInput, placeSteps } from './place-steps.ts'
export { type AirAt, clockMinute } from './ready.ts'
export type * from './step.ts'
export { wholeSlots } from './timeline.ts'
