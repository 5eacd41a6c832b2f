/** Splits a pour into its parts: base, hardener, thinner, and what is stirred in on top. */

/** Parts of base to hardener by volume; a one-part paint has no hardener. */
export type MixRatio = { readonly base: number; readonly hardener: number }

/** What the wanted volume means: the paint ready to use, or base and hardener before the thinner. */
export type MixVolume = { readonly readyVolume: number } | { readonly partsVolume: number }

export type Mix = {
  /** m³ of base (A). */
  readonly baseVolume: number
  /** m³ of hardener (B). */
  readonly hardenerVolume: number
  /** m³ of thinner. */
  readonly thinnerVolume: number
  /** Base and hardener together, m³. */
  readonly partsVolume: number
  /** Base, hardener and thinner together, m³. */
  readonly readyVolume: number
  /** Bulk volume of beads, grit or flattening powder, m³; not part of the ready volume. */
  readonly additiveVolume: number
}

/**
 * Volumes of a pour.
 * @param pour.readyVolume m³ ready to use, thinner included; or @param pour.partsVolume m³ of base and hardener,
 * thinner on top. @param pour.ratio parts by volume, any scale, sum over 0.
 * @param pour.thinnerShare thinner as a share of base and hardener together.
 * @param pour.additiveShare bulk volume by ready volume, on top of it: grains fall between the paint and do not
 * add up with it.
 * @returns m³ each.
 * Equation: parts = ready / (1 + t); base = parts a / (a + b); thinner = parts t.
 */
export function mix(
  pour: MixVolume & {
    readonly ratio: MixRatio
    readonly thinnerShare: number
    readonly additiveShare: number
  },
): Mix {
  const { ratio, thinnerShare, additiveShare } = pour
  const partsVolume = 'partsVolume' in pour ? pour.partsVolume : pour.readyVolume / (1 + thinnerShare)
  const readyVolume = 'readyVolume' in pour ? pour.readyVolume : pour.partsVolume * (1 + thinnerShare)
  const parts = ratio.base + ratio.hardener
  return {
    baseVolume: (partsVolume * ratio.base) / parts,
    hardenerVolume: (partsVolume * ratio.hardener) / parts,
    thinnerVolume: partsVolume * thinnerShare,
    partsVolume,
    readyVolume,
    additiveVolume: readyVolume * additiveShare,
  }
}

/** kg/m³ each. */
export type MixDensities = { readonly base: number; readonly hardener: number; readonly thinner: number }

export type MixMasses = {
  /** kg of base (A). */
  readonly baseMass: number
  /** kg of hardener (B). */
  readonly hardenerMass: number
  /** kg of thinner. */
  readonly thinnerMass: number
}

/**
 * The same pour on the scales.
 * @param poured volumes in m³. @param densities kg/m³ from the data sheets.
 * @returns kg each. A ratio by volume is not the ratio by weight unless the densities are equal.
 */
export function mixMasses(
  poured: Pick<Mix, 'baseVolume' | 'hardenerVolume' | 'thinnerVolume'>,
  densities: MixDensities,
): MixMasses {
  return {
    baseMass: poured.baseVolume * densities.base,
    hardenerMass: poured.hardenerVolume * densities.hardener,
    thinnerMass: poured.thinnerVolume * densities.thinner,
  }
}
