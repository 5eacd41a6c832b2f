/** Water that a flame without a flue leaves in the air of the room. */

export type Fuel = 'gas' | 'kerosene'

type FuelFigures = {
  /** Heat given to the room, J/kg: the net calorific value, since its water stays vapour. */
  readonly heatJKg: number
  /** Water in the burnt gas, kg for each kg of fuel. */
  readonly waterKgKg: number
}

/**
 * Heat: IPCC Guidelines for National Greenhouse Gas Inventories 2006, volume 2, table 1.2, 47.3 and 43.8 TJ/Gg, from memory.
 * Water: of propane, C3H8 to 4 H2O in 44.10 g/mol, and of kerosene taken as dodecane, C12H26 to 13 H2O in 170.34; with
 * 0.8 kg/L that is 1.1 kg for a litre of kerosene.
 */
const fuels: Readonly<Record<Fuel, FuelFigures>> = {
  gas: { heatJKg: 47.3e6, waterKgKg: (4 * 18.015) / 44.097 },
  kerosene: { heatJKg: 43.8e6, waterKgKg: (13 * 18.015) / 170.338 },
}

/** Water for the heat of an open flame, kg/J. */
export const flameWater = (fuel: Fuel): number => fuels[fuel].waterKgKg / fuels[fuel].heatJKg
