import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { balanceK, type SkinHeat, skinSteady } from './heat-balance.ts'
import { kelvin, stefanBoltzmann } from './radiation.ts'

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const anySkin = fc.record<SkinHeat>({
  lightWm2: between(0, 1400),
  heatWm2: between(100, 600),
  airC: between(-30, 45),
  filmWm2K: between(0.5, 60),
  backWm2K: between(0, 10),
  backC: between(-30, 60),
  absorptance: between(0, 1),
  emittance: between(0.05, 1),
})
const given: SkinHeat = {
  lightWm2: 0,
  heatWm2: stefanBoltzmann * (20 + kelvin) ** 4,
  airC: 20,
  filmWm2K: 10,
  backWm2K: 0,
  backC: 0,
  absorptance: 0.6,
  emittance: 0.9,
}
/** What the skin takes in less what it gives off, W/m². */
const surplus = (of: SkinHeat, skinC: number) =>
  of.absorptance * of.lightWm2 +
  of.emittance * (of.heatWm2 - stefanBoltzmann * (skinC + kelvin) ** 4) +
  of.filmWm2K * (of.airC - skinC) +
  of.backWm2K * (of.backC - skinC)

describe('a skin in steady weather', () => {
  it('has the temperature of the air under a sky as warm as the air, in the dark', () => {
    expect(skinSteady(given)).toBeCloseTo(20, 9)
    expect(skinSteady({ ...given, backWm2K: 6, backC: 20 })).toBeCloseTo(20, 9)
  })

  it('balances to the last digit whatever falls on it', () => {
    fc.assert(
      fc.property(anySkin, (of) => {
        expect(Math.abs(surplus(of, skinSteady(of)))).toBeLessThan(1e-6)
      }),
    )
  })

  it('gets warmer with light, colour, sky and air, and wind brings it nearer to the air', () => {
    fc.assert(
      fc.property(anySkin, between(0, 300), (of, more) => {
        const skinC = skinSteady(of)
        expect(skinSteady({ ...of, lightWm2: of.lightWm2 + more })).toBeGreaterThanOrEqual(skinC - 1e-9)
        expect(skinSteady({ ...of, heatWm2: of.heatWm2 + more })).toBeGreaterThanOrEqual(skinC - 1e-9)
        expect(skinSteady({ ...of, absorptance: 1 })).toBeGreaterThanOrEqual(skinC - 1e-9)
        expect(skinSteady({ ...of, airC: of.airC + more / 10 })).toBeGreaterThanOrEqual(skinC - 1e-9)
        const alone = { ...of, backWm2K: 0 }
        const windy = skinSteady({ ...alone, filmWm2K: of.filmWm2K + more })
        expect(Math.abs(windy - of.airC)).toBeLessThanOrEqual(Math.abs(skinSteady(alone) - of.airC) + 1e-9)
      }),
    )
  })

  it('is unknown when a figure is', () => {
    for (const name of ['lightWm2', 'heatWm2', 'airC', 'filmWm2K', 'backC'] as const)
      expect(skinSteady({ ...given, backWm2K: 1, [name]: Number.NaN })).toBeNaN()
  })
})

describe('the balance as an equation', () => {
  /** By halving, slow and sure. */
  const halved = (radiating: number, linear: number, gain: number) => {
    let [low, high] = [0, 1e6]
    for (let step = 0; step < 200; step++) {
      const middle = (low + high) / 2
      if (radiating * middle ** 4 + linear * middle > gain) high = middle
      else low = middle
    }
    return low
  }

  it('is solved like by halving, from any start', () => {
    fc.assert(
      fc.property(
        between(0, 5.7e-8),
        between(0.1, 100),
        between(0, 50_000),
        between(0, 5000),
        (a, b, c, start) => {
          expect(balanceK(a, b, c, start)).toBeCloseTo(halved(a, b, c), 6)
        },
      ),
    )
  })

  it('is one division without radiation, and one root without air', () => {
    expect(balanceK(0, 10, 2930, 250)).toBeCloseTo(293, 12)
    expect(balanceK(stefanBoltzmann, 0, stefanBoltzmann * 300 ** 4, 400)).toBeCloseTo(300, 9)
  })
})
