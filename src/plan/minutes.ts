/** The calendar counts in whole minutes: the one place where hours become minutes. */

/** Hours to whole minutes, up: a wait is never cut short by rounding. */
export const minutesOf = (hours: number): number => Math.ceil(hours * 60 - 1e-6)
