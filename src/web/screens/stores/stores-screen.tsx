/** Stores: what to buy in whole packs, what is on the shelf, and what the work eats up. */
import { amountText, consumableName, packsText, productName } from '#papers'
import type { StoreItem } from '#plan'
import { labelOf } from '#words'
import { Collection } from '../../fields/collection.tsx'
import { packName } from '../../fields/pack-name.ts'
import { WayFigure } from '../../figures/way-figure.tsx'
import type { JobView } from '../../job/job-view.ts'
import { notesOf } from '../../job/notes-of.ts'
import { Ledger, Part, Progress, Sheet } from '../../parts/index.ts'
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
                  amount: (
                    <WayFigure
                      view={view}
                      of={{
                        kind: 'consumable',
                        id: item.id,
                        ...(item.sheet === undefined ? {} : { sheet: item.sheet }),
                      }}
                      text={amountText(item.amount, item.unit, words)}
                      certainty={item.certainty}
                      label={consumableName(plan, item, words)}
                    />
                  ),
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
          keys={[
            'sheet',
            'volume',
            'partA',
            'partB',
            'shop',
            'bought',
            'inStock',
            'batch',
            'opened',
            'bestBefore',
          ]}
          fresh={{ sheet: plan?.buildUps.sheets[0]?.id ?? '', volume: '1 L' }}
          add={labelOf('stores.addPack')}
          name={({ cells }) => packName(view, cells) || labelOf('stores.newPack')}
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
  const { words, before } = view
  const currency = plan.money?.currency
  const needed = new Map(before?.stores.items.map((item) => [item.sheet, item.needM3]))
  const volume = (value: number): string => words.figure('volumeM3', value)
  const figure = (item: StoreItem, of: keyof typeof volumes, was?: string) => (
    <WayFigure
      view={view}
      of={{ kind: 'store', sheet: item.sheet, of }}
      text={volume(item[volumes[of]])}
      was={was}
      certainty={item.certainty}
      label={`${labelOf(columnOf[of])}, ${item.name}`}
    />
  )
  return (
    <Ledger
      caption={labelOf('heading.buy')}
      columns={[
        { key: 'name', label: labelOf('column.product'), phone: 'first' },
        { key: 'need', label: labelOf('column.needed'), align: 'right', phone: 'side' },
        { key: 'reserve', label: labelOf('column.reserve'), align: 'right', phone: 'second', named: true },
        { key: 'buy', label: labelOf('column.buy'), phone: 'second' },
        { key: 'left', label: labelOf('column.leftover'), align: 'right', phone: 'second', named: true },
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
            need: figure(item, 'need', was === undefined ? undefined : volume(was)),
            reserve: figure(item, 'reserve'),
            buy: buyText(item, view),
            left: figure(item, 'left'),
            price: currency ? priceOf(item, view, currency) : '',
          },
        }
      })}
    />
  )
}

const volumes = { need: 'needM3', reserve: 'reserveM3', left: 'leftoverM3' } as const
const columnOf = { need: 'column.needed', reserve: 'column.reserve', left: 'column.leftover' } as const

/** What no known pack covers is said behind the packs. */
const buyText = (item: StoreItem, { words }: JobView): string =>
  [
    ...(item.shortM3 > 0 && item.buy.length + item.bought.length + item.fromStock.length === 0
      ? []
      : [packsText(item, words)]),
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
