/** Fresh air that thins a solvent's vapour: against fire and, far more of it, for the lungs. */

/** Shares of the lower explosive limit that rules hold work to. */
export const lelFractions = {
  /** Spray finishing and general design: 29 CFR 1910.94(c)(6)(ii), 1910.107. */
  spray: 0.25,
  /** Spray rooms in California: 8 CCR 5153(d). */
  californiaSpray: 0.2,
  /** Shipyards, cold work and flammable paints: 29 CFR 1915.13(b)(3)(i). */
  shipyard: 0.1,
} as const

/**
 * Air that keeps a volume of solvent's vapour at a fraction of its lower explosive limit.
 * @param solvent.vapourPerLiquid m³ of vapour by m³ of liquid. @param solvent.lelShare lower explosive limit as
 * a share of air by volume, 0.014 for 1.4 %. @param solvent.fraction of that limit, 0 < fraction ≤ 1.
 * @returns m³ of air by m³ of liquid evaporated, evenly mixed. It is against fire only: exposure limits need
 * many times more.
 * Equation: V (1 - LEL) / (LEL fraction); in the rule 4 (100 - LEL) V / LEL for a quarter.
 * Source: 29 CFR 1910.94(c)(6)(ii)(b) (from memory; the factor 4 is 1 / 0.25).
 */
export function airForLel(solvent: {
  readonly vapourPerLiquid: number
  readonly lelShare: number
  readonly fraction: number
}): number {
  const { vapourPerLiquid, lelShare, fraction } = solvent
  return (vapourPerLiquid * (1 - lelShare)) / (lelShare * fraction)
}

/**
 * Air that keeps a steady evaporation at a breathing limit.
 * @param work.liquidRate solvent that evaporates, m³/h. @param work.vapourPerLiquid m³ by m³.
 * @param work.limitShare limit as a share by volume, 50e-6 for 50 ppm. @param work.mixing 1 for perfect mixing,
 * usually 3 to 10: how much worse the room mixes than the sum.
 * @returns m³/h. Someone bent over the wet film breathes more than the room's mean: this is no leave to go
 * without a mask.
 * Equation: rate V K / C; in US units 403e6 SG ER K / (MW C) cfm with ER in pints/min.
 * Source: ACGIH, Industrial Ventilation, ch. 2 (from memory; form read in a university text). Solvents together:
 * add their flows.
 */
export function airForExposure(work: {
  readonly liquidRate: number
  readonly vapourPerLiquid: number
  readonly limitShare: number
  readonly mixing: number
}): number {
  return (work.liquidRate * work.vapourPerLiquid * work.mixing) / work.limitShare
}
