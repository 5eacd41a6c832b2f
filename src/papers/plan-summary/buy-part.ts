/** What to buy: products with packs, and what the work eats up. */
import type { Plan } from '#plan'
import { heading } from '../blocks.ts'
import type { Kit } from '../kit.ts'
import { consumableName } from '../line-words.ts'
import { measureOf } from '../page.ts'
import type { Flowing } from '../strips.ts'
import {
  type Cell,
  cell,
  figureCell,
  noCell,
  strongCell,
  type TableAt,
  tableHead,
  tableRow,
} from '../table.ts'

type Item = Plan['stores']['items'][number]
type Consumable = Plan['stores']['consumables'][number]

export const buyPart = (kit: Kit): readonly Flowing[] => [...products(kit), ...consumables(kit)]

function products(kit: Kit): readonly Flowing[] {
  const { plan, say, setter } = kit
  if (plan.stores.items.length === 0) return []
  const measure = measureOf(kit.page)
  const priced = plan.money !== undefined
  const table: TableAt = {
    ...measure,
    setter,
    columns: [
      { head: say.label('column.product'), align: 'left', share: 52 },
      { head: say.label('column.needed'), align: 'right', share: 20 },
      { head: say.label('column.reserve'), align: 'right', share: 20 },
      { head: say.label('column.buy'), align: 'left', share: 38 },
      { head: say.label('paperColumn.fromShelf'), align: 'left', share: 24 },
      ...(priced ? [{ head: say.label('paperColumn.price'), align: 'right' as const, share: 24 }] : []),
    ],
  }
  const rows = plan.stores.items.map((item) =>
    tableRow(table, [...itemCells(kit, item), ...(priced ? [priceCell(kit, item)] : [])]),
  )
  return [
    {
      gap: 7,
      heading: heading(say.label('paperPart.buy'), { ...measure, setter }),
      repeat: tableHead(table),
      units: rows,
    },
  ]
}

function itemCells(kit: Kit, item: Item): readonly Cell[] {
  const { say } = kit
  const short = item.shortM3 > 0 ? [say.sentence('paper.shortOf', { shortM3: item.shortM3 })] : []
  return [
    strongCell(item.name, item.colour),
    figureCell(say.sure('volumeM3', item.needM3, item.certainty)),
    figureCell({ text: say.figure('volumeM3', item.reserveM3), certainty: 'worked' }),
    cell([...item.buy.map((pack) => packs(kit, pack)), ...short].join('\n')),
    cell([...item.bought, ...item.fromStock].map((pack) => packs(kit, pack)).join('\n')),
  ]
}

const packs = (
  { say }: Kit,
  { count, volumeM3 }: { readonly count: number; readonly volumeM3: number },
): string => `${count}\u2009×\u2009${say.figure('volumeM3', volumeM3)}`

/** Of the packs to buy; nothing when one of them has no price. */
function priceCell({ say }: Kit, item: Item): Cell {
  const prices = item.buy.map((pack) =>
    pack.priceCoins === undefined ? undefined : pack.count * pack.priceCoins,
  )
  if (prices.length === 0 || prices.includes(undefined)) return noCell
  const coins = (prices as readonly number[]).reduce((sum, price) => sum + price, 0)
  return figureCell({ text: say.figure('priceCoins', coins), certainty: 'worked' })
}

/** Two side by side: a long list of short lines. */
function consumables(kit: Kit): readonly Flowing[] {
  const { plan, say, setter } = kit
  const items = plan.stores.consumables
  if (items.length === 0) return []
  const measure = measureOf(kit.page)
  const half = [
    { head: say.label('paperColumn.consumable'), align: 'left' as const, share: 56 },
    { head: say.label('paperColumn.amount'), align: 'right' as const, share: 26 },
  ]
  const table: TableAt = { ...measure, setter, columns: [...half, ...half] }
  const count = Math.ceil(items.length / 2)
  const rows = Array.from({ length: count }, (_, row) =>
    tableRow(
      table,
      [items[row], items[row + count]].flatMap((item) =>
        item ? consumableCells(kit, item) : [noCell, noCell],
      ),
    ),
  )
  return [
    {
      gap: 7,
      heading: heading(say.label('paperPart.consumables'), { ...measure, setter }),
      repeat: tableHead(table),
      units: rows,
    },
  ]
}

const consumableCells = (kit: Kit, item: Consumable): readonly Cell[] => [
  cell(consumableName(kit.plan, item, kit.say)),
  figureCell({ text: amountOf(kit, item), certainty: item.certainty }),
]

function amountOf({ say }: Kit, { amount, unit }: Consumable): string {
  if (unit === 'L') return say.figure('amountL', amount)
  return unit === 'm' ? say.figure('lengthM', amount) : `${amount}\u2009${say.label(`unit.${unit}`)}`
}
