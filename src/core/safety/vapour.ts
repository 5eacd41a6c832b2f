/** Vapour from a liquid: how much gas a solvent makes and what a share of it weighs. */

/** m³/mol at 25 °C and 1013 hPa, the figure of exposure limits (24.45 L/mol). */
export const molarVolume25C = 0.02445

/** m³/mol at 70 °F and 1 atm, the figure of US ventilation sums (387 ft³/lb-mol). */
export const molarVolume70F = (387 * 0.028316846592) / 453.59237

/** Gas constant, J/(mol K). */
const gasConstant = 8.314462618

const kelvin = 273.15

/** Density of water that specific gravity is counted from, kg/m³. */
const waterDensity = 1000

/**
 * Volume of a mole of gas.
 * @param air.airC °C. @param air.pressurePa Pa.
 * @returns m³/mol. Equation: R T / p.
 */
export function molarVolume(air: { readonly airC: number; readonly pressurePa: number }): number {
  return (gasConstant * (air.airC + kelvin)) / air.pressurePa
}

/**
 * Vapour that a volume of solvent makes when all of it evaporates.
 * @param solvent.specificGravity density against water. @param solvent.molarMass kg/mol.
 * @param solvent.molarVolume m³/mol at the temperature of the air.
 * @returns m³ of vapour by m³ of liquid. Count the solvent alone: solids do not evaporate.
 * Equation: 1000 SG Vm / M. Source: 29 CFR 1910.94(c)(6)(ii), in US units 8.345 SG 387 / MW ft³/gal.
 */
export function vapourPerLiquid(solvent: {
  readonly specificGravity: number
  readonly molarMass: number
  readonly molarVolume: number
}): number {
  return (waterDensity * solvent.specificGravity * solvent.molarVolume) / solvent.molarMass
}

/**
 * Mass of vapour in air from its share by volume.
 * @param vapour.share by volume; 1 ppm is 1e-6. @param vapour.molarMass kg/mol.
 * @param vapour.molarVolume m³/mol; exposure limits use `molarVolume25C`.
 * @returns kg/m³; 1 ppm in mg/m³ is MW / 24.45. Source: NIOSH Pocket Guide, conversion factors.
 */
export function massConcentration(vapour: {
  readonly share: number
  readonly molarMass: number
  readonly molarVolume: number
}): number {
  return (vapour.share * vapour.molarMass) / vapour.molarVolume
}
