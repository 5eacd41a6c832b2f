import { describe, expect, it } from 'vitest'
import { stacksOf } from '#papers'
import { plan } from '#plan'
import { sampleInput } from '../../../../test/support/samples.ts'
import { stackCost } from './stack-cost.ts'

const made = plan(sampleInput('open-powerboat'))
const [stack] = stacksOf(made)

describe('what a build-up costs', () => {
  it('is litres of each layer at the mean price of the packs bought for it', () => {
    const expected = stack!.layers.reduce((sum, { layer, mixedM3 }) => {
      const sheet = made.buildUps.layers.find((one) => one.layer === layer)!.sheet
      const { buy, fromStock } = made.stores.items.find((item) => item.sheet === sheet)!
      const packs = buy.length > 0 ? buy : fromStock
      const [coins, litres] = packs.reduce(
        ([c, l], pack) => [c + pack.priceCoins! * pack.count, l + pack.volumeM3 * pack.count],
        [0, 0],
      )
      return sum + (mixedM3.value * coins) / litres
    }, 0)
    expect(expected).toBeGreaterThan(0)
    expect(stackCost(stack!, made)).toBe(Math.round(expected))
  })

  it('is not told while a price is missing', () => {
    const items = made.stores.items.map((item) => ({
      ...item,
      buy: item.buy.map(({ priceCoins: _, ...pack }) => pack),
    }))
    expect(stackCost(stack!, { ...made, stores: { ...made.stores, items } })).toBeUndefined()
  })
})
