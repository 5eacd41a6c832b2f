/**
 * Volatile organic compounds of a coating as it is put on: parts, thinner, and what water takes no part in. Limits are
 * written for the coating less water and exempt solvents.
 */

/** One thing poured in: how much of it, and what of that counts. Masses in kg, volumes in m³. */
export type VocPart = {
  readonly volume: number
  /** Volatile organic compounds in it, kg. */
  readonly vocMass: number
  /** Water and exempt solvents in it, m³; taken off the volume that the limit is for. */
  readonly exemptVolume?: number
}

/**
 * VOC of a mix as put on, less water and exempt solvents.
 * @returns kg/m³, which is g/L; `undefined` when nothing but water and exempt solvents is there.
 * Equation: (Wv - Ww - Wec) / (V - Vw - Vec). Source: 40 CFR 59.104(a)(1).
 */
export function vocLessWater(parts: readonly VocPart[]): number | undefined {
  const mass = sum(parts.map(({ vocMass }) => vocMass))
  const volume = sum(parts.map(({ volume: all, exemptVolume = 0 }) => all - exemptVolume))
  return volume > 0 ? mass / volume : undefined
}

/**
 * The most thinner that keeps a mix inside a limit, m³.
 * @param mix.voc kg/m³ less water of what is thinned. @param mix.volume m³ of it less water and exempt solvents.
 * @param mix.thinnerDensity kg/m³; all of it counts. @param mix.limit kg/m³.
 * @returns 0 when it is over the limit as it is; infinity for a thinner no denser than the limit.
 * Equation: (voc V + ρ y) / (V + y) = limit.
 */
export function mostThinner(mix: {
  readonly voc: number
  readonly volume: number
  readonly thinnerDensity: number
  readonly limit: number
}): number {
  const room = (mix.limit - mix.voc) * mix.volume
  if (room <= 0) return 0
  const over = mix.thinnerDensity - mix.limit
  return over > 0 ? room / over : Number.POSITIVE_INFINITY
}

/**
 * VOC by the volume of solids, kg/m³.
 * @param coating.voc kg/m³ less water. @param coating.solventDensity kg/m³; 7.36 lb/gal where nobody knows it.
 * Equation: C / (1 - C / D). Source: 30 TAC 115.423(1).
 */
export const vocBySolids = (coating: { readonly voc: number; readonly solventDensity: number }): number =>
  coating.voc / (1 - coating.voc / coating.solventDensity)

const sum = (values: readonly number[]): number => values.reduce((all, one) => all + one, 0)
