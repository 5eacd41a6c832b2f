/** What to buy and what the work eats up. */
import type { Plan, StoreItem } from '#plan'
import type { Words } from '#words'
import { section, table } from './table.ts'

export function storesLines(plan: Plan, words: Words): readonly string[] {
  const head = ['product', 'needed', 'reserve', 'buy', 'leftover'].map((key) => words.label(`column.${key}`))
  const rows = plan.stores.items.map((item) => [
    named(item),
    words.figure('volumeM3', item.needM3),
    words.figure('volumeM3', item.reserveM3),
    packsText(item, words),
    words.figure('volumeM3', item.leftoverM3),
  ])
  const used = plan.stores.consumables.map((item) => [
    itemName(plan, item, words),
    consumableAmount(item, words),
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

/** The colour is said once: many people write it in the name. */
const named = ({ name, colour }: StoreItem): string =>
  colour === '' || name.toLowerCase().includes(colour.toLowerCase()) ? name : `${name}, ${colour}`

type Consumable = Plan['stores']['consumables'][number]

export function itemName(plan: Plan, item: Consumable, words: Words): string {
  const name = words.label(`consumable.${item.id}`)
  const sheet = plan.buildUps.sheets.find((one) => one.id === item.sheet)
  return sheet ? words.sentence('stores.goesWith', { name, sheet: sheet.name }) : name
}

export function consumableAmount(item: Consumable, words: Words): string {
  if (item.unit === 'L') return words.figure('volumeL', item.amount)
  return item.unit === 'm'
    ? words.figure('lengthM', item.amount)
    : `${item.amount} ${words.label(`unit.${item.unit}`)}`
}

function packsText(item: StoreItem, words: Words): string {
  const pack = (one: StoreItem['buy'][number]) => `${one.count} × ${words.figure('volumeM3', one.volumeM3)}`
  const stock = item.fromStock.map((one) => words.sentence('stores.fromShelf', { packs: pack(one) }))
  const parts = [...item.buy.map(pack), ...stock]
  return parts.length === 0 ? words.label('stores.noPack') : parts.join(', ')
}

export const storesJson = (plan: Plan) => ({
  items: plan.stores.items.map((item) => ({
    sheet: item.sheet,
    name: item.name,
    needL: item.needM3 * 1000,
    reserveL: item.reserveM3 * 1000,
    buy: item.buy.map((one) => ({ pack: one.pack, count: one.count, packL: one.volumeM3 * 1000 })),
    fromStock: item.fromStock.map((one) => ({
      pack: one.pack,
      count: one.count,
      packL: one.volumeM3 * 1000,
    })),
    shortL: item.shortM3 * 1000,
    leftoverL: item.leftoverM3 * 1000,
    certainty: item.certainty,
  })),
  consumables: plan.stores.consumables.map(({ id, sheet, amount, unit }) => ({
    consumable: id,
    ...(sheet === undefined ? {} : { sheet }),
    amount,
    unit,
  })),
})
