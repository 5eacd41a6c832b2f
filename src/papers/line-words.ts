/** What the lines of stores, money and marks are called, the same at the terminal, on screen and on paper. */
import type { ConsumableItem, MoneyLine, PanelMark, Plan, StoreItem } from '#plan'
import type { Words } from '#words'

type Said = Pick<Words, 'label' | 'sentence' | 'figure'>
type Known = Pick<Plan, 'buildUps' | 'stores'>

/** A product with its colour, which is said once: many people write it in the name. */
export const productName = ({ name, colour }: Pick<StoreItem, 'name' | 'colour'>): string =>
  colour === '' || name.toLowerCase().includes(colour.toLowerCase()) ? name : `${name}, ${colour}`

/** A consumable, and the product it goes with. */
export function consumableName(
  { buildUps }: Pick<Plan, 'buildUps'>,
  item: ConsumableItem,
  words: Pick<Words, 'label' | 'sentence'>,
): string {
  const name = words.label(`consumable.${item.id}`)
  const sheet = buildUps.sheets.find(({ id }) => id === item.sheet)
  return sheet ? words.sentence('stores.goesWith', { name, sheet: sheet.name }) : name
}

/** How much of a consumable or of a line of the estimate; nothing for a sum. */
export function amountText(amount: number, unit: MoneyLine['unit'], words: Said): string {
  if (unit === 'h') return words.figure('hours', amount)
  if (unit === 'L') return words.figure('volumeL', amount)
  if (unit === 'm') return words.figure('lengthM', amount)
  return unit === 'sum' ? '' : `${amount} ${words.label(`unit.${unit}`)}`
}

/** Packs to buy, bought and from the shelf: `2 × 2.5 L, 1 × 1 L bought, 1 × 1 L from the shelf`. */
export function packsText(item: StoreItem, words: Said): string {
  const pack = (one: { readonly count: number; readonly volumeM3: number }) =>
    `${one.count} × ${words.figure('volumeM3', one.volumeM3)}`
  const stock = item.fromStock.map((one) => words.sentence('stores.fromShelf', { packs: pack(one) }))
  const bought = item.bought.map((one) => words.sentence('stores.packsBought', { packs: pack(one) }))
  const all = [...item.buy.map(pack), ...bought, ...stock]
  return all.length === 0 ? words.label('stores.noPack') : all.join(', ')
}

/** What a line of the estimate is for. */
export function moneyLineName(plan: Known, line: MoneyLine, words: Said): string {
  switch (line.group) {
    case 'labour':
      return words.label(`labour.${line.subject}`)
    case 'materials':
      return plan.buildUps.sheets.find((sheet) => sheet.id === line.subject)?.name ?? line.subject
    case 'consumables': {
      if (line.subject === 'sundries') return words.label('consumable.sundries')
      const item = plan.stores.consumables.find(
        (one) => (one.sheet ? `${one.id}:${one.sheet}` : one.id) === line.id,
      )
      return item ? consumableName(plan, item, words) : line.subject
    }
    default:
      return line.subject
  }
}

/** A non-skid panel with its sizes and area. */
export const panelText = (panel: PanelMark, words: Said): string =>
  words.sentence('marks.panel', {
    name: panel.name,
    count: panel.count,
    lengthM: panel.lengthM,
    widthM: panel.widthM,
    borderM: panel.borderM,
    cornerRadiusM: panel.cornerRadiusM,
    areaM2: panel.count * panel.panelAreaM2,
  })
