/** What the paint of a build-up costs at the price a litre of the packs that are bought for it. */
import type { Stack } from '#papers'
import type { Plan } from '#plan'

/** Smallest coins, as prices are; nothing while a product of it has no price, or prices are not to be seen. */
export function stackCost(
  { layers }: Pick<Stack, 'layers'>,
  plan: Pick<Plan, 'stores' | 'buildUps'>,
): number | undefined {
  let coins = 0
  for (const { layer, mixedM3 } of layers) {
    const sheet = plan.buildUps.layers.find((one) => one.layer === layer)?.sheet
    const perM3 = coinsPerM3(plan.stores.items.find((item) => item.sheet === sheet))
    if (perM3 === undefined) return undefined
    coins += mixedM3.value * perM3
  }
  return layers.length === 0 ? undefined : Math.round(coins)
}

/** All its packs together; where none is bought, what was bought or stood there. */
function coinsPerM3(item: Plan['stores']['items'][number] | undefined): number | undefined {
  const packs = [item?.buy, item?.bought, item?.fromStock].find((some) => some && some.length > 0) ?? []
  if (packs.length === 0 || packs.some(({ priceCoins }) => priceCoins === undefined)) return undefined
  const volumeM3 = packs.reduce((sum, { volumeM3: one, count }) => sum + one * count, 0)
  return volumeM3 > 0
    ? packs.reduce((sum, { priceCoins = 0, count }) => sum + priceCoins * count, 0) / volumeM3
    : undefined
}
