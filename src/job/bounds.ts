/** Bounds that several cells share, in SI. Wide enough for every real job, so that only slips fall outside. */

export const percent = { least: 0, most: 1 } as const
/** What paint is ever put on in. */
export const air = { least: -40, most: 60 } as const
/** What a painted skin ever stands at: a dark deck in the sun. */
export const skin = { least: -40, most: 100 } as const
export const density = { least: 300, most: 3000 } as const
/** 0.05 to 100 m² a litre. */
export const spread = { least: 50, most: 100_000 } as const
/** Film by hand: up to 20 mm. */
export const film = { sign: 'positive', most: 0.02, scale: 'film' } as const
/** A size that a thing cannot be without. */
export const size = { sign: 'positive', most: 60 } as const
export const amount = { sign: 'positive', most: 1 } as const
export const work = { least: 0, most: 2000 } as const
/** Inside a shed. */
export const room = { sign: 'positive', most: 200 } as const
/** What a shed is kept at. */
export const setPoint = { least: 0, most: 40 } as const
