/** Safety sums: vapour, ventilation, exposure. */
export { mixtureExposure, timeWeightedMean } from './exposure.ts'
export { massConcentration, molarVolume, molarVolume25C, molarVolume70F, vapourPerLiquid } from './vapour.ts'
export { airForExposure, airForLel, lelFractions } from './ventilation.ts'
