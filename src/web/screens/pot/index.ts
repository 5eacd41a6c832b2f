/** The clock of a pot, for the screens that show pours. */
export { PotClock, type PotClockProps } from './pot-clock.tsx'
export { PotClocks, type PotClocksProps } from './pot-clocks.tsx'
export { type Pots, usePots } from './use-pots.ts'
