/** Stores: what to buy in whole packs, what is on the shelf, and what the work eats up. */
import type { StoreItem } from '#plan'
import { labelOf } from '#words'
import { Collection } from '../../fields/collection.tsx'
import type { JobView } from '../../job/job-view.ts'
import { notesOf } from '../../job/notes-of.ts'
import { otherSystem } from '../../job/other-system.ts'
import { Ledger, MovedFigure, Part, Progress, Sheet } from '../../parts/index.ts'
import type { ShownPlan } from '../../worker/messages.ts'
import type { ScreenProps } from '../screen.ts'
import { sheetNotes } from '../sheet-notes.tsx'

const packs = { part: 'work', section: 'packs' } as const

export const StoresScreen = ({ view, head, block }: ScreenProps) => {
  const { plan, words } = view
  return (
    <Sheet head={head} block={block} title={titleOf(view)} say={sayOf(view)}>
      {plan ? (
        <>
          <Part title={labelOf('heading.buy')} notes={sheetNotes(words, notesOf(plan, /^stores\./))}>
            <BuyTable view={view} plan={plan} />
          </Part>
          <Part title={labelOf('heading.consumables')}>
            <Ledger
              caption={labelOf('heading.consumables')}
              columns={[
                { key: 'name', label: labelOf('stores.what'), phone: 'first' },
                { key: 'amount', label: labelOf('stores.amount'), align: 'right', phone: 'side' },
              ]}
              rows={plan.stores.consumables.map((item) => ({
                id: `${item.id} ${item.sheet ?? ''}`,
                cells: { name: consumableName(plan, item, view), amount: amountOf(item, view) },
              }))}
            />
          </Part>
        </>
      ) : (
        <Part>
          <Progress label={labelOf('frame.planning')} />
        </Part>
      )}
      <Part title={labelOf('stores.packs')}>
        <Collection
          view={view}
          place={packs}
          keys={['sheet', 'volume', 'inStock']}
          fresh={{ sheet: plan?.buildUps.sheets[0]?.id ?? '', volume: '1 L' }}
          add={labelOf('stores.addPack')}
          name={({ cells }) =>
            [plan?.buildUps.sheets.find(({ id }) => id === cells.sheet)?.name ?? cells.sheet, cells.volume]
              .filter((part) => part !== undefined && part !== '')
              .join(', ') || labelOf('stores.newPack')
          }
          aside={({ cells }) =>
            cells.inStock === undefined
              ? ''
              : words.sentence('stores.shelf', { packs: String(cells.inStock) })
          }
        />
      </Part>
    </Sheet>
  )
}

const BuyTable = ({ view, plan }: { readonly view: JobView; readonly plan: ShownPlan }) => {
  const { words, before, change } = view
  const currency = plan.money?.currency
  const needed = new Map(before?.stores.items.map((item) => [item.sheet, item.needM3]))
  const volume = (value: number): string => words.figure('volumeM3', value)
  return (
    <Ledger
      caption={labelOf('heading.buy')}
      columns={[
        { key: 'name', label: labelOf('column.product'), phone: 'first' },
        { key: 'need', label: labelOf('column.needed'), align: 'right', phone: 'side' },
        { key: 'reserve', label: labelOf('column.reserve'), align: 'right', phone: 'hide' },
        { key: 'buy', label: labelOf('column.buy'), phone: 'second' },
        { key: 'left', label: labelOf('column.leftover'), align: 'right', phone: 'hide' },
        ...(currency
          ? [{ key: 'price', label: labelOf('stores.price'), align: 'right', phone: 'second' } as const]
          : []),
      ]}
      rows={plan.stores.items.map((item) => {
        const was = needed.get(item.sheet)
        return {
          id: item.sheet,
          cells: {
            name: nameOf(item),
            need: (
              <MovedFigure
                text={volume(item.needM3)}
                was={was === undefined ? undefined : volume(was)}
                change={change.number}
                certainty={item.certainty}
                label={item.name}
                detail={{
                  other: otherSystem(view).figure('volumeM3', item.needM3),
                  parts: partsOf(plan, item, view),
                }}
              />
            ),
            reserve: volume(item.reserveM3),
            buy: packsOf(item, view),
            left: volume(item.leftoverM3),
            price: currency ? priceOf(item, view, currency) : '',
          },
        }
      })}
    />
  )
}

/** The colour is said once: many people write it in the name. */
const nameOf = ({ name, colour }: StoreItem): string =>
  colour === '' || name.toLowerCase().includes(colour.toLowerCase()) ? name : `${name}, ${colour}`

/** What each zone takes of it. */
const partsOf = (plan: ShownPlan, { sheet }: StoreItem, { words }: JobView) =>
  plan.quantities.layers
    .filter((layer) => layer.sheet === sheet)
    .map((layer) => ({
      label: `${[...plan.surfaces.zones, ...plan.marks.zones].find(({ id }) => id === layer.zone)?.name ?? layer.zone}, ${words.figure('areaM2', layer.areaM2)}`,
      text: words.figure('volumeM3', layer.mixedM3),
      certainty: layer.certainty,
    }))

function packsOf(item: StoreItem, { words }: JobView): string {
  const pack = (one: { readonly count: number; readonly volumeM3: number }) =>
    `${one.count} × ${words.figure('volumeM3', one.volumeM3)}`
  const stock = item.fromStock.map((one) => words.sentence('stores.fromShelf', { packs: pack(one) }))
  const short = item.shortM3 > 0 ? [words.sentence('paper.shortOf', { shortM3: item.shortM3 })] : []
  const all = [...item.buy.map(pack), ...stock, ...short]
  return all.length === 0 ? labelOf('stores.noPack') : all.join(', ')
}

function priceOf({ buy }: StoreItem, { words }: JobView, currency: string): string {
  if (buy.some(({ priceCoins }) => priceCoins === undefined)) return labelOf('money.noPrice')
  const coins = buy.reduce((sum, { count, priceCoins = 0 }) => sum + count * priceCoins, 0)
  return words.figure('coins', coins, { currency })
}

type Consumable = ShownPlan['stores']['consumables'][number]

function consumableName(plan: ShownPlan, item: Consumable, { words }: JobView): string {
  const name = labelOf(`consumable.${item.id}`)
  const sheet = plan.buildUps.sheets.find(({ id }) => id === item.sheet)
  return sheet ? words.sentence('stores.goesWith', { name, sheet: sheet.name }) : name
}

function amountOf({ unit, amount }: Consumable, { words }: JobView): string {
  if (unit === 'L') return words.figure('volumeL', amount)
  return unit === 'm' ? words.figure('lengthM', amount) : `${amount} ${labelOf(`unit.${unit}`)}`
}

function titleOf({ plan, words }: JobView): string {
  if (!plan) return labelOf('room.stores')
  const { items } = plan.stores
  const bought = items.flatMap(({ buy }) => buy)
  return words.sentence('stores.title', {
    buyL: bought.reduce((sum, { count, volumeM3 }) => sum + count * volumeM3, 0) * 1000,
    packs: bought.reduce((sum, { count }) => sum + count, 0),
    products: items.length,
  })
}

function sayOf({ plan, words }: JobView): string | undefined {
  const short = plan?.stores.items.filter(({ shortM3 }) => shortM3 > 0).length ?? 0
  return short > 0 ? words.sentence('stores.shortSay', { count: short }) : undefined
}
