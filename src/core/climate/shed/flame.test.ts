import { expect, it } from 'vitest'
import { flameWater } from './flame.ts'

// Trade rule 8: 1.6 kg of water from a kg of gas, 1.1 kg from a litre of kerosene (0.8 kg). Heat by the same table as
// the code, since the trade gives none: about 13 kWh from a kg of gas and 9.7 from a litre of kerosene.
it('a flame without a flue leaves 0.12 kg of water for a kilowatt hour', () => {
  expect(flameWater('gas') * 3.6e6).toBeCloseTo(1.6 / 13.1, 2)
  expect(flameWater('kerosene') * 3.6e6).toBeCloseTo(1.1 / 9.7, 2)
  expect(flameWater('gas') * 47.3e6).toBeCloseTo(1.63, 2)
  expect(flameWater('kerosene') * 43.8e6 * 0.8).toBeCloseTo(1.1, 2)
})
