/** What a skin is made of, as heat sees it: how much it stores and how well it lets through. */

/** What stands behind the skin; `closed` lets no heat through. */
export type Behind = 'bare' | 'foam' | 'tank' | 'engine' | 'closed'

export type SkinBuild = {
  /** Heat stored in what follows the weather, J/(m² K). */
  readonly storesJm2K: number
  /** W/(m² K) from the outer face to what is behind; 0 when no heat passes. */
  readonly backWm2K: number
}

type Material = {
  readonly densityKgM3: number
  readonly heatJkgK: number
  /** W/(m K). */
  readonly conducts: number
}

/**
 * Chopped strand and polyester at 30 % glass by mass: density 1427 kg/m³ by mixture (glass 2560, resin 1200); heat
 * 1100 J/(kg K) and conduction 0.25 W/(m K) between those of polyester (1200, 0.19, EN ISO 10456:2007, table 3) and of
 * glass (about 800, 1.0), from memory.
 */
export const laminate: Material = { densityKgM3: 1427, heatJkgK: 1100, conducts: 0.25 }

export type CoreKind = 'balsa' | 'foam' | 'plywood'

/** Assumed: usual figures of balsa 150, closed-cell foam 80 and plywood 500 kg/m³, from memory. */
export const cores: Readonly<Record<CoreKind, Material>> = {
  balsa: { densityKgM3: 150, heatJkgK: 1600, conducts: 0.055 },
  foam: { densityKgM3: 80, heatJkgK: 1300, conducts: 0.035 },
  plywood: { densityKgM3: 500, heatJkgK: 1600, conducts: 0.13 },
}

/**
 * m² K/W from the inner face to what is behind it: 0.13 to air, of EN ISO 6946 for level flow, and 0.11 over the 5 mm of still
 * air before a tank, both from memory; 20 mm of foam more under a lining, assumed; none passes where it is `closed`, the
 * bound on both sides.
 */
const behindResistance: Readonly<Record<Behind, number>> = {
  bare: 0.13,
  foam: 0.13 + 0.02 / cores.foam.conducts,
  tank: 0.11,
  engine: 0.13,
  closed: Number.POSITIVE_INFINITY,
}

/**
 * Time constant with which what is behind the skin follows the air in the boat, h. Assumed: 200 L of diesel, 340 kJ/K, behind
 * 3 to 4 m² that let 1.3 W/(m² K) through all told; an engine of 150 kg, 70 kJ/K, and its beds in a closed compartment.
 */
export const behindLagHours: Readonly<Record<Behind, number>> = {
  bare: 0,
  foam: 0,
  tank: 20,
  engine: 8,
  closed: 0,
}

/** A single laminate, m thick: it stores with its whole mass. */
export function solidSkin({
  thicknessM,
  behind,
}: {
  readonly thicknessM: number
  readonly behind: Behind
}): SkinBuild {
  return {
    storesJm2K: stored(laminate, thicknessM),
    backWm2K: 1 / (thicknessM / laminate.conducts + behindResistance[behind]),
  }
}

/**
 * A sandwich: the outer laminate and the outer third of the core follow the weather; the core keeps the rest from it.
 * The third is that of a layer whose other face stands still, for a temperature that falls evenly through it.
 */
export function coredSkin(of: {
  readonly outerM: number
  readonly coreM: number
  readonly core: CoreKind
  readonly innerM: number
  readonly behind: Behind
}): SkinBuild {
  const core = cores[of.core]
  const resistance =
    (of.outerM + of.innerM) / laminate.conducts + of.coreM / core.conducts + behindResistance[of.behind]
  return {
    storesJm2K: stored(laminate, of.outerM) + stored(core, of.coreM) / 3,
    backWm2K: 1 / resistance,
  }
}

const stored = ({ densityKgM3, heatJkgK }: Material, thicknessM: number): number =>
  densityKgM3 * heatJkgK * thicknessM
