/**
 * The shopping list as CSV (RFC 4180: commas, CRLF, quotes doubled), a row a pack to buy. Figures are plain numbers
 * with a point, their unit stands in the head. It begins with a byte-order mark: spreadsheet programs take UTF-8
 * for an old code page without one and spoil every ², µ and é.
 */
import papaparse from 'papaparse'
import type { Plan } from '#plan'
import { minorDigitsOf } from '#units'
import type { Kit } from '../kit.ts'
import { consumableName } from '../line-words.ts'

type Item = Plan['stores']['items'][number]
type Consumable = Plan['stores']['consumables'][number]

type Row = Readonly<Record<ColumnKey, string | number>>

const keys = [
  'item',
  'colour',
  'neededVolume',
  'reserveVolume',
  'fromShelf',
  'packs',
  'packVolume',
  'neededLength',
  'neededPieces',
  'price',
  'sum',
  'sure',
] as const
type ColumnKey = (typeof keys)[number]

const empty: Row = Object.fromEntries(keys.map((key) => [key, ''])) as Row

/** Whatever a spreadsheet program may take for a formula, spaces and full-width signs before it included. */
const formula = /^[\s\u00a0]*[=+\-@|%\uff1d\uff0b\uff0d\uff20]/

const byteOrderMark = '\ufeff'

export function shoppingListCsv(kit: Kit): Uint8Array {
  const rows = [
    ...kit.plan.stores.items.flatMap((item) => itemRows(kit, item)),
    ...kit.plan.stores.consumables.map((item) => consumableRow(kit, item)),
  ]
  const text = papaparse.unparse(
    { fields: keys.map((key) => heading(kit, key)), data: rows.map((row) => keys.map((key) => row[key])) },
    { newline: '\r\n', escapeFormulae: formula },
  )
  return new TextEncoder().encode(`${byteOrderMark}${text}\r\n`)
}

/** Litres or US quarts, metres or feet. */
const volumeUnits = { metric: { name: 'L', m3: 1e-3 }, us: { name: 'qt', m3: 3.785411784e-3 / 4 } } as const
const lengthUnits = { metric: { name: 'm', m: 1 }, us: { name: 'ft', m: 0.3048 } } as const

function heading({ say, job, plan }: Kit, key: ColumnKey): string {
  const units: Partial<Record<ColumnKey, string>> = {
    neededVolume: volumeUnits[job.units].name,
    reserveVolume: volumeUnits[job.units].name,
    packVolume: volumeUnits[job.units].name,
    neededLength: lengthUnits[job.units].name,
    ...(plan.money ? { price: plan.money.currency, sum: plan.money.currency } : {}),
  }
  const unit = units[key]
  return unit === undefined ? say.label(`paperList.${key}`) : `${say.label(`paperList.${key}`)} (${unit})`
}

const rounded = (value: number): number => Math.round(value * 1000) / 1000
const volume = ({ job }: Kit, m3: number): number => rounded(m3 / volumeUnits[job.units].m3)

/** What is needed stands once; a second size of pack has a row of its own, so that columns can be summed. */
function itemRows(kit: Kit, item: Item): readonly Row[] {
  const packs = item.buy.length > 0 ? item.buy : [undefined]
  return packs.map(
    (pack, index): Row => ({
      ...empty,
      item: item.name,
      colour: item.colour,
      ...(index === 0
        ? {
            neededVolume: volume(kit, item.needM3),
            reserveVolume: volume(kit, item.reserveM3),
            fromShelf: item.fromStock.reduce((sum, stock) => sum + stock.count, 0),
          }
        : {}),
      ...(pack ? packCells(kit, pack) : { packs: item.shortM3 > 0 ? '' : 0 }),
      sure: item.certainty,
    }),
  )
}

function packCells(kit: Kit, { count, volumeM3, priceCoins }: Item['buy'][number]): Partial<Row> {
  const priced =
    priceCoins === undefined ? {} : { price: money(kit, priceCoins), sum: money(kit, priceCoins * count) }
  return { packs: count, packVolume: volume(kit, volumeM3), ...priced }
}

/** Coins as a decimal number without going through a binary fraction. */
function money({ plan }: Kit, coins: number): string {
  const digits = minorDigitsOf(plan.money?.currency ?? '') ?? 2
  const all = String(Math.abs(coins)).padStart(digits + 1, '0')
  const text = digits === 0 ? all : `${all.slice(0, -digits)}.${all.slice(-digits)}`
  return coins < 0 ? `-${text}` : text
}

function consumableRow(kit: Kit, item: Consumable): Row {
  const { amount, unit } = item
  const needed: Partial<Row> =
    unit === 'L'
      ? { neededVolume: volume(kit, amount * 1e-3) }
      : unit === 'm'
        ? { neededLength: Math.ceil(amount / lengthUnits[kit.job.units].m - 1e-9) }
        : { neededPieces: amount }
  return {
    ...empty,
    item: consumableName(kit.plan, item, kit.say),
    ...needed,
    ...consumablePrice(kit, item),
    sure: item.certainty,
  }
}

function consumablePrice(kit: Kit, item: Consumable): Partial<Row> {
  const id = item.sheet ? `${item.id}:${item.sheet}` : item.id
  const line = kit.plan.money?.lines.find((one) => one.group === 'consumables' && one.id === id)
  return line?.unitCoins === undefined || line.coins === undefined
    ? {}
    : { price: money(kit, line.unitCoins), sum: money(kit, line.coins) }
}
