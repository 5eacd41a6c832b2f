/** Stores: what to buy in whole packs, what is on the shelf, and what the work eats up. */
import { amountText, consumableName, packsText, productName } from '#papers'
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
          <Part title={labelOf('heading.buy')} notes={sheetNotes(view, notesOf(plan, /^stores\./))}>
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
                cells: {
                  name: consumableName(plan, item, words),
                  amount: amountText(item.amount, item.unit, words),
                },
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
            name: productName(item),
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
            buy: buyText(item, view),
            left: volume(item.leftoverM3),
            price: currency ? priceOf(item, view, currency) : '',
          },
        }
      })}
    />
  )
}

/** What each zone takes of it. */
const partsOf = (plan: ShownPlan, { sheet }: StoreItem, { words }: JobView) =>
  plan.quantities.layers
    .filter((layer) => layer.sheet === sheet)
    .map((layer) => ({
      label: `${[...plan.surfaces.zones, ...plan.marks.zones].find(({ id }) => id === layer.zone)?.name ?? layer.zone}, ${words.figure('areaM2', layer.areaM2)}`,
      text: words.figure('volumeM3', layer.mixedM3),
      certainty: layer.certainty,
    }))

/** What no known pack covers is said behind the packs. */
const buyText = (item: StoreItem, { words }: JobView): string =>
  [
    ...(item.shortM3 > 0 && item.buy.length + item.fromStock.length === 0 ? [] : [packsText(item, words)]),
    ...(item.shortM3 > 0 ? [words.sentence('paper.shortOf', { shortM3: item.shortM3 })] : []),
  ].join(', ')

function priceOf({ buy }: StoreItem, { words }: JobView, currency: string): string {
  if (buy.some(({ priceCoins }) => priceCoins === undefined)) return labelOf('money.noPrice')
  const coins = buy.reduce((sum, { count, priceCoins = 0 }) => sum + count * priceCoins, 0)
  return words.figure('coins', coins, { currency })
}

function titleOf({ plan, words }: JobView): string {
  if (!plan) return labelOf('room.stores')
  const { items } = plan.stores
  const bought = items.flatMap(({ buy }) => buy)
  const shortL = items.reduce((sum, { shortM3 }) => sum + shortM3, 0) * 1000
  if (bought.length === 0 && shortL > 0) return words.sentence('stores.titleShort', { needL: shortL })
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
