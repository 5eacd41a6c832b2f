/** What to buy and what the work eats up. */
import { amountText, consumableName, packsText, productName } from '#papers'
import type { Plan, StorePack } from '#plan'
import type { Words } from '#words'
import { section, table } from './table.ts'

export function storesLines(plan: Plan, words: Words): readonly string[] {
  const head = ['product', 'needed', 'reserve', 'buy', 'leftover'].map((key) => words.label(`column.${key}`))
  const rows = plan.stores.items.map((item) => [
    productName(item),
    words.figure('volumeM3', item.needM3),
    words.figure('volumeM3', item.reserveM3),
    packsText(item, words),
    words.figure('volumeM3', item.leftoverM3),
  ])
  const used = plan.stores.consumables.map((item) => [
    consumableName(plan, item, words),
    amountText(item.amount, item.unit, words),
  ])
  return [
    ...(rows.length === 0
      ? []
      : section(
          words.label('heading.buy'),
          table([head, ...rows], ['left', 'right', 'right', 'left', 'right']),
        )),
    ...section(words.label('heading.consumables'), table(used, ['left', 'right'])),
  ]
}

const packJson = ({ pack, count, volumeM3, shop }: StorePack) => ({
  pack,
  count,
  packL: volumeM3 * 1000,
  ...(shop === '' ? {} : { shop }),
})

export const storesJson = (plan: Plan) => ({
  items: plan.stores.items.map((item) => ({
    sheet: item.sheet,
    name: item.name,
    needL: item.needM3 * 1000,
    reserveL: item.reserveM3 * 1000,
    buy: item.buy.map(packJson),
    bought: item.bought.map(packJson),
    fromStock: item.fromStock.map(packJson),
    shortL: item.shortM3 * 1000,
    leftoverL: item.leftoverM3 * 1000,
    leftoverPartsL: item.leftoverPartsM3.map((part) => part * 1000),
    ...(item.shortSide === undefined ? {} : { shortSide: item.shortSide }),
    certainty: item.certainty,
  })),
  consumables: plan.stores.consumables.map(({ id, sheet, amount, unit }) => ({
    consumable: id,
    ...(sheet === undefined ? {} : { sheet }),
    amount,
    unit,
  })),
})
